import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { byKeyboard } from "./by-keyboard.ts";
import { beginCase } from "./first-case-story.ts";
import { type Hand, recorded } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";

const day = "2026-02-10";

/** A field of the case's page by its whole label. */
const field = (page: Page, label: string) => page.getByRole("main").getByLabel(label, { exact: true });

/** Presses keys one after the other, as they are written with blanks between them. */
async function press(page: Page, keys: string): Promise<void> {
  for (const key of keys.split(" ")) await page.keyboard.press(key);
}

describe("findings and a diagnosis by keyboard", () => {
  it("fills the sheet, mends what contradicts itself, and records a diagnosis beside the findings", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    // What the record refuses is answered with 400, which the browser notes.
    bench.expectComplaint(/400 \(Bad Request\)/);
    const { page } = bench;
    failingShot(page, "findings-and-diagnosis");
    const hand = byKeyboard(page);
    const caseId = await beginCase(hand, "26", "upper left first molar");
    const findings = async () => bodyOf(bench, caseId, "findings");

    await hand.addMoment("Findings");
    await hand.writeDay(field(page, "Examined on"), day);
    await expect.poll(async () => (await findings()).takenOn).toBe(day);
    await hand.press(page.getByRole("button", { name: "Add controls 25, 27 and 16" }));
    await fillSheet(hand);
    await expect
      .poll(async () => (await findings()).teeth.map(({ cold }) => cold))
      .toEqual([
        { reply: "none" },
        { reply: "normal" },
        { reply: "normal" },
        { reply: "heightened", lingersSeconds: 4 },
      ]);
    expect((await findings()).history).toMatchObject({ troubleSwallowing: "yes", trismus: "no" });
    expect((await findings()).teeth[0]?.probingMm).toEqual({
      ...{ mesiobuccal: 3, buccal: 8, distobuccal: 3, mesiolingual: 3, lingual: 2, distolingual: 12 },
    });
    await page.getByText("buccal 8 mm, narrow").waitFor();
    await shot(page, "findings-sheet");
    await page.keyboard.press("Control+ArrowDown");
    await page.locator("select[data-unset=true]:focus").waitFor();

    await contradict(hand);
    await mendRefused(hand);
    await expect.poll(async () => (await findings()).teeth[0]?.cold).toEqual({ reply: "none" });

    await hand.addMoment("Diagnosis");
    await hand.writeDay(field(page, "Made on"), day);
    await diagnose(hand, bench, caseId);
    await bench.close();
  });
});

/** Cold over four teeth, then what else decides; the probing digit by digit. */
async function fillSheet(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.choose(field(page, "Cold of 26"), "none");
  await press(page, "ArrowRight n n ArrowRight n n ArrowRight h 4");
  await hand.write(field(page, "Electric of 26"), "n");
  await hand.write(field(page, "Electric of 25"), "30");
  await hand.choose(field(page, "Percussion of 26"), "painful");
  await press(page, "ArrowRight n ArrowRight n ArrowDown ArrowDown n");
  await hand.write(field(page, "Probing mesiobuccal of 26"), "3");
  await press(page, "8 3 3 2 + 2");
  await hand.choose(field(page, "Trouble swallowing"), "yes");
  await press(page, "ArrowDown n");
  await hand.choose(field(page, "Pain without a cause"), "no");
  await hand.choose(field(page, "Radiolucency"), "apical");
  await hand.choose(field(page, "Apex"), "closed");
  await recorded(page);
}

/** A tooth that does not reply and lingers: the ledger says so at the cell, and it goes once the seconds are taken out. */
async function contradict(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.choose(field(page, "Cold of 26"), "none");
  await press(page, "1 2");
  await hand.choose(field(page, "Heat of 26"), "none");
  const atCell = page.getByRole("cell").filter({ has: page.getByLabel("Cold of 26", { exact: true }) });
  await atCell.getByText("12 s stand at a test without a reply").waitFor();
  await page.getByText("Tooth 26, cold, lingers seconds: 12 s stand at a test without a reply").waitFor();
  await shot(page, "findings-contradiction");
  await hand.write(field(page, "Seconds after cold of 26"), "");
  await atCell.getByText("12 s stand").waitFor({ state: "detached" });
}

/** What the record refuses stays as it was written, on other pages too, until it is mended. */
async function mendRefused(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.write(field(page, "Probing buccal of 27"), "25");
  await page.getByRole("main").getByText("25 is above what is accepted").waitFor();
  await hand.write(field(page, "Tooth of 16"), "26");
  await page.getByRole("main").getByText('"26" is the tooth itself').waitFor();
  await hand.press(page.getByRole("link", { name: /^Presenting/ }));
  await hand.press(
    page.getByRole("navigation", { name: "Moments of the case" }).getByRole("link", { name: /^Findings/ }),
  );
  await page.getByRole("main").getByText("25 is above what is accepted").waitFor();
  await hand.write(field(page, "Probing buccal of 27"), "2");
  await hand.write(field(page, "Tooth of 26").last(), "16");
  await page.getByRole("main").getByText('"26" is the tooth itself').waitFor({ state: "detached" });
  await recorded(page);
}

/** Reads what the findings speak for, says something else with a reason, then takes the findings' terms. */
async function diagnose(hand: Hand, bench: BenchInBrowser, caseId: string): Promise<void> {
  const { page } = hand;
  const now = async () => bodyOf(bench, caseId, "diagnosis");
  await page.getByRole("region", { name: "Can't wait" }).getByText("Trouble swallowing: refer at once").waitFor();
  const pulp = page.getByRole("region", { name: "Pulp, from the findings" });
  await pulp.getByText("Pulp necrosis").first().waitFor();

  await hand.pick(page.getByRole("radio", { name: "previously treated" }));
  await hand.pick(page.getByRole("radio", { name: "symptomatic apical periodontitis", exact: true }));
  const difference = page.getByRole("region", { name: "Difference from the findings" });
  await difference.getByText("A reason is asked for").waitFor();
  await hand.write(field(page, "Why it differs"), "Opened elsewhere in 2019.");
  await difference.getByText("A reason is asked for").waitFor({ state: "detached" });
  await shot(page, "diagnosis-differs");
  await expect.poll(now).toMatchObject({ pulpal: "previouslyTreated", differsBecause: "Opened elsewhere in 2019." });
  const { ledger } = await bench.caseNow(caseId);
  expect((await now()).suggestion).toBe(ledger.find(({ topic }) => topic === "diagnosis")?.id);

  await hand.press(page.getByRole("button", { name: "Take both terms as your own" }));
  await expect.poll(now).toMatchObject({ pulpal: "pulpNecrosis", apical: "symptomaticApicalPeriodontitis" });
  await hand.undo();
  await expect.poll(now).toMatchObject({ pulpal: "previouslyTreated" });

  const [row] = await pulp.getByRole("link", { name: /^Row P\d+ of the table/ }).all();
  if (row === undefined) throw new Error("no row speaks for the term");
  const name = (await row.textContent()) ?? "";
  await hand.press(row);
  await page.locator(`#${name}:focus`).waitFor();
}

/** The body of the only part of a kind. */
async function bodyOf<Kind extends "findings" | "diagnosis">(
  bench: BenchInBrowser,
  caseId: string,
  kind: Kind,
): Promise<BodyOf<Kind>> {
  const [part] = partsOf((await bench.caseNow(caseId)).parts, kind);
  if (part === undefined) throw new Error(`the case has no ${kind}`);
  return part.body as BodyOf<Kind>;
}
