import { describe, expect, it } from "vitest";
import { visit } from "../../scripts/demo/cases/usual-bodies.ts";
import { type BodyOf, type PartKind, partsOf } from "../../src/record/parts.ts";
import type { CaseView } from "../../src/server/api.ts";
import { newBodies } from "../../src/web/rooms/case/new-bodies.ts";
import { misplacedWords, readersMissing, readPdf, textOfPdf } from "../documents/read-handout.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { byKeyboard } from "./by-keyboard.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { makeDocument } from "./first-case-story.ts";
import { numbersOfDocument } from "./numbers-of-document.ts";
import { failingShot } from "./shots.ts";

const day = "2026-03-12";
const about: BodyOf<"case"> = {
  ...{ pseudonym: "P-36", tooth: "36", birthYear: 1970, sex: "female", presentedOn: "2026-03-02" },
  ...{ treatment: "retreatment", complaint: "", referredFor: "Retreatment", background: "", demo: false },
};
const bodies: readonly (readonly [PartKind, object])[] = [
  ["diagnosis", { ...newBodies.diagnosis("2026-03-02"), pulpal: "previouslyTreated" }],
  ["plan", { ...newBodies.plan("2026-03-02"), chosen: "retreat", because: "Filled short" }],
  [
    "visit",
    visit({
      ...{ on: day, aim: "Fill", minutes: 70, temporary: { material: "glass ionomer", thicknessMm: 4 } },
      canals: [{ canal: "MB", state: "filled", patency: "patent", reference: "cusp", workingLengthMm: 19.5 }],
      lots: [{ material: "sealer", lot: "L-7", stays: true }],
    }),
  ],
  [
    "mishap",
    {
      ...newBodies.mishap(day),
      ...{ what: "separatedInstrument", canal: "MB", third: "apical", fragmentMm: 2, handled: "left" },
    },
  ],
  ["handback", newBodies.handback(day)],
];
const warning = "A piece of an instrument, 2 mm long, stays in MB, apical third; it was left.";

/** A tooth that is filled, with a piece left in it, and a hand-back in which nothing is said. */
async function caseToHandBack({ page }: BenchInBrowser): Promise<string> {
  const answer = await page.request.post("/api/cases", { data: { case: about } });
  const { caseId }: CaseView = await answer.json();
  const operations = bodies.map(([kind, body]) => ({ op: "put", id: `${kind}-1`, kind, baseRevision: 0, body }));
  const data = { words: "Worked", operations };
  expect((await page.request.post(`/api/cases/${caseId}/gestures`, { data })).status()).toBe(200);
  await page.goto(`/case/${caseId}/handback-1`);
  await page.getByRole("heading", { name: "The letter as it would read" }).waitFor();
  return caseId;
}

describe("a letter of hand-back", () => {
  it("is filled by keyboard from what is missing, takes only what was chosen, and is read back as a PDF", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "letter");
    const hand = byKeyboard(page);
    const caseId = await caseToHandBack(bench);
    const handback = async () => partsOf((await bench.caseNow(caseId)).parts, "handback")[0]?.body;
    const preview = page.getByRole("region", { name: "The letter as it would read" });
    await faultsAtBothSizes(page, "letter-empty");

    // What is missing leads to its field.
    await hand.press(page.getByRole("button", { name: "How the orifices are marked" }));
    await page.getByLabel("Orifices are marked by").and(page.locator(":focus")).waitFor();
    await page.keyboard.insertText("red resin");
    await page.keyboard.press("Tab");
    await expect.poll(async () => (await handback())?.orificesMarkedBy).toBe("red resin");
    await preview.getByText("red resin").waitFor();

    // The record's words are taken by a press, and given back by undo.
    expect(await preview.getByText(warning).count()).toBe(0);
    await hand.press(page.getByRole("button", { name: `Take: ${warning}` }));
    await expect.poll(async () => (await handback())?.warnings).toBe(warning);
    await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
    await hand.undo();
    await expect.poll(async () => (await handback())?.warnings).toBe("");
    await hand.redo();
    await expect.poll(async () => (await handback())?.warnings).toBe(warning);

    // A figure with its counts, and one's own words.
    await hand.pick(page.getByRole("radio", { name: /\d of \d/ }).first());
    await expect.poll(async () => (await handback())?.figure?.way).toBe("retreat");
    await hand.write(page.getByLabel("To be restored with"), "a build-up and cusp cover");
    await hand.writeDay(page.getByLabel("To be restored by"), "2026-04-09");
    await preview.getByText("Within 28 days of the hand-back.").waitFor();
    await expect.poll(async () => (await handback())?.restoreBy).toBe("2026-04-09");
    await faultsAtBothSizes(page, "letter-written");

    await hand.press(preview.getByRole("link", { name: "Make it a PDF" }));
    const made = await makeDocument(hand, "Letter of hand-back");
    expect([made.view.as, made.view.fileName.endsWith(".pdf")]).toEqual(["letter", true]);
    const numbers = await numbersOfDocument(bench, made.view);
    expect(numbers.length).toBeGreaterThan(2);
    expect(numbers.map(({ printed }) => printed)).toEqual(numbers.map(({ computed }) => computed));
    if (readersMissing === undefined) checkLetter(made.bytes);
    await bench.close();
  });
});

/** What the other dentist reads: two pages at most, no day, no word on another. */
function checkLetter(bytes: Uint8Array): void {
  const pages = readPdf(bytes);
  const text = textOfPdf(pages);
  expect(pages.length).toBeLessThanOrEqual(2);
  for (const said of ["cusp cover", "Within 28 days", "red resin", "4 mm", "L-7", "stays in MB", "19.5 mm", "P-36"])
    expect(text).toContain(said);
  expect(text).not.toMatch(/\d{4}-\d{2}-\d{2}/);
  expect(misplacedWords(pages)).toEqual([]);
}
