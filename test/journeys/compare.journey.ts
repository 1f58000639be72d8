import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { partsOf } from "../../src/record/parts.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { failingShot, shot } from "./shots.ts";

const room = "/case/demo-a/light-box/compare/comparison-6-months";
const pane = (page: Page, side: "Before" | "After") => page.getByRole("application", { name: new RegExp(`^${side}:`) });
const laid = (page: Page) => page.getByRole("application", { name: /, (swipe|checkerboard|blink|difference)$/ });
const headline = (page: Page) => page.getByText("of the area that the lesion at MB1 had before");
const layer = (page: Page, property: string) =>
  page
    .locator(".compared-layer")
    .first()
    .evaluate((element, name) => getComputedStyle(element).getPropertyValue(name), property);

async function comparisonNow({ caseNow }: BenchInBrowser) {
  const comparisons = partsOf((await caseNow("demo-a")).parts, "comparison");
  return comparisons.find(({ id }) => id === "comparison-6-months")?.body;
}
const landmarksOf = async (bench: BenchInBrowser) => (await comparisonNow(bench))?.landmarks ?? [];
const partsToGoBy = async (bench: BenchInBrowser) => (await comparisonNow(bench))?.hardParts?.length ?? 0;
const entryOf = async ({ caseNow }: BenchInBrowser) =>
  (await caseNow("demo-a")).ledger.find(({ subject }) => subject === "compareFilms of comparison-6-months");
const ratioOf = (output: unknown): number =>
  Number(typeof output === "object" && output !== null ? Reflect.get(output, "areaRatio") : Number.NaN);

/** What is not there yet is computed now, or what is under way is waited for. */
async function compared(page: Page): Promise<void> {
  await page.getByRole("complementary", { name: "Comparison" }).waitFor();
  await page.keyboard.press("c");
  await headline(page).waitFor({ timeout: 120_000 });
}

describe("two dates of one tooth", () => {
  it("are laid on each other, looked at by keys, and compared anew when a landmark changes", async () => {
    const bench = await benchInBrowser({ demo: true, who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "compare");
    await page.goto("/case/demo-a/light-box");
    await page.getByRole("link", { name: "two dates" }).click();
    await page.getByRole("link", { name: /^day 0 and day 210/ }).click();
    await expect.poll(() => page.url()).toContain(room);
    await compared(page);
    // The lesion's radius went from 2.2 to 1.6 mm: 0.529 of the area.
    const first = await entryOf(bench);
    expect(Math.abs(ratioOf(first?.output) / 0.529 - 1)).toBeLessThan(0.08);

    // The line of the swipe, by keys.
    await expect.poll(() => laid(page).locator("canvas").count(), { timeout: 60_000 }).toBe(2);
    await laid(page).focus();
    const line = page.getByRole("slider", { name: "Line between the films" });
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => line.getAttribute("aria-valuenow")).toBe("52");
    await page.keyboard.press("Shift+ArrowLeft");
    await expect.poll(() => line.getAttribute("aria-valuenow")).toBe("42");
    expect(await layer(page, "clip-path")).toBe("inset(0px 0px 0px 42%)");
    await shot(page, "compare-swipe");

    // Squares, and what changed with its scale.
    await page.keyboard.press("2");
    await page.keyboard.press("]");
    await expect.poll(() => layer(page, "mask-size")).toBe("256px 256px");
    await page.keyboard.press("5");
    await page.getByRole("img", { name: /^Scale of the difference/ }).waitFor();
    await shot(page, "compare-difference");

    // A landmark taken off asks for another comparison; taken back, the old one is there at once.
    await page.keyboard.press("1");
    await pane(page, "Before").focus();
    await page.keyboard.press("n");
    await page.keyboard.press("Delete");
    await page.getByRole("heading", { name: "Not compared yet" }).waitFor();
    await expect.poll(async () => (await landmarksOf(bench)).length).toBe(6);
    await page.keyboard.press("Control+z");
    await headline(page).waitFor();
    expect((await entryOf(bench))?.id).toBe(first?.id);

    // A part to go by, corner by corner with the crosshair; then one with the pointer, and both taken off or back.
    await page.keyboard.press("h");
    await pane(page, "Before").locator("canvas").waitFor();
    await pane(page, "Before").focus();
    for (const key of ["ArrowRight", "ArrowDown", "ArrowLeft"]) {
      await page.keyboard.press("Space");
      for (let step = 0; step < 12; step += 1) await page.keyboard.press(`Shift+${key}`);
    }
    await page.keyboard.press("Enter");
    await expect.poll(() => partsToGoBy(bench)).toBe(1);
    await page.getByRole("heading", { name: "Not compared yet" }).waitFor();
    const film = await pane(page, "Before").locator("canvas").boundingBox();
    if (film === null) throw new Error("no film");
    const corners = [
      [0.1, 0.1],
      [0.3, 0.12],
      [0.28, 0.3],
      [0.1, 0.1],
    ] as const;
    for (const [across, down] of corners)
      await page.mouse.click(film.x + across * film.width, film.y + down * film.height);
    await expect.poll(() => partsToGoBy(bench)).toBe(2);
    expect((await landmarksOf(bench)).length).toBe(7);
    await shot(page, "compare-parts");
    await pane(page, "Before").focus();
    await page.keyboard.press("Delete");
    await expect.poll(() => partsToGoBy(bench)).toBe(1);
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Take off part 1" }).click();
    await expect.poll(() => partsToGoBy(bench)).toBe(0);
    expect((await entryOf(bench))?.id).toBe(first?.id);

    // One more, by the crosshair of each film; then another entry, and the old one still stands.
    await page.keyboard.press("1");
    for (const side of ["Before", "After"] as const) {
      await pane(page, side).locator("canvas").waitFor();
      await pane(page, side).focus();
      // From the first landmark 60 pixels to the right, on both films.
      await page.keyboard.press("n");
      for (let step = 0; step < 6; step += 1) await page.keyboard.press("Shift+ArrowRight");
      await page.keyboard.press("Space");
    }
    await expect.poll(async () => (await landmarksOf(bench)).length).toBe(8);
    await page.getByRole("button", { name: /^Compare( C)?$/ }).waitFor();
    await compared(page);
    const second = await entryOf(bench);
    expect(second?.id).not.toBe(first?.id);
    expect(ratioOf((await bench.ledgerEntry(first?.id ?? "")).output)).toBe(ratioOf(first?.output));
    await bench.close();
  }, 420_000);

  it("are begun with two films and four places marked by the pointer", async () => {
    const bench = await benchInBrowser({ demo: true, who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "compare-new");
    await page.goto("/case/demo-c/light-box/compare");
    await page.getByRole("button", { name: "Mark landmarks" }).click();
    await page.getByText("0 of 4 landmarks are marked", { exact: false }).waitFor();
    for (const side of ["Before", "After"] as const) await pane(page, side).locator("canvas").waitFor();
    // The same share of both films: they were taken with the tube 2 degrees apart.
    const places = [
      [0.35, 0.35],
      [0.65, 0.36],
      [0.62, 0.6],
      [0.38, 0.62],
    ] as const;
    for (const [across, down] of places)
      for (const side of ["Before", "After"] as const) {
        const box = await pane(page, side).locator("canvas").boundingBox();
        if (box === null) throw new Error(`no film ${side}`);
        await page.mouse.click(box.x + across * box.width, box.y + down * box.height);
      }
    await page.getByRole("heading", { name: "Not compared yet" }).waitFor();
    await page
      .getByRole("button", { name: /^Compare/, exact: false })
      .filter({ hasText: /^Compare/ })
      .first()
      .waitFor();
    await page.keyboard.press("c");
    await page.getByRole("progressbar", { name: "Progress of the comparison" }).waitFor();
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByText("Stopped; nothing was kept.").waitFor();
    await bench.close();
  }, 240_000);
});
