import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { partsOf } from "../../src/record/parts.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { filmIsOpen, filmOnBox, recorded } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";

const box = "/case/demo-a/light-box";
const panes = (page: Page) => page.getByRole("application", { name: /film of day/ });
const toggle = (page: Page, name: RegExp) =>
  page.getByRole("toolbar", { name: "Looking" }).getByRole("button", { name });
/** Where the film of a pane lies: the matrix from its pixels to the pane. */
const lies = (page: Page, pane: number) =>
  panes(page)
    .nth(pane)
    .locator("svg g")
    .first()
    .evaluate(
      (group) =>
        group
          .getAttribute("transform")
          ?.match(/-?[\d.e-]+/g)
          ?.map(Number) ?? [],
    );
/** The film's picture as it is drawn, as a sum over some of its pixels. */
const brightness = (page: Page) =>
  filmOnBox(page)
    .locator("canvas")
    .evaluate((canvas) => {
      if (!(canvas instanceof HTMLCanvasElement)) return 0;
      const paper = new OffscreenCanvas(64, 64).getContext("2d");
      paper?.drawImage(canvas, 0, 0, 64, 64);
      return paper?.getImageData(0, 0, 64, 64).data.reduce((sum, value) => sum + value, 0) ?? 0;
    });
const viewNow = async ({ caseNow }: BenchInBrowser, filmId: string) =>
  partsOf((await caseNow("demo-a")).parts, "film").find(({ id }) => id === filmId)?.body.view;

describe("looking at films", () => {
  it("lays them side by side, moves them together, and records a look that can be taken back", async () => {
    const bench = await benchInBrowser({ demo: true, who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "looking");
    await page.goto(box);
    await filmIsOpen(page);

    // Side by side, by keys.
    await page.keyboard.press("2");
    await expect.poll(() => panes(page).count()).toBe(2);
    await page.keyboard.press("4");
    await expect.poll(() => panes(page).locator("canvas").count()).toBe(4);
    const shown = () =>
      page.getByRole("navigation", { name: "Films of this case" }).locator("[data-lying=true]").count();
    expect(await shown()).toBe(4);

    // Together: every film of this case has a scale, so all go by the same millimetres.
    const before = await Promise.all([0, 1].map((pane) => lies(page, pane)));
    await panes(page).first().focus();
    await page.keyboard.press("ArrowRight");
    const step = async (pane: number) => ((await lies(page, pane))[4] ?? 0) - (before[pane]?.[4] ?? 0);
    await expect.poll(() => step(0)).toBeCloseTo(-40, 3);
    expect(await step(1)).toBeCloseTo(-40, 3);

    // By itself once they are let go.
    await page.keyboard.press("y");
    await expect.poll(() => toggle(page, /^together/).getAttribute("aria-pressed")).toBe("false");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => step(0)).toBeCloseTo(-80, 3);
    expect(await step(1)).toBeCloseTo(-40, 3);
    await page.keyboard.press("y");

    // Another film into the pane in hand: from the strip by a press, and by dragging into another pane.
    const thumbs = page.getByRole("navigation", { name: "Films of this case" }).getByRole("button");
    await thumbs.nth(5).click();
    await panes(page)
      .first()
      .and(page.getByRole("application", { name: /recall film/ }))
      .waitFor();
    await thumbs.nth(6).dragTo(panes(page).nth(2));
    await page
      .getByRole("region", { name: "Pane 3, in hand" })
      .getByRole("application", { name: /recall film/ })
      .waitFor();
    await shot(page, "looking-four");

    // Escape leads back to the film in hand, once nothing on it is chosen.
    await panes(page).nth(2).focus();
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
    await expect.poll(() => panes(page).count()).toBe(1);

    await page.goto(box);
    await filmIsOpen(page);
    await looks(bench);
    await overTheFilm(page);
    await bench.close();
  });
});

/** A look is recorded when the hand rests, named in words, and goes with undo; the sensor's own is one key away. */
async function looks(bench: BenchInBrowser): Promise<void> {
  const { page } = bench;
  await page.keyboard.press(",");
  await page.keyboard.press(".");
  await filmIsOpen(page);
  const filmId = new URL(page.url()).pathname.split("/").at(-1) ?? "";
  const plain = await viewNow(bench, filmId);
  const dull = await brightness(page);
  await page.keyboard.press("l");
  await page.getByRole("slider", { name: "Gamma" }).and(page.locator(":focus")).waitFor();
  for (let press = 0; press < 8; press += 1) await page.keyboard.press("ArrowRight");
  await expect.poll(() => brightness(page)).toBeGreaterThan(dull);
  await page.getByText(/^Saved: Gamma 1.4/).waitFor();
  await page.getByRole("slider", { name: "Local contrast" }).fill("0.5");
  await page.getByText(/^Saved: Local contrast 50 %/).waitFor();
  await page.getByText("densities can't be compared").waitFor();
  expect(await viewNow(bench, filmId)).toMatchObject({ gamma: 1.4, localContrast: 0.5 });
  await page.keyboard.press("Escape");
  await page.getByText("gamma 1.4, local contrast 50 %").waitFor();
  await shot(page, "looking-look");

  await page.keyboard.press("Control+z");
  await page.getByText("gamma 1.4", { exact: true }).waitFor();
  await page.keyboard.press("c");
  await recorded(page);
  await expect.poll(() => viewNow(bench, filmId)).not.toHaveProperty("gamma");
  await expect.poll(() => brightness(page)).toBe(dull);
  await page.keyboard.press("Control+z");
  await page.getByText(/^Undone: Shown as recorded/).waitFor();
  await page.keyboard.press("Control+z");
  await expect.poll(() => viewNow(bench, filmId)).toEqual(plain);
}

/** Grid, loupe, grey under the pointer, and the letter that says so when a film is mirrored. */
async function overTheFilm(page: Page): Promise<void> {
  await page.keyboard.press("g");
  await page.getByText(/^grid [\d.]+\s?mm$/).waitFor();
  await page.keyboard.press("z");
  const place = await filmOnBox(page).boundingBox();
  const [x, y] = [(place?.x ?? 0) + (place?.width ?? 0) / 2, (place?.y ?? 0) + (place?.height ?? 0) / 2];
  await page.mouse.move(x, y);
  await page.mouse.move(x + 3, y + 3);
  await page.locator(".loupe canvas").waitFor();
  await page.getByText(/^column \d+, row \d+: \d+ of \d+$/).waitFor();
  await shot(page, "looking-grid-loupe");
  await page.keyboard.press("g");
  for (let press = 0; press < 4; press += 1) await page.keyboard.press("z");
  await page.locator(".loupe").waitFor({ state: "detached" });

  const letter = filmOnBox(page).locator(".side-letter");
  expect(await letter.getAttribute("data-readable")).toBe("true");
  await page.keyboard.press("m");
  await page.getByRole("application", { name: /film of day.*mirrored/ }).waitFor();
  await expect.poll(() => letter.getAttribute("data-readable")).toBe("false");
  await shot(page, "looking-mirrored");
  await page.keyboard.press("h");
  await expect.poll(() => filmOnBox(page).locator(".mark").count()).toBe(0);
  await page.keyboard.press("h");
  await expect.poll(() => filmOnBox(page).locator(".mark").count()).toBeGreaterThan(0);
}
