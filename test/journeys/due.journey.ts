import { readFileSync } from "node:fs";
import { join } from "node:path";
import ICAL from "ical.js";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { visit } from "../../scripts/demo/cases/usual-bodies.ts";
import { caseMark } from "../../src/record/case-mark.ts";
import { dayAfter } from "../../src/record/day-after.ts";
import type { BodyOf, PartKind } from "../../src/record/parts.ts";
import type { CaseView } from "../../src/server/api.ts";
import { today } from "../../src/web/parts/days-in-words.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { canalog } from "./canalog.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { failingShot } from "./shots.ts";

/** A day counted from the day on which this runs, as the person's own clock has it. */
const from = (days: number): string => dayAfter(today(), days);

const about = (more: Partial<BodyOf<"case">>): BodyOf<"case"> => ({
  ...{ pseudonym: "P-1001", tooth: "26", birthYear: 1970, sex: "female", presentedOn: from(-60) },
  ...{ treatment: "firstTreatment", complaint: "", referredFor: "", background: "", demo: false, ...more },
});

async function newCase({ page }: BenchInBrowser, more: Partial<BodyOf<"case">>): Promise<string> {
  const made = await page.request.post("/api/cases", { data: { case: about(more) } });
  const { caseId }: CaseView = await made.json();
  return caseId;
}

async function put({ page }: BenchInBrowser, caseId: string, id: string, kind: PartKind, body: unknown): Promise<void> {
  const data = { words: `${kind} noted`, operations: [{ op: "put", id, kind, baseRevision: 0, body }] };
  expect((await page.request.post(`/api/cases/${caseId}/gestures`, { data })).ok()).toBe(true);
}

/** One's own two cases and one that is marked as the demo's. */
async function threeCases(bench: BenchInBrowser): Promise<readonly [string, string, string]> {
  const open = await newCase(bench, {});
  const medicament = { kind: "calciumHydroxide", changeBy: from(2) } as const;
  await put(bench, open, "visit-1", "visit", visit({ on: from(-20), aim: "", nextOn: from(-12), medicament }));
  const closed = await newCase(bench, { pseudonym: "P-1002", tooth: "46", sex: "male" });
  const told = { painAfter24h: 0, painAfter7d: 0 };
  await put(bench, closed, "visit-1", "visit", visit({ on: from(-9), aim: "", nextOn: from(171), ...told }));
  const handback = { restoreWith: "a crown", orificesMarkedBy: "", warnings: "", prognosis: "" };
  await put(bench, closed, "handback-1", "handback", { on: from(-9), restoreBy: from(19), ...handback });
  const invented = await newCase(bench, { pseudonym: "D-7", demo: true });
  await put(bench, invented, "visit-1", "visit", visit({ on: from(-2), aim: "", nextOn: from(0), painAfter24h: 1 }));
  return [open, closed, invented];
}

const rows = (page: Page, span: string) => page.locator(`.due-group[data-span=${span}] .due-row`);
const textOf = async (page: Page, span: string) =>
  (await rows(page, span).allInnerTexts()).map((text) => text.replace(/\s+/g, " "));

/** The calendar file that a key brings, read by another program's reader. */
async function calendarOf(page: Page): Promise<{ readonly text: string; readonly summaries: readonly string[] }> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("c")]);
  expect(download.suggestedFilename()).toBe("canalog-due.ics");
  const text = readFileSync(await download.path(), "utf8");
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
  return { text, summaries: events.map((event) => new ICAL.Event(event).summary) };
}

describe("what is due", () => {
  it("stands by how far away it is, leads to its part by the keyboard, and leaves as a calendar without the patient", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "due");
    await page.getByRole("heading", { name: "Logbook" }).waitFor();
    await page.keyboard.press("d");
    await page.getByRole("heading", { name: "Nothing is due" }).waitFor();
    await faultsAtBothSizes(page, "due-empty");
    await page.keyboard.press("Escape");
    await page.getByRole("heading", { name: "No case yet" }).waitFor();

    const [open, closed, invented] = await threeCases(bench);
    await page.reload();
    // Overdue: both pain scores and the next visit of the first; this week: its medicament, and two of the demo's.
    const way = page.getByRole("link", { name: /^Due/ });
    await expect.poll(() => way.textContent()).toMatch(/^Due3 this week▲ 3 overdueD$/);
    await faultsAtBothSizes(page, "due-logbook");
    await page.keyboard.press("d");
    await rows(page, "later").first().waitFor();
    const [mark, demoMark] = [caseMark(open), caseMark(invented)];
    expect((await textOf(page, "overdue")).map((text) => text.replace(/ over \S+ \S+ \S+/, " over"))).toEqual([
      `19 days over Pain after 24 hours tooth 26 P-1001 mark ${mark}`,
      `13 days over Pain after 7 days tooth 26 P-1001 mark ${mark}`,
      `12 days over Next visit tooth 26 P-1001 mark ${mark}`,
    ]);
    expect((await textOf(page, "week")).map((text) => text.split(" ")[0])).toEqual(["today", "in", "in"]);
    expect((await textOf(page, "week"))[0]).toMatch(new RegExp(`Next visit .*D-7 .*${demoMark} Demo: invented$`));
    expect((await textOf(page, "fourWeeks"))[0]).toMatch(/^in 19 days .* Restoration tooth 46 P-1002/);
    expect((await textOf(page, "later"))[0]).toMatch(/^in 6 months .* Recall tooth 46 P-1002/);
    await faultsAtBothSizes(page, "due-list");

    // Digits choose kinds, which add up; what none answers to is said.
    await page.keyboard.press("4");
    await page.keyboard.press("3");
    await expect.poll(() => page.locator(".due-row").count()).toBe(2);
    expect(await page.getByRole("button", { name: /^Recall/ }).getAttribute("aria-pressed")).toBe("true");
    await faultsAtBothSizes(page, "due-some");
    await page.keyboard.press("0");
    await page.getByLabel("Origin").selectOption("demo");
    await expect.poll(() => page.locator(".due-row").count()).toBe(2);
    await page.getByLabel("Origin").blur();
    await page.keyboard.press("2");
    await page.getByText("Nothing of these kinds is due.").waitFor();
    await page.keyboard.press("0");
    await expect.poll(() => page.locator(".due-row").count()).toBe(8);

    // One's own days alone; kind and mark, nothing else.
    const { text, summaries } = await calendarOf(page);
    expect(summaries.map((says) => says.replace(/ \(case \S+\)$/, ""))).toEqual([
      ...["Due: pain after 24 hours", "Due: pain after 7 days", "Due: next visit", "Due: medicament to change"],
      ...["Due: restoration", "Due: recall"],
    ]);
    expect(summaries.every((says) => says.includes(mark) || says.includes(caseMark(closed)))).toBe(true);
    for (const secret of ["P-1001", "P-1002", "D-7", demoMark, "1970", "female"]) expect(text).not.toContain(secret);

    // The shell writes the same, and the demo's days with them where that is asked for.
    const { home } = bench.server;
    for (const [args, count] of [
      [[], 6],
      [["--demo"], 8],
    ] as const) {
      const file = join(home, "due.ics");
      const ran = await canalog(home, ["due", "--to", file, ...args]);
      expect([ran.code, ran.out]).toEqual([0, `Written: ${file} (${count} due)\n`]);
      expect(readFileSync(file, "utf8").match(/BEGIN:VEVENT/g)).toHaveLength(count);
    }

    // The third row by the arrows opens the visit that named the day.
    for (const key of ["ArrowDown", "ArrowDown", "ArrowDown", "ArrowDown", "ArrowUp", "Enter"])
      await page.keyboard.press(key);
    await page.waitForURL(`**/case/${open}/visit-1`);
    await page.getByRole("heading", { level: 1 }).first().waitFor();

    // A later visit stands: the one before no longer waits for it.
    await put(bench, open, "visit-2", "visit", visit({ on: from(0), aim: "", medicamentOut: "removed" }));
    await page.goBack();
    await expect.poll(() => rows(page, "overdue").count()).toBe(2);
    expect((await textOf(page, "overdue")).some((line) => /Next visit|Medicament/.test(line))).toBe(false);

    bench.expectComplaint(/ERR_FAILED/);
    await page.route("**/api/due?*", (route) => route.abort());
    await page.reload();
    await page.getByRole("alert").getByText("Cannot reach Canalog").waitFor({ timeout: 20_000 });
    await faultsAtBothSizes(page, "due-unreachable");
    await page.unroute("**/api/due?*");
    await page.getByRole("button", { name: "Try again" }).click();
    await rows(page, "overdue").first().waitFor();
    await bench.close();
  });
});
