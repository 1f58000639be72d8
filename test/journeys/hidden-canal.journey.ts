import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import type { CaseView } from "../../src/server/api.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { failingShot } from "./shots.ts";

const about: Omit<BodyOf<"case">, "pseudonym" | "tooth"> = {
  ...{ birthYear: 1970, sex: "female", presentedOn: "2026-01-12", treatment: "retreatment" },
  ...{ complaint: "", referredFor: "", background: "", demo: false },
};

/** A new case of a tooth, made behind the page's back, with its page of hidden canals open. */
async function openCase({ page }: BenchInBrowser, pseudonym: string, tooth: string): Promise<string> {
  const answer = await page.request.post("/api/cases", { data: { case: { ...about, pseudonym, tooth } } });
  expect(answer.ok()).toBe(true);
  const { caseId }: CaseView = await answer.json();
  await page.goto(`/case/${caseId}/hidden`);
  await page.getByRole("heading", { name: "Hidden canals" }).waitFor();
  return caseId;
}

const section = (page: Page, name: string) => page.getByRole("region", { name, exact: true });
const now = async (page: Page, name: string): Promise<string> =>
  ((await section(page, name).locator(".search-now").textContent()) ?? "").replace(/\s+/g, " ");

/** A look by its two keys, and the number of looks that then count. */
async function look(page: Page, name: string, keys: readonly [string, string], counted: RegExp): Promise<void> {
  await page.keyboard.press(keys[0]);
  await section(page, name).getByRole("button", { name: "Another look" }).waitFor();
  await page.keyboard.press(keys[1]);
  await expect.poll(() => now(page, name)).toMatch(counted);
}

describe("a canal that nobody has seen", () => {
  it("is searched for look by look by keyboard alone, and its chance follows", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "hidden-canal");
    const name = "Second mesiobuccal canal";
    const caseId = await openCase(bench, "P-26", "26");
    const search = async () => partsOf((await bench.caseNow(caseId)).parts, "search")[0]?.body;

    // What this tooth may hide, with its counts, begun with one press.
    await page.getByText("3875/5250 world").waitFor();
    await page.getByRole("button", { name: /^Look for it/ }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => now(page, name)).toMatch(/^\d+ %.* that it is there before any look$/);
    const before = await now(page, name);

    // Two keys a look: a straight film and a CBCT count by published figures, the microscope waits for one's own.
    await look(page, name, ["6", "n"], /after 1 look$/);
    await look(page, name, ["2", "n"], /after 1 look; 1 look not reckoned in yet$/);
    await section(page, name).getByText("Look 2: no sensitivity and specificity of microscope").waitFor();
    const first = section(page, name).locator(".next-looks li").first();
    expect(await first.textContent()).toContain("Read the films in hand again");

    // A percent in the place of a share is told at its field, and nothing is lost.
    bench.expectComplaint(/400 \(Bad Request\)/);
    const sensitivity = page.getByLabel("Sensitivity, 0 to 1 of look 2, microscope");
    await sensitivity.focus();
    await page.keyboard.type("87");
    await page.keyboard.press("Tab");
    await section(page, name).getByText("87 is outside 0..1; a percent is written 0.87").waitFor();
    await faultsAtBothSizes(page, "hidden-canal-percent");
    await sensitivity.focus();
    await page.keyboard.press("Control+a");
    await page.keyboard.type("0.87");
    await page.keyboard.press("Tab");
    await page.keyboard.type("0.9");
    await page.keyboard.press("Tab");
    await page.keyboard.type("own count of 40 teeth");
    await page.keyboard.press("Tab");
    await expect.poll(() => now(page, name)).toMatch(/after 2 looks$/);
    expect((await search())?.looks[1]).toMatchObject({ sensitivity: 0.87, specificity: 0.9 });
    expect(await now(page, name)).not.toBe(before);

    // The CBCT with its reason, which stays in sight once it is taken.
    const why = page.getByLabel("Why less than a CBCT was not enough");
    await why.focus();
    await page.keyboard.type("the roots lie over each other on both films");
    await page.keyboard.press("Tab");
    await expect.poll(async () => (await search())?.lessWasNotEnough).toMatch(/^the roots/);
    await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
    await look(page, name, ["9", "n"], /after 3 looks$/);
    const after = await now(page, name);
    await why.waitFor();
    await faultsAtBothSizes(page, "hidden-canal");

    // One gesture is undone as one, by its name.
    await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
    await page.keyboard.press("Control+z");
    await expect.poll(() => now(page, name)).toMatch(/after 2 looks$/);
    await page.keyboard.press("Control+Shift+z");
    await expect.poll(() => now(page, name)).toBe(after);

    // Other people, another beginning; the list of counts says where each was published.
    await page.getByLabel("Counted in").selectOption("China");
    await expect.poll(async () => (await search())?.population).toBe("China");
    await expect.poll(() => now(page, name)).not.toBe(after);
    await section(page, name).getByText("What was counted, and where it was published").click();
    await page.getByRole("img", { name: /^How often published series found a second canal/ }).waitFor();
    expect((await page.textContent("main"))?.toLowerCase()).not.toMatch(/\bsafe\b|proves/);

    await section(page, name).getByRole("link", { name: "Found: note it in Roots and canals" }).click();
    await page.getByRole("heading", { name: "Roots and canals" }).waitFor();
    await bench.close();
  });

  it("is one of several in a lower molar, and of none in a tooth that nobody counted", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "hidden-canal-others");
    await openCase(bench, "P-46", "46");
    await page.getByRole("button", { name: /^Look for it.*third root/ }).click();
    await section(page, "Third root, lingual").waitFor();
    await page.getByRole("button", { name: /^Look for it.*middle mesial/ }).click();
    await section(page, "Middle mesial canal").waitFor();

    // Keys go to the search that the person is in.
    await section(page, "Middle mesial canal").getByRole("button", { name: "dye", exact: true }).focus();
    await look(page, "Middle mesial canal", ["7", "n"], /1 look not reckoned in yet$/);
    expect(await now(page, "Third root, lingual")).toMatch(/before any look$/);
    await faultsAtBothSizes(page, "hidden-canals-two");

    // Taken out and brought back.
    await section(page, "Third root, lingual")
      .getByRole("button", { name: /^Take out this search/ })
      .click();
    await expect.poll(() => section(page, "Third root, lingual").count()).toBe(0);
    await page.getByText("Saved: Third root, lingual: search taken out").waitFor();
    await page.keyboard.press("Control+z");
    await section(page, "Third root, lingual").waitFor();

    await openCase(bench, "P-11", "11");
    await page.getByText("No published series counts a canal or root that tooth 11 may have").waitFor();
    await faultsAtBothSizes(page, "hidden-canals-none");
    await bench.close();
  });
});
