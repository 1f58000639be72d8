import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { jargonIn } from "../../src/core/plain-words/jargon.ts";
import { planTold } from "../../src/ledger/plan-told.ts";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import { newBodies } from "../../src/web/rooms/case/new-bodies.ts";
import { misplacedWords, readersMissing, readPdf, textOfPdf } from "../documents/read-handout.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { byKeyboard } from "./by-keyboard.ts";
import { beginCase, makeDocument } from "./first-case-story.ts";
import { type Hand, recorded } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";
import { violations } from "./violations.ts";

const day = "2026-02-10";

describe("a plan and the page that the patient signs", () => {
  it("is chosen by a key on what the ledger says, its risks named, its reason said plainly, and printed", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "plan-and-consent");
    const hand = byKeyboard(page);
    const caseId = await examinedCase(bench, hand);
    await hand.addMoment("Plan");
    await hand.writeDay(page.getByRole("main").getByLabel("Made on", { exact: true }), day);
    await page.getByRole("heading", { name: "Ways side by side" }).waitFor();
    expect((await plan(bench, caseId)).chosen).toBe("watch");

    // Keys of the page act outside of fields that take letters.
    await page.locator("#moment-title").focus();
    await page.keyboard.press(await keyOf(page, "root canal treatment"));
    await expect.poll(async () => (await plan(bench, caseId)).chosen).toBe("treat");
    await chosenOnWhatStands(bench, caseId);
    await page.getByRole("row", { name: /^Root canal treatment ✓ chosen/ }).waitFor();

    const called = await calledFor(bench, caseId);
    expect(called.length).toBeGreaterThan(3);
    const [first] = called;
    await hand.press(page.getByRole("button", { name: /^Root canal treatment/, expanded: false }));
    await page
      .getByRole("checkbox", { name: first?.says ?? "" })
      .first()
      .check();
    await expect.poll(async () => (await plan(bench, caseId)).risksNamed).toEqual([first?.says]);

    await hand.write(page.getByRole("textbox", { name: "Because", exact: true }), "Inflammation that won't settle.");
    const plainly = page.getByRole("textbox", { name: "Because, in words for the patient" });
    await hand.write(plainly, "The pulp is necrotic.");
    await page.getByText("words of the trade: pulp, necrotic").waitFor();
    await hand.write(plainly, "The nerve will not get well. We can keep the tooth.");
    await page.getByText("● Plain: short sentences").waitFor();
    await recorded(page);
    for (const size of sizes) {
      await page.setViewportSize(size);
      await shot(page, `plan-${size.width}`);
      expect(await violations(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)).toBe(false);
    }

    await keepsWhatStood(bench, caseId);

    await page.getByRole("link", { name: "Documents" }).click();
    const { bytes, view } = await makeDocument(hand, "Consent page");
    expect([view.as, view.fileName.endsWith(".pdf")]).toEqual(["consent", true]);
    expect(Buffer.from(bytes).includes("/StructTreeRoot")).toBe(true);
    if (readersMissing === undefined) checkConsent(bytes, { called, numbers: view.numbers.map(({ text }) => text) });
    await bench.close();
  });
});

const sizes = [
  { width: 900, height: 1200 },
  { width: 1440, height: 900 },
] as const;

/** A lower molar that was examined and diagnosed on one day. */
async function examinedCase(bench: BenchInBrowser, hand: Hand): Promise<string> {
  const caseId = await beginCase(hand, "46", "lower right first molar");
  const findings = newBodies.findings(day, "46");
  const onFilm = { ...findings.onFilm, lucency: "none", apex: "closed", earlierFilling: "none" };
  const seen = { ...findings.seen, caries: "deep", ferruleHeightMm: 3, ferruleWidthMm: 2, post: "no" };
  await record(bench, caseId, { id: "findings-1", kind: "findings", body: { ...findings, onFilm, seen } });
  const terms = { pulpal: "symptomaticIrreversiblePulpitis", apical: "symptomaticApicalPeriodontitis" };
  const diagnosis = { ...newBodies.diagnosis(day), ...terms };
  await record(bench, caseId, { id: "diagnosis-1", kind: "diagnosis", body: diagnosis });
  await bench.page.reload();
  await bench.page.getByRole("navigation", { name: "Moments of the case" }).waitFor();
  return caseId;
}

async function record(
  { page, caseNow }: BenchInBrowser,
  caseId: string,
  part: { id: string; kind: string; body: unknown },
): Promise<void> {
  const baseRevision = (await caseNow(caseId)).parts.find(({ id }) => id === part.id)?.revision ?? 0;
  const data = { words: `${part.kind} recorded`, operations: [{ op: "put", ...part, baseRevision }] };
  const answer = await page.request.post(`/api/cases/${caseId}/gestures`, { data });
  expect([answer.status(), await answer.text()]).toEqual([200, expect.anything()]);
}

/** The findings change after the choice: the plan goes on showing the list that it was made on, and what is new. */
async function keepsWhatStood(bench: BenchInBrowser, caseId: string): Promise<void> {
  const { page } = bench;
  await page.getByText("Nothing in it has changed since.").waitFor();
  const [findings] = partsOf((await bench.caseNow(caseId)).parts, "findings");
  const seen = { ...findings?.body.seen, mouthOpeningMm: 15 };
  await record(bench, caseId, { id: "findings-1", kind: "findings", body: { ...findings?.body, seen } });
  await page.reload();
  await page.getByRole("heading", { name: "as it stood at planning" }).waitFor();
  await page.getByText("+ new").waitFor();
  await page.getByText("Today's list beside it").click();
  await page.getByRole("heading", { name: "What makes this tooth harder", exact: true }).waitFor();
  await page.getByRole("button", { name: "The entry that the plan was made on" }).click();
  await page.getByText("This entry no longer holds").waitFor();
  await shot(page, "entry-of-plan");
  await page.keyboard.press("Escape");
}

/** The plan that was made last. */
async function plan(bench: BenchInBrowser, caseId: string): Promise<BodyOf<"plan">> {
  const last = partsOf((await bench.caseNow(caseId)).parts, "plan").at(-1);
  if (last === undefined) throw new Error("no plan is recorded");
  return last.body;
}

/** The digit that stands on the button of a way. */
async function keyOf(page: Page, way: string): Promise<string> {
  const button = page.getByRole("button", { name: `Choose ${way}` }).first();
  return (await button.getAttribute("aria-keyshortcuts")) ?? "";
}

/** The gesture that chose noted the entries of the ways and of difficulty that held. */
async function chosenOnWhatStands(bench: BenchInBrowser, caseId: string): Promise<void> {
  const { ledger } = await bench.caseNow(caseId);
  const { planEntry, difficultyEntry } = await plan(bench, caseId);
  expect(planEntry).toBe(ledger.find(({ topic }) => topic === "plan")?.id);
  expect(difficultyEntry).toBe(ledger.find(({ topic }) => topic === "difficulty")?.id);
}

type Called = NonNullable<ReturnType<typeof planTold>>["options"][number]["risks"];

/** The risks that the facts call for in the way that was chosen. */
async function calledFor(bench: BenchInBrowser, caseId: string): Promise<Called> {
  const { ledger } = await bench.caseNow(caseId);
  const told = planTold(ledger.find(({ topic }) => topic === "plan"));
  return told?.options.find(({ way }) => way === "treat")?.risks ?? [];
}

/** What a patient reads in the file: plain words, every risk, every number, room to sign, nothing over an edge. */
function checkConsent(bytes: Uint8Array, { called, numbers }: { called: Called; numbers: readonly string[] }): void {
  const pages = readPdf(bytes);
  expect(pages.length).toBeLessThanOrEqual(4);
  expect(misplacedWords(pages)).toEqual([]);
  const text = textOfPdf(pages).replace(/\s+/g, " ");
  const [said = ""] = text.split("Where the numbers come from:");
  for (const { plain } of called) expect(said).toContain(plain);
  for (const number of numbers) expect(text).toContain(number.replace(/\s+/g, " "));
  for (const words of ["The nerve will not get well.", "You can say no.", "You sign here"])
    expect(said).toContain(words);
  expect(jargonIn(said)).toEqual([]);
  expect(text).not.toContain("A. Resident");
}
