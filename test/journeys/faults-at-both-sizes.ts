import type { Page } from "playwright-core";
import { expect } from "vitest";
import { shot } from "./shots.ts";
import { violations } from "./violations.ts";

/** Looks at the page narrow and wide: nothing keeps anybody out, nothing scrolls sideways, and a picture is laid down. */
export async function faultsAtBothSizes(page: Page, name: string): Promise<void> {
  // What was said goes by itself; while it fades it has no contrast to judge.
  await page.locator(".announcer-line").waitFor({ state: "hidden" });
  for (const size of [
    { width: 900, height: 1200 },
    { width: 1440, height: 900 },
  ]) {
    await page.setViewportSize(size);
    await shot(page, `${name}-${size.width}`);
    expect(await violations(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)).toBe(false);
  }
}
