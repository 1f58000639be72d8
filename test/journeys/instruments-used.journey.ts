import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { filmIsOpen } from "./hand.ts";
import { failingShot } from "./shots.ts";

const canal = (page: Page, name: string) => page.getByRole("region", { name, exact: true });

async function openDemo({ page }: BenchInBrowser): Promise<void> {
  await page.goto("/case/demo-a/instruments");
  await page.getByRole("heading", { name: "Instruments used" }).waitFor();
  await canal(page, "MB1").waitFor();
}

describe("the instruments of a case", () => {
  it("are read canal by canal, place by place and on the film, by keyboard alone", async () => {
    const bench = await benchInBrowser({ who: "A. Resident", demo: true });
    const { page } = bench;
    failingShot(page, "instruments-used");
    await openDemo(bench);
    const mb1 = canal(page, "MB1");

    // The one that was bent most stands open, with its strain, its bound and what it used of its life.
    const bent = mb1.getByRole("region", { name: /^\d\d\/\S+ in MB1, / });
    await bent
      .getByText(/mm from its tip/)
      .first()
      .waitFor();
    await bent
      .getByText(/no bound|no less than this|no more than this|as measured/)
      .first()
      .waitFor();
    await bent.getByRole("img", { name: /^Strain along/ }).waitFor();
    await bent.getByRole("img", { name: /seated in its canal/ }).waitFor();
    const said = ((await page.locator("main").textContent()) ?? "").toLowerCase();
    expect(said).not.toMatch(/\bsafe\b|\bproves?\b|turns to failure|cycles to/);

    // A place along the graph is told in words and shown in the seat as well.
    const graph = bent.getByRole("slider", { name: "Place along the instrument" });
    await graph.focus();
    await page.keyboard.press("Home");
    await expect.poll(() => graph.getAttribute("aria-valuetext")).toMatch(/^0\.0 mm from its tip, .*strain \d/);
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => graph.getAttribute("aria-valuetext")).not.toMatch(/^0\.0 mm from its tip/);
    expect(await bent.locator('.instruments-seat [data-part="place"]').count()).toBe(1);
    await page.keyboard.press("Escape");
    await expect.poll(() => bent.locator('[data-part="place"]').count()).toBe(0);

    // Another instrument by the arrow keys of the choice.
    const before = await bent.getAttribute("aria-labelledby");
    await mb1.getByRole("radio").first().focus();
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => bent.getAttribute("aria-labelledby")).not.toBe(before);
    await faultsAtBothSizes(page, "instruments-used");

    // The film leads to the light box, where the same strain lies over it and can be taken off.
    await mb1.getByRole("radio").first().focus();
    await page.keyboard.press("Space");
    await mb1
      .getByRole("link", { name: /On the light box/ })
      .first()
      .focus();
    await page.keyboard.press("Enter");
    await filmIsOpen(page);
    const toggle = page.getByRole("button", { name: /in MB1, .*most \d/, pressed: true });
    await toggle.waitFor();
    await page.locator('.film-overlay [data-part="strain"]').waitFor();
    await faultsAtBothSizes(page, "strain-on-light-box");
    await toggle.focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator('.film-overlay [data-part="strain"]').count()).toBe(0);
    await bench.close();
  });

  it("say what to record where there are none, and what is missing where there is little", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "instruments-none");
    const about = {
      ...{ birthYear: 1970, sex: "female", presentedOn: "2026-01-12", treatment: "firstTreatment", pseudonym: "P-46" },
      ...{ complaint: "", referredFor: "", background: "", demo: false, tooth: "46" },
    };
    const answer = await page.request.post("/api/cases", { data: { case: about } });
    expect(answer.ok()).toBe(true);
    const { caseId } = await answer.json();
    await page.goto(`/case/${caseId}/instruments`);
    await page.getByText("No instrument is recorded in a canal yet").waitFor();
    await faultsAtBothSizes(page, "instruments-none");
    await page.getByRole("button", { name: "Add a visit" }).focus();
    await page.keyboard.press("Enter");
    await page
      .getByRole("heading", { name: /^Visit/ })
      .first()
      .waitFor();

    // One row without a course: its refusal says what to supply.
    const visit = (await bench.caseNow(caseId)).parts.find(({ kind }) => kind === "visit");
    if (visit?.kind !== "visit") throw new Error("no visit");
    const row = { canal: "MB", size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous", depthMm: 19 };
    const body = { ...visit.body, instruments: [row, { ...row, canal: undefined }] };
    const put = { op: "put", id: visit.id, kind: "visit", baseRevision: visit.revision, body };
    const recorded = await page.request.post(`/api/cases/${caseId}/gestures`, {
      data: { words: "Instruments noted", operations: [put] },
    });
    expect(recorded.ok()).toBe(true);
    await page.goto(`/case/${caseId}/instruments`);
    await canal(page, "MB")
      .getByText(/How hard it was bent is not told: .*trace it from its orifice/)
      .waitFor();
    await page.getByText(/1 instrument of a visit without a canal/).waitFor();
    await faultsAtBothSizes(page, "instruments-without-course");
    await bench.close();
  });
});
