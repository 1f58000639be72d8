import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { onTestFailed } from "vitest";
import { root } from "./canalog.ts";

/** Where pictures of pages are laid to be looked at; kept out of the repository. */
export const shotsFolder = join(root, "shots");

/** A picture of the page as it is now. */
export async function shot(page: Page, name: string): Promise<void> {
  mkdirSync(shotsFolder, { recursive: true });
  await page.screenshot({ path: join(shotsFolder, `${name}.png`) });
}

/** If the test fails, the page as it was then is laid beside the others. */
export function failingShot(page: Page, name: string): void {
  page.setDefaultTimeout(20_000);
  onTestFailed(async () => {
    if (!page.isClosed()) await shot(page, `failed-${name}`);
  });
}
