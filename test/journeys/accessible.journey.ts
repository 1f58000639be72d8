import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { filmIsOpen } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const sizes = [
  { width: 1440, height: 900 },
  { width: 900, height: 1200 },
] as const;

/** A room: its address and what says that it is drawn. */
const rooms: readonly { name: string; address: string; ready: (page: Page) => Promise<unknown> }[] = [
  { name: "logbook", address: "/", ready: (page) => page.getByRole("row").nth(5).waitFor() },
  { name: "new case", address: "/", ready: openNewCase },
  { name: "case", address: "/case/demo-a", ready: caseIsDrawn },
  { name: "presenting", address: "/case/demo-a/case-1", ready: caseIsDrawn },
  { name: "findings", address: "/case/demo-a", ready: (page) => openMoment(page, /^Findings/) },
  { name: "diagnosis", address: "/case/demo-a", ready: (page) => openMoment(page, /^Diagnosis/) },
  { name: "plan", address: "/case/demo-a", ready: (page) => openMoment(page, /^Plan/) },
  { name: "visit", address: "/case/demo-a", ready: (page) => openMoment(page, /^Visit 1/) },
  { name: "recall", address: "/case/demo-a", ready: (page) => openMoment(page, /^Recall, 6 months/) },
  { name: "roots and canals", address: "/case/demo-a/anatomy", ready: caseIsDrawn },
  { name: "hidden canals", address: "/case/demo-a/hidden", ready: caseIsDrawn },
  { name: "instruments used", address: "/case/demo-a/instruments", ready: caseIsDrawn },
  { name: "canals over time", address: "/case/demo-a", ready: lookBack },
  { name: "removal", address: "/case/demo-a/removal-1", ready: caseIsDrawn },
  { name: "references and claims", address: "/case/demo-a/evidence", ready: caseIsDrawn },
  { name: "history", address: "/case/demo-a", ready: openHistory },
  { name: "light box", address: "/case/demo-a/light-box", ready: filmIsOpen },
  { name: "four films and their look", address: "/case/demo-a/light-box", ready: openFourFilms },
  {
    name: "two views",
    address: "/case/demo-a/light-box/two-view",
    ready: (page) => page.getByRole("slider", { name: "Level 1 on film 1" }).waitFor(),
  },
  {
    name: "two dates",
    address: "/case/demo-a/light-box/compare",
    ready: (page) => page.getByRole("complementary", { name: "Comparison" }).waitFor(),
  },
  { name: "landmarks of two dates", address: "/case/demo-a/light-box/compare", ready: openLandmarks },
  {
    name: "documents",
    address: "/case/demo-a/documents",
    ready: (page) => page.getByRole("button", { name: /^Deck/ }).waitFor(),
  },
  {
    name: "methods",
    address: "/methods/curvature",
    ready: (page) => page.getByRole("heading", { level: 1 }).first().waitFor(),
  },
  {
    name: "calibration",
    address: "/calibration",
    ready: (page) => page.getByRole("button", { name: /^Begin/ }).waitFor(),
  },
  {
    name: "cabinet",
    address: "/instruments",
    ready: (page) => page.getByRole("heading", { name: "Cabinet", exact: true }).waitFor(),
  },
  { name: "instrument of the cabinet", address: "/instruments", ready: openInstrument },
  { name: "instruments into a canal", address: "/case/demo-a", ready: openInstrumentEntry },
  { name: "settings", address: "/settings", ready: (page) => page.getByRole("heading").first().waitFor() },
  { name: "about", address: "/about", ready: (page) => page.getByRole("heading").first().waitFor() },
  {
    name: "an address that is none",
    address: "/nowhere",
    ready: (page) => page.getByRole("heading").first().waitFor(),
  },
];

describe("every room", () => {
  let bench: BenchInBrowser;
  beforeAll(async () => {
    bench = await benchInBrowser({ demo: true });
    await bench.page.addInitScript(axe);
    await bench.page.reload();
  });
  afterAll(() => bench.close());

  it("asks its first question so that everybody can answer it", async () => {
    const { page } = bench;
    await page.getByRole("heading", { name: "Who writes here?" }).waitFor();
    expect(await violations(page)).toEqual([]);
    await page.getByLabel("Your name").fill("A. Resident");
    await page.getByRole("button", { name: "Open the logbook" }).click();
    await page.getByRole("heading", { name: "Logbook" }).waitFor();
  });

  for (const { name, address, ready } of rooms)
    for (const size of sizes)
      it(`${name} at ${size.width} by ${size.height} has nothing that keeps anybody out`, async () => {
        const { page } = bench;
        failingShot(page, `accessible-${name}`);
        await page.setViewportSize(size);
        await page.goto(address);
        await ready(page);
        await shot(page, `${name.replaceAll(" ", "-")}-${size.width}`);
        expect(await violations(page)).toEqual([]);
        const tooWide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
        expect(tooWide, "the page scrolls sideways").toBe(false);
      });

  it("would be found at fault with a button that has no name and one that Tab can't reach", async () => {
    const { page } = bench;
    await page.goto("/about");
    await page.getByRole("heading").first().waitFor();
    await page.evaluate(() => document.querySelector("main")?.append(document.createElement("button")));
    expect(await violations(page)).toEqual([expect.stringMatching(/^button-name: /)]);
    await page.evaluate(() => document.querySelector("main > button:last-child")?.setAttribute("tabindex", "-1"));
    expect(await outOfReach(page)).toHaveLength(1);
  });

  it("has every control in reach of the keyboard", async () => {
    const { page } = bench;
    await page.setViewportSize(sizes[0]);
    for (const { address, ready } of rooms.filter(({ ready: how }) => how !== openNewCase && how !== openHistory)) {
      await page.goto(address);
      await ready(page);
      expect(await outOfReach(page), address).toEqual([]);
    }
  });
});

async function caseIsDrawn(page: Page): Promise<void> {
  await page.locator("#moment-title").waitFor();
  await page.getByRole("heading", { name: "Ledger" }).waitFor();
}

async function openMoment(page: Page, name: RegExp): Promise<void> {
  await caseIsDrawn(page);
  await page.getByRole("navigation", { name: "Moments of the case" }).getByRole("link", { name }).first().click();
  await caseIsDrawn(page);
}

async function lookBack(page: Page): Promise<void> {
  await caseIsDrawn(page);
  await page.keyboard.press("t");
  await page.keyboard.press("Home");
  await page.getByRole("region", { name: /^The canals at/ }).waitFor();
}

async function openLandmarks(page: Page): Promise<void> {
  await page
    .getByRole("button", { name: /^Landmarks/ })
    .first()
    .click();
  await page
    .getByRole("application", { name: /^After:/ })
    .locator("canvas")
    .waitFor();
}

async function openHistory(page: Page): Promise<void> {
  await caseIsDrawn(page);
  await page.getByRole("button", { name: /^History/ }).click();
  await page.getByRole("dialog").getByRole("listitem").first().waitFor();
}

async function openFourFilms(page: Page): Promise<void> {
  await filmIsOpen(page);
  await page.keyboard.press("4");
  await page.getByRole("region", { name: "Pane 4" }).locator("canvas").waitFor();
  await page.keyboard.press("l");
  await page.getByRole("region", { name: "Look" }).waitFor();
}

async function openNewCase(page: Page): Promise<void> {
  await page
    .getByRole("button", { name: /^New case/ })
    .first()
    .click();
  await page.getByRole("dialog", { name: "New case" }).waitFor();
}

async function openInstrument(page: Page): Promise<void> {
  await page.getByRole("heading", { name: "Cabinet", exact: true }).waitFor();
  await page.keyboard.press("i");
  await page.getByRole("heading", { name: "Geometry and alloy" }).waitFor();
  await page.getByRole("img", { name: /^Instruments to scale/ }).waitFor();
}

async function openInstrumentEntry(page: Page): Promise<void> {
  await openMoment(page, /^Visit 1/);
  await page.keyboard.press("i");
  await page.getByRole("dialog", { name: "Instruments into a canal" }).waitFor();
}

/** What the rules for accessible pages (WCAG 2.2 A and AA, and good practice) find wrong, a line each. */
async function violations(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const { axe: rules } = window as unknown as { axe: typeof import("axe-core") };
    const found = await rules.run(document, { resultTypes: ["violations"] });
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

/** Controls in sight that Tab and, inside groups, arrows never come to. */
async function outOfReach(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const controls = document.querySelectorAll<HTMLElement>(
      "button, a[href], input, select, textarea, [role=button], summary",
    );
    return [...controls]
      .filter((control) => control.checkVisibility() && !control.matches(":disabled"))
      .filter(
        (control) =>
          control.tabIndex < 0 && control.closest("nav[aria-label], [role=radiogroup], [role=menu]") === null,
      )
      .map((control) => control.outerHTML.slice(0, 120));
  });
}
