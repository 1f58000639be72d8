import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { jargonIn } from "../../src/core/plain-words/jargon.ts";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import type { CaseView } from "../../src/server/api.ts";
import { newBodies } from "../../src/web/rooms/case/new-bodies.ts";
import { misplacedWords, readersMissing, readPdf, textOfPdf } from "../documents/read-handout.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { byKeyboard } from "./by-keyboard.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { makeDocument } from "./first-case-story.ts";
import { failingShot } from "./shots.ts";

const day = "2026-03-12";
const about: BodyOf<"case"> = {
  ...{ pseudonym: "P-26", tooth: "26", birthYear: 1970, sex: "female", presentedOn: "2026-01-12" },
  ...{ treatment: "retreatment", complaint: "", referredFor: "", background: "", demo: false },
};
const mishap: BodyOf<"mishap"> = {
  ...newBodies.mishap(day),
  ...{ what: "separatedInstrument", canal: "MB1", third: "middle", bend: "beyond", fragmentMm: 3 },
  instrument: { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" },
};

/** A case with a piece of an instrument in a canal, its spine open. */
async function caseWithPiece({ page }: BenchInBrowser): Promise<string> {
  const answer = await page.request.post("/api/cases", { data: { case: about } });
  const { caseId }: CaseView = await answer.json();
  const operations = [{ op: "put", id: "mishap-1", kind: "mishap", baseRevision: 0, body: mishap }];
  const data = { words: "Mishap recorded", operations };
  expect((await page.request.post(`/api/cases/${caseId}/gestures`, { data })).status()).toBe(200);
  await page.goto(`/case/${caseId}/weigh-mishap-1`);
  await page.getByRole("heading", { name: "Removal weighed" }).waitFor();
  return caseId;
}

const blur = (page: Page) =>
  page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());

describe("a piece of an instrument", () => {
  it("is weighed, tried at by the clock, ended and told to the patient, by keyboard alone", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "removal");
    const hand = byKeyboard(page);
    const caseId = await caseWithPiece(bench);
    const removal = async () => partsOf((await bench.caseNow(caseId)).parts, "removal")[0]?.body;
    const handled = async () => partsOf((await bench.caseNow(caseId)).parts, "mishap")[0]?.body.handled;
    const field = (name: string) => page.getByRole("main").getByLabel(name, { exact: true });

    // Begun from the piece's own line beside the spine; what it rests on is written down.
    await faultsAtBothSizes(page, "removal-not-begun");
    await hand.press(page.getByRole("button", { name: "Weigh its removal" }));
    await hand.write(field("Top of the piece, below the orifice"), "9.5");
    await hand.write(field("Width of its top"), "0.4");
    await hand.write(field("Canal beside its top"), "0.45");
    await hand.write(field("Room for a tip on each side"), "0.15");
    await hand.press(page.getByRole("button", { name: "Add a wall" }));
    // Nobody has measured the new wall: it has no number until somebody writes one.
    await expect.poll(async () => (await removal())?.walls).toEqual([{ side: "furcation" }]);
    await hand.write(field("Dentine of wall 1, towards the furcation"), "0.9");
    await expect.poll(async () => (await removal())?.walls).toEqual([{ side: "furcation", mm: 0.9 }]);

    // What it comes to stands below, each number with its entry; no way is called the better one.
    await page.getByRole("heading", { name: "The ways side by side" }).waitFor();
    await page.getByText("◇ The figures do not decide").waitFor();
    await page
      .getByRole("img", { name: /pass it/i })
      .first()
      .waitFor();
    await page.getByRole("row", { name: /^towards the furcation 0\.90/ }).waitFor();

    // The first attempt asks once for rules; they are set first, and say when.
    await blur(page);
    await page.keyboard.press("k");
    await page.getByRole("dialog", { name: "No stop rules are set" }).waitFor();
    await hand.press(page.getByRole("button", { name: "Set them first" }));
    // The press begins them and goes to the first; as long as none is written, none is said to be set.
    const minutes = field("Minutes in all, at most");
    await expect.poll(() => minutes.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.getByText("◇ No rule is written yet.").waitFor();
    await hand.write(minutes, "20");
    await page.getByText(/^● Set /).waitFor();
    await hand.write(field("No dentine thinner than"), "0.85");
    await page.getByText("◆ below 0.85 mm, your own limit").waitFor();
    await faultsAtBothSizes(page, "removal-weighed");

    // The clock is started and stopped by one key each; a window that closes in between loses nothing.
    await page.clock.install();
    await blur(page);
    await page.keyboard.press("k");
    await page.getByRole("button", { name: "Stop attempt 1" }).waitFor();
    await expect.poll(async () => (await removal())?.running?.tool).toBe("ultrasonicTip");
    await page.reload();
    await page.getByRole("button", { name: "Stop attempt 1" }).waitFor();
    await page.clock.fastForward("12:00");
    await page.getByRole("timer", { name: "Attempt 1" }).filter({ hasText: /^12:/ }).waitFor();
    await blur(page);
    await page.keyboard.press("k");
    await page.getByText("What moved in attempt 1?").waitFor();
    await page.keyboard.press("2");
    await expect
      .poll(async () => (await removal())?.attempts[0])
      .toMatchObject({ moved: "loosened", tool: "ultrasonicTip" });
    expect((await removal())?.running).toBeUndefined();

    // Near the rule and at it, it is said in words and aloud.
    await blur(page);
    await page.keyboard.press("k");
    await page.getByRole("button", { name: "Stop attempt 2" }).waitFor();
    await page.clock.fastForward("04:30");
    await page
      .getByRole("status")
      .filter({ hasText: /^Stop rule: .*near your rule/ })
      .waitFor();
    await page.clock.fastForward("04:00");
    await page
      .getByRole("status")
      .filter({ hasText: /^Stop rule: .*your rule is reached; it says stop/ })
      .waitFor();
    await blur(page);
    await page.keyboard.press("k");
    await page.getByText("What moved in attempt 2?").waitFor();
    await page.keyboard.press("4");
    await expect
      .poll(async () => (await removal())?.attempts.map(({ moved }) => moved))
      .toEqual(["loosened", "bypassed"]);
    await faultsAtBothSizes(page, "removal-attempts");

    // The result sets the mishap in the same gesture, and one undo takes both back.
    const result = page.getByRole("group", { name: "What came of it" });
    await hand.press(result.getByRole("button", { name: "bypassed" }));
    await expect.poll(handled).toBe("bypassed");
    await blur(page);
    await hand.undo();
    await expect.poll(handled).toBe("open");
    expect((await removal())?.result).toBeUndefined();
    await hand.redo();
    await expect.poll(handled).toBe("bypassed");
    expect((await removal())?.result?.is).toBe("bypassed");
    // A redo that is pressed before the undo has answered waits for it.
    const { sequence } = await bench.caseNow(caseId);
    await hand.undo();
    await hand.redo();
    await expect.poll(async () => (await bench.caseNow(caseId)).sequence).toBe(sequence + 2);
    expect(await handled()).toBe("bypassed");
    await faultsAtBothSizes(page, "removal-ended");
    expect((await page.textContent("main"))?.toLowerCase()).not.toMatch(/\bsafe\b|proves/);

    // A page for the patient, read back.
    await hand.press(page.getByRole("link", { name: "A page about it for the patient" }));
    const { bytes, view } = await makeDocument(hand, "Page about a piece");
    expect([view.as, view.fileName.endsWith(".pdf")]).toEqual(["piece", true]);
    expect(Buffer.from(bytes).includes("/StructTreeRoot")).toBe(true);
    if (readersMissing === undefined)
      checkPage(
        bytes,
        view.numbers.map(({ text }) => text),
      );
    await bench.close();
  });
});

/** What the patient reads: every way, no word of the trade, each number, and words that lie on no other. */
function checkPage(bytes: Uint8Array, numbers: readonly string[]): void {
  const pages = readPdf(bytes);
  const text = textOfPdf(pages);
  for (const said of ["A piece of an instrument in your tooth", "Go past the piece", "We got past the piece", "P-26"])
    expect(text).toContain(said);
  for (const number of numbers) expect(text).toContain(number);
  expect(jargonIn(text.split("Where the numbers come from")[0] ?? "")).toEqual([]);
  expect(misplacedWords(pages)).toEqual([]);
}
