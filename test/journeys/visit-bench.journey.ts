import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import type { CaseView } from "../../src/server/api.ts";
import { newBodies } from "../../src/web/rooms/case/new-bodies.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { failingShot } from "./shots.ts";

const about: BodyOf<"case"> = {
  ...{ pseudonym: "P-26", tooth: "26", birthYear: 1970, sex: "female", presentedOn: "2026-01-12" },
  ...{ treatment: "retreatment", complaint: "", referredFor: "", background: "", demo: false },
};
const steps = [
  { says: "Tooth and side named", about: "timeOut" },
  { says: "Access opened", about: "access", holdPoint: "access" },
  { says: "Old filling looked at" },
] as const;

/** A case with a new visit, its page open, and a template in the cabinet. */
async function newVisit({ page }: BenchInBrowser): Promise<string> {
  const { caseId }: CaseView = await (await page.request.post("/api/cases", { data: { case: about } })).json();
  const put = (id: string, kind: string, body: unknown) => ({ op: "put", id, kind, baseRevision: 0, body });
  const visit = { words: "Visit added", operations: [put("visit-1", "visit", newBodies.visit("2026-03-12", {}))] };
  expect((await page.request.post(`/api/cases/${caseId}/gestures`, { data: visit })).status()).toBe(200);
  const kept = put("template-first", "template", { name: "First visit", aim: "Open it", steps, stock: [] });
  const template = { words: "Template kept", operations: [kept] };
  expect((await page.request.post("/api/cabinet/gestures", { data: template })).status()).toBe(200);
  await page.goto(`/case/${caseId}/visit-1`);
  await page.getByRole("region", { name: "At the chair" }).waitFor();
  return caseId;
}

/** Single keys, away from any field. */
async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
  for (const key of keys) await page.keyboard.press(key);
}

const closed = (page: Page) => page.getByRole("dialog").waitFor({ state: "hidden" });

describe("the bench of a visit", () => {
  it("is worked by keys: clock, steps, a time-out that stops at the wrong side, hold point, count", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "visit-bench");
    const caseId = await newVisit(bench);
    const visitNow = async () => partsOf((await bench.caseNow(caseId)).parts, "visit")[0]?.body;
    await faultsAtBothSizes(page, "visit-bench-new");

    await press(page, "k");
    await page.getByRole("button", { name: "Stop the clock" }).waitFor();
    await page.getByRole("button", { name: /^First visit/ }).waitFor();
    await press(page, "1");
    await page.getByRole("button", { name: /^Access opened/ }).waitFor();
    await expect.poll(async () => (await visitNow())?.steps?.length).toBe(3);
    expect((await visitNow())?.timeOut).toBe("notDone");

    // The other side: a stop in words; recorded as it was named, and the step stays open.
    await press(page, "1", "1", "6", "f", "a");
    await page.getByRole("alert").getByText("Stop. This is not the tooth of this case.").waitFor();
    await faultsAtBothSizes(page, "visit-bench-stop");
    await page.keyboard.press("Enter");
    await closed(page);
    await expect.poll(async () => (await visitNow())?.timeOutCheck?.tooth).toBe("16");
    expect(await visitNow()).toMatchObject({ timeOut: "notDone" });
    expect((await visitNow())?.steps?.[0]?.doneAtMin).toBeUndefined();

    // The right one: done, and the step with it at its minute.
    await press(page, "o", "2", "6", "f", "a");
    await page.getByText("26, upper left first molar: as the case has it").waitFor();
    await page.keyboard.press("Enter");
    await closed(page);
    await expect.poll(async () => (await visitNow())?.steps?.[0]?.doneAtMin).toBe(0);
    expect(await visitNow()).toMatchObject({ timeOut: "toothAndSideChecked", timeOutCheck: { tooth: "26", atMin: 0 } });

    // A hold point by its step; a step without more by one key, taken back by another press.
    await press(page, "2", "s", "Enter");
    await closed(page);
    await expect
      .poll(async () => (await visitNow())?.holdPoints[0])
      .toMatchObject({ at: "access", seenBy: "supervisor" });
    await press(page, "3");
    await expect.poll(async () => (await visitNow())?.steps?.map(({ doneAtMin }) => doneAtMin)).toEqual([0, 0, 0]);
    await press(page, "3");
    await expect.poll(async () => (await visitNow())?.steps?.[2]?.doneAtMin).toBeUndefined();

    await press(page, "c");
    await page.getByLabel("Counted out").fill("14");
    await page.getByLabel("Counted in").fill("13");
    await page
      .getByRole("alert")
      .getByText(/^14 out, 13 in/)
      .waitFor();
    await page.keyboard.press("Enter");
    await closed(page);
    await page
      .getByRole("list", { name: "How the visit stands" })
      .getByRole("button", { name: /14 out, 13 in/ })
      .waitFor();

    // Another window shows the same clock; stopped, the visit has its minutes.
    const other = await bench.context.newPage();
    await other.goto(`/case/${caseId}/visit-1`);
    await other.getByRole("button", { name: "Stop the clock" }).waitFor();
    await other.close();
    await press(page, "k");
    await expect.poll(async () => (await visitNow())?.minutes).toBe(1);
    await page.getByRole("img", { name: /^The visit by the clock/ }).waitFor();
    await faultsAtBothSizes(page, "visit-bench-closed");
    await bench.close();
  });

  it("is worked by a pointer: tiles, a step left out, and what is open leads to its field", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "visit-bench-pointer");
    const caseId = await newVisit(bench);
    const visitNow = async () => partsOf((await bench.caseNow(caseId)).parts, "visit")[0]?.body;
    const tiles = page.getByRole("toolbar", { name: "Note" });
    for (const tile of await tiles.getByRole("button").all())
      expect((await tile.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(56);

    await tiles.getByRole("button", { name: "Dam" }).click();
    await page.getByRole("radio", { name: "Without", exact: true }).click();
    await page.getByLabel("Why without, and how instead").fill("cotton rolls");
    await page.getByRole("button", { name: "Record it" }).click();
    await closed(page);
    await expect
      .poll(async () => (await visitNow())?.isolation)
      .toEqual({ rubberDam: "notUsed", whyNot: "cotton rolls" });

    await page.getByRole("button", { name: /^First visit/ }).click();
    await page.getByRole("button", { name: "Leave out: Old filling looked at" }).click();
    await page.getByLabel("Left out because").fill("none there");
    await page.getByRole("button", { name: "Leave it out" }).click();
    await expect.poll(async () => (await visitNow())?.steps?.[2]?.leftOut).toBe("none there");

    const open = page.getByRole("list", { name: "Open before the patient leaves" });
    await open.getByRole("button", { name: /told to the patient/ }).click();
    await expect
      .poll(() => page.getByLabel("Told to the patient").evaluate((field) => field === document.activeElement))
      .toBe(true);
    await bench.close();
  });
});
