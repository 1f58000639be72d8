import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { Operation } from "../../src/record/change.ts";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { failingShot, shot } from "./shots.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const room = "/case/demo-b/light-box/two-view/DL";
const level = (page: Page, number: number, film: number) =>
  page.getByRole("slider", { name: `Level ${number} on film ${film}`, exact: true });
const result = (page: Page) => page.getByRole("region", { name: "Result" });
const headline = (page: Page) => result(page).locator(".headline").first();
const drawing = (page: Page) => page.getByRole("application", { name: /^Drawing of DL in space/ });

async function isOpen(page: Page): Promise<void> {
  await page
    .getByRole("region", { name: /^Film 2: 25/ })
    .locator("canvas")
    .waitFor();
  await level(page, 6, 2).waitFor();
}

/** The number of the result once nothing is on its way. */
async function settled(page: Page): Promise<string> {
  await expect.poll(() => result(page).getAttribute("aria-busy")).toBe("false");
  return ((await headline(page).textContent()) ?? "").replace(/\s+/g, " ");
}

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: rules } = window as unknown as { axe: typeof import("axe-core") };
    const found = await rules.run(document, { resultTypes: ["violations"] });
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

const fixedRows = async ({ caseNow }: BenchInBrowser) =>
  partsOf((await caseNow("demo-b")).parts, "pairing").find(({ body }) => body.canal === "DL")?.body.levels;

/** Writes a part of the case behind the page's back, and opens the room again. */
async function rewritten(bench: BenchInBrowser, id: string, change: (body: never) => unknown): Promise<void> {
  const { page, caseNow } = bench;
  const part = (await caseNow("demo-b")).parts.find((one) => one.id === id);
  if (part === undefined) throw new Error(`no part ${id}`);
  const body = change(part.body as never);
  const operations: Operation[] = [{ op: "put", id, kind: part.kind, baseRevision: part.revision, body }];
  const answer = await page.request.post("/api/cases/demo-b/gestures", { data: { words: "Rewritten", operations } });
  expect(answer.ok()).toBe(true);
  await page.goto(room);
}

describe("two films of one tooth", () => {
  it("give a canal in space, are corrected by hand, and say what to do where they do not", async () => {
    const bench = await benchInBrowser({ demo: true, who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "two-view");

    // From the light box by its key, with the canal chosen.
    await page.goto("/case/demo-b/light-box/film-straight");
    const marks = page.getByRole("region", { name: "Marks" }).getByRole("listitem");
    await marks
      .filter({ has: page.locator('input[value="DL"]') })
      .getByRole("button", { name: "course" })
      .click();
    await page.getByRole("link", { name: /^DL in space, from \d films/ }).waitFor();
    await page.keyboard.press("b");
    await isOpen(page);
    const before = await settled(page);
    expect(before).toMatch(/^\d+°\s?hidden by the straight film \(\d+–\d+\)$/);
    await result(page).getByText("The bend turns to buccal.").waitFor();
    await result(page).getByText("The canal lies to lingual of apex MB.").waitFor();
    for (const size of [
      { width: 900, height: 1200 },
      { width: 1440, height: 900 },
    ]) {
      await page.setViewportSize(size);
      await shot(page, `two-view-${size.width}`);
      expect(await faults(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)).toBe(false);
    }

    // The drawing turns by keys and goes back to named views.
    await drawing(page).focus();
    await page.keyboard.press("Shift+ArrowRight");
    await page.keyboard.press("m");
    await expect.poll(() => drawing(page).getAttribute("aria-label")).toContain("seen from mesial");

    // A level by keyboard: one gesture for several presses, and the number changes.
    await level(page, 6, 2).focus();
    for (let press = 0; press < 6; press += 1) await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect.poll(() => headline(page).textContent()).toBe("measuring");
    const moved = await settled(page);
    expect(moved).not.toBe(before);
    expect(await fixedRows(bench)).toHaveLength(1);
    await expect.poll(() => level(page, 6, 2).getAttribute("aria-valuetext")).toContain("set by hand");

    // Another one by pointer on the other film.
    const box = await level(page, 3, 1).boundingBox();
    if (box === null) throw new Error("the level is not on the screen");
    const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x, at.y + 6, { steps: 2 });
    await page.mouse.move(at.x, at.y + 14, { steps: 2 });
    await page.mouse.up();
    await expect.poll(async () => (await fixedRows(bench))?.length).toBe(2);
    await settled(page);

    // Undo twice: the number that stood at first.
    await page.keyboard.press("Control+z");
    await expect.poll(async () => (await fixedRows(bench))?.length).toBe(1);
    await page.keyboard.press("Control+z");
    await expect.poll(() => fixedRows(bench)).toBeUndefined();
    await expect.poll(() => settled(page)).toBe(before);

    // A landmark: a place on each film, then its name.
    await page.keyboard.press("l");
    await page.getByRole("form", { name: "New landmark" }).waitFor();
    for (const film of [/^Film 1/, /^Film 2/]) {
      await page
        .getByRole("region", { name: film })
        .getByRole("application")
        .click({ position: { x: 60, y: 90 } });
    }
    await page.getByLabel("Name", { exact: true }).fill("buccal cusp");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Take landmark buccal cusp off all films" }).click();
    await expect.poll(() => page.getByRole("button", { name: /^Take landmark buccal cusp/ }).count()).toBe(0);

    // A trace that runs from the apex: refused, with the button that turns it.
    const back = (body: Extract<BodyOf<"mark">, { shape: "trace" }>) => ({
      ...body,
      points: [...body.points].reverse(),
      anchors: [...body.anchors].reverse(),
    });
    await rewritten(bench, "film-angled-dl", back);
    await result(page).getByRole("heading", { name: "No course of DL in space" }).waitFor();
    await shot(page, "two-view-refused");
    expect(await faults(page)).toEqual([]);
    await page.getByRole("button", { name: "Turn the trace on film 2" }).click();
    await isOpen(page);

    // Both films under one angle: which shift to take next.
    await rewritten(bench, "film-angled", (body: BodyOf<"film">) => ({ ...body, horizontalAngleDeg: 0 }));
    const guide = page.getByRole("region", { name: "The next film" });
    await guide
      .getByText(/^from (mesial|distal)/)
      .first()
      .waitFor();
    await guide.getByRole("img", { name: /^Which tube shift would show the hidden bend/ }).waitFor();
    expect(await faults(page)).toEqual([]);
    await shot(page, "two-view-guide");

    // A shift too small for a verdict: said as such, and nothing to plan for.
    await rewritten(bench, "film-angled", (body: BodyOf<"film">) => ({ ...body, horizontalAngleDeg: 6 }));
    await page.getByRole("heading", { name: "The tube was moved too little to tell" }).waitFor();
    await expect.poll(() => page.getByText("Choose and pre-bend instruments").count()).toBe(0);

    // The ledger's entry leads here as well.
    await page.goto("/case/demo-b");
    await page.getByText(/^Diagnostic and angled film together/).click();
    await page
      .getByRole("button", { name: /^DL: hidden by the straighter film/ })
      .first()
      .click();
    await page.getByRole("link", { name: "DL in space, film by film" }).click();
    await page.waitForURL(/two-view\/DL$/);
    await bench.close();
  });
});
