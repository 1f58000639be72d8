import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type Part, partsOf } from "../../src/record/parts.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { canalog } from "./canalog.ts";
import { filmIsOpen, filmOnBox, onScreen, recorded } from "./hand.ts";
import type { FilmSpot } from "./incisor-films.ts";
import { failingShot, shot } from "./shots.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const film = "film-angled";

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: rules } = window as unknown as { axe: typeof import("axe-core") };
    const found = await rules.run(document, { resultTypes: ["violations"] });
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

/** Takes a tool and presses places of the film. */
async function drawn(page: Page, tool: RegExp, spots: readonly FilmSpot[]): Promise<void> {
  await page.getByRole("navigation", { name: "Tools" }).getByRole("button", { name: tool }).click();
  for (const spot of spots) {
    const { x, y } = await onScreen(page, spot);
    await page.mouse.move(x, y, { steps: 4 });
    await page.mouse.click(x, y);
  }
}

async function answered(page: Page, question: string, owner: RegExp, more?: (asking: Locator) => Promise<unknown>) {
  const asking = page.getByRole("dialog", { name: question });
  await asking.waitFor();
  await more?.(asking);
  await asking.getByRole("button", { name: owner }).click();
  await recorded(page);
}

/** A place of a canal's course on the film, as a share of its points, and some pixels to the right. */
function onCourse(parts: readonly Part[], canal: string, share: number, aside = 0): FilmSpot {
  const trace = partsOf(parts, "mark").find(
    ({ body }) => body.shape === "trace" && body.film === film && body.canal === canal,
  );
  const points = trace?.body.shape === "trace" ? trace.body.points : [];
  const [u = 0, v = 0] = points[Math.round(share * (points.length - 1))] ?? [];
  return [u + aside, v];
}

/** The output of each newly drawn measure, and what the command line answers to the entry's own input. */
async function bothAnswers(bench: BenchInBrowser, topic: string) {
  const { ledger } = await bench.caseNow("demo-a");
  const marks = partsOf((await bench.caseNow("demo-a")).parts, "mark").filter(({ body }) => body.film === film);
  const entry = ledger.findLast(
    (one) => one.topic === topic && marks.some(({ id }) => one.subject === `${topic} of ${id}`),
  );
  if (entry?.output === undefined) throw new Error(`${topic} is not in the ledger: ${entry?.refused?.join()}`);
  const ran = await canalog("", ["compute", topic], JSON.stringify(entry.input));
  return { shown: entry.output as Record<string, unknown>, shell: JSON.parse(ran.out) as unknown };
}

describe("measures that are drawn on a film", () => {
  it("are drawn by pointer and by keyboard, stand in the ledger, and are taken back", async () => {
    const bench = await benchInBrowser({ demo: true, who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "measures");
    const { parts, stateHash } = await bench.caseNow("demo-a");
    const marks = page.getByRole("region", { name: "Marks" });
    await page.goto(`/case/demo-a/light-box/${film}`);
    await filmIsOpen(page);

    await drawn(page, /^filling/, [onCourse(parts, "DB", 0.85)]);
    await answered(page, "Which canal's filling ends here?", /^DB\b/);
    await page.getByRole("region", { name: "Filling's end of DB" }).getByText("short of the apex").first().waitFor();
    const filling = await bothAnswers(bench, "fillingEnd");
    expect(filling.shell).toEqual(filling.shown);
    // 15 % of a course of 10.8 mm, give and take its clicks.
    expect(filling.shown.shortMm).toBeGreaterThan(1);
    expect(filling.shown.shortMm).toBeLessThan(2.3);

    await drawn(page, /^wall/, [onCourse(parts, "P", 0.5, 40), onCourse(parts, "P", 0.5, 10)]);
    await answered(page, "Which canal's wall is this?", /^P\b/, (asking) =>
      asking.getByLabel("Which wall").selectOption({ label: "distal" }),
    );
    await page.getByRole("region", { name: "Distal wall of P" }).getByText("thick on this film").waitFor();
    const wall = await bothAnswers(bench, "wallOnFilm");
    expect(wall.shell).toEqual(wall.shown);
    // 30 px of 0.0383 mm.
    expect(wall.shown.thicknessMm).toBeCloseTo(1.15, 1);

    await drawn(page, /^fragment/, [onCourse(parts, "P", 0.7), onCourse(parts, "P", 0.85)]);
    await answered(page, "Which canal is the fragment in?", /^P\b/);
    const panel = page.getByRole("region", { name: "Fragment in P" });
    await panel.getByText("long on this film").waitFor();
    const fragment = await bothAnswers(bench, "fragmentOnFilm");
    expect(fragment.shell).toEqual(fragment.shown);
    expect(fragment.shown.tipToApexMm).toBeCloseTo(1.9, 0);
    expect(await faults(page)).toEqual([]);
    await shot(page, "measures");

    await byKeys(page);
    const ratio = await bothAnswers(bench, "crownRoot");
    expect(ratio.shell).toEqual(ratio.shown);
    // Level a quarter of the way down: 80 of 320 px.
    expect(ratio.shown.crownToRoot).toBeCloseTo(80 / 240, 1);

    await marks.getByRole("listitem").filter({ hasText: "mm" }).getByRole("button", { name: "course" }).first().click();
    const schneider = page.getByRole("button", { name: "Angle of Schneider: show how it was built" });
    await schneider.click();
    await expect.poll(() => schneider.getAttribute("aria-pressed")).toBe("true");
    await filmOnBox(page)
      .getByText(/^Schneider \d+°$/)
      .waitFor();
    await recorded(page);

    for (let gesture = 0; gesture < 5; gesture += 1) {
      await page.keyboard.press("Control+z");
      await page.waitForTimeout(150);
      await recorded(page);
    }
    await expect.poll(async () => (await bench.caseNow("demo-a")).stateHash).toBe(stateHash);
    expect(
      await filmOnBox(page)
        .getByText(/^Schneider/)
        .count(),
    ).toBe(0);
    await bench.close();
  });
});

/** Crown and root without a mouse: its tool, three places with arrows and Space, the root by its number. */
async function byKeys(page: Page): Promise<void> {
  const key = async (name: string, times = 1) => {
    for (let press = 0; press < times; press += 1) await page.keyboard.press(name);
  };
  await filmOnBox(page).focus();
  await key("3");
  // The first Space shows the crosshair in the middle of the film.
  await key("Space");
  await key("Shift+ArrowUp", 16);
  await key("Space");
  await key("Shift+ArrowDown", 8);
  await key("Space");
  await key("Shift+ArrowDown", 24);
  await key("Space");
  const asking = page.getByRole("dialog", { name: "Which root is this?" });
  await asking.getByRole("button", { name: /^MB\b/ }).and(page.locator(":focus")).waitFor();
  await key("1");
  await asking.waitFor({ state: "detached" });
  await recorded(page);
  await page.getByRole("region", { name: "Crown and MB root" }).getByText("crown over root").waitFor();
}
