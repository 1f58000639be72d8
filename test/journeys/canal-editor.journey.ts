import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { thePart } from "../../src/record/parts.ts";
import type { CaseView } from "../../src/server/api.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { recorded } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";

const board = (page: Page): Locator => page.getByRole("region", { name: "Drawn roots" });
const level = (page: Page, name: RegExp): Locator => page.getByRole("radio", { name });
/** The code of the tooth as the page says it, once the ledger has told it of these roots. */
const code = (page: Page): Locator => board(page).locator(".root-code");

describe("roots and canals on a drawing", () => {
  it("are built by keys alone: a third lingual root, a canal that joins, and each taken back by itself", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "canal-editor-keys");
    const caseId = await beginCase(bench, "46");
    const keys = async (...pressed: string[]): Promise<void> => {
      for (const key of pressed) await page.keyboard.press(key);
    };
    await page.goto(`/case/${caseId}/anatomy`);
    await page.getByRole("button", { name: "Start from the usual form" }).focus();
    await keys("Enter");
    await expect.poll(() => code(page).textContent()).toBe("²46 M² D¹");

    // One key from the usual form: the root that stands at the lingual side.
    await keys("r");
    await expect.poll(() => code(page).textContent()).toBe("³46 M² D¹ DL¹");
    await board(page).getByText("radix entomolaris").waitFor();
    // The drawing has the keyboard, so that arrows walk from root to root: to D, to M, and its foramen joins.
    await expect.poll(() => focused(page)).toContain("Root DL, level 1 of 1");
    await keys("ArrowLeft", "ArrowLeft", "l", "j");
    await expect.poll(() => code(page).textContent()).toBe("³46 M²⁻¹ D¹ DL¹");
    expect(await focused(page)).toBe("Root M, level 2 of 2, at the foramen: 1 canal");
    await board(page).getByText("2-1, type II").waitFor();
    await recorded(page);
    await shot(page, "canal-editor-46");

    const words = (await changesOf(page, caseId)).slice(-4);
    expect(words).toEqual([
      "Roots and canals noted in the usual form",
      "Roots and canals: root DL added",
      "Roots and canals: a level added to M at the foramen",
      "Roots and canals: M joined to 1 at the foramen",
    ]);
    await keys("Control+z");
    await expect.poll(() => code(page).textContent()).toBe("³46 M² D¹ DL¹");
    await keys("Control+Shift+z");
    await expect.poll(() => code(page).textContent()).toBe("³46 M²⁻¹ D¹ DL¹");
    await page.reload();
    await expect.poll(() => code(page).textContent()).toBe("³46 M²⁻¹ D¹ DL¹");

    // What can't be is said and not done.
    await level(page, /^Root DL/).focus();
    await keys("j");
    await page.getByText("DL has one canal from orifice to foramen; there is nothing to join").waitFor();
    // A name is written in its field; letters there are letters.
    await keys("n");
    await page.keyboard.type("RE");
    await keys("Tab");
    await expect.poll(() => code(page).textContent()).toBe("³46 M²⁻¹ D¹ RE¹");
    await level(page, /^Root RE/).focus();
    await keys("Shift+Delete", "c", "l", "c");
    await expect
      .poll(() => rootsOf(bench, caseId))
      .toMatchObject([
        { name: "M", levels: [2, 1] },
        {
          name: "D",
          levels: [
            { canals: 1, cShape: "C1" },
            { canals: 1, cShape: "C2" },
          ],
        },
      ]);
    await keys("u");
    await expect.poll(() => code(page).textContent()).toBe("²46 M² D¹");
    await bench.close();
  });

  it("are built by pointer; an unusual number asks for a reason, what contradicts itself is told at its place", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "canal-editor-pointer");
    const caseId = await beginCase(bench, "35");
    await page.goto(`/case/${caseId}/anatomy`);
    await page.getByRole("button", { name: "Start from the usual form" }).click();
    await expect.poll(() => code(page).textContent()).toBe("¹35¹");

    await page.getByRole("button", { name: "Add a level to R behind level 1" }).click();
    await page.getByRole("button", { name: "A canal more here" }).click();
    await expect.poll(() => code(page).textContent()).toBe("¹35¹⁻²");
    await page.getByRole("button", { name: "Add a level to R behind level 1" }).click();
    await page.getByRole("button", { name: "A canal more here" }).click();
    await level(page, /^Root R, level 3 of 3/).check();
    await page.getByRole("button", { name: "A canal fewer here" }).click();
    await board(page).getByText("1-2-1, type III").waitFor();

    await page.getByRole("button", { name: /^Add a root/ }).click();
    await page.getByText("2 roots are unusual for the lower left second premolar").waitFor();
    const spine = page.getByRole("navigation", { name: "Moments of the case" });
    await spine.getByText("? unusual, without a reason").waitFor();
    const reason = page.getByLabel("Why an unusual form is right");
    await reason.fill("Two roots on the film from distal");
    await reason.blur();
    await expect.poll(() => spine.getByText("? unusual, without a reason").count()).toBe(0);
    await page.getByText("2 roots are unusual").waitFor();

    const name = page.getByRole("main").getByLabel("Root", { exact: true });
    await level(page, /^Root L, level 1/).check();
    await name.fill("B");
    await name.blur();
    await page.getByText("These roots contradict themselves").waitFor();
    await board(page).locator(".board-root-faults").getByText("B is already the name of another root").waitFor();
    await name.fill("L");
    await name.blur();
    await expect.poll(() => code(page).textContent()).toBe("²35 B¹⁻²⁻¹ L¹");
    await shot(page, "canal-editor-35");
    await bench.close();
  });
});

describe("the emblem over time", () => {
  it("shows the canals as each moment left them, and leaves the page only when the person lets go there", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "emblem-over-time");
    const caseId = await beginCase(bench, "11");
    await withVisits(bench, caseId);
    await page.goto(`/case/${caseId}`);
    const slider = page.getByRole("slider", { name: "The canals over time" });
    const sheet = page.getByRole("region", { name: /^The canals at/ });
    await slider.waitFor();
    await expect
      .poll(() => slider.getAttribute("aria-valuetext"))
      .toContain("Recall, 6 months, 1 Oct 2026: Single filled");
    const address = page.url();

    await page.keyboard.press("t");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowUp");
    await sheet.getByRole("heading", { name: "Visit 1" }).waitFor();
    await sheet.getByRole("img", { name: /Single shaped/ }).waitFor();
    await page.keyboard.press("Escape");
    await expect.poll(() => sheet.count()).toBe(0);
    expect(page.url()).toBe(address);
    await page.keyboard.press("Home");
    await sheet.getByRole("img", { name: /Single not looked for yet/ }).waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.getByRole("main").getByRole("heading", { name: "Visit 1" }).waitFor();
    expect(page.url()).toMatch(/\/visit-one$/);

    for (const size of [
      { width: 1440, height: 900 },
      { width: 900, height: 1200 },
    ]) {
      await page.setViewportSize(size);
      await page.goto(`/case/${caseId}/visit-one`);
      await slider.waitFor();
      const recall = await middleOfMark(page, /^Recall/);
      const visit = await middleOfMark(page, /^Visit 1/);
      await page.mouse.move(visit.x, visit.y);
      await page.mouse.down();
      await page.mouse.move(recall.x, recall.y, { steps: 8 });
      await sheet.getByRole("img", { name: /Single filled/ }).waitFor();
      await shot(page, `emblem-over-time-${size.width}`);
      await page.keyboard.press("Escape");
      await expect.poll(() => sheet.count()).toBe(0);
      await page.mouse.up();
      expect(page.url()).toMatch(/\/visit-one$/);
      await page.mouse.move(visit.x, visit.y);
      await page.mouse.down();
      await page.mouse.move(recall.x, recall.y, { steps: 8 });
      await page.mouse.up();
      await expect.poll(() => page.url()).toMatch(/\/recall-one$/);
    }
    await bench.close();
  });
});

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");

async function beginCase({ page }: BenchInBrowser, tooth: string): Promise<string> {
  const about = {
    ...{ pseudonym: "P-0046", birthYear: 1980, sex: "female", tooth, treatment: "firstTreatment" },
    ...{ presentedOn: "2026-02-03", complaint: "", referredFor: "", background: "", demo: false },
  };
  const answer = await page.request.post("/api/cases", { data: { case: about } });
  expect(answer.ok(), await answer.text()).toBe(true);
  return ((await answer.json()) as CaseView).caseId;
}

/** Two visits that shape and fill the only canal, and a recall. */
async function withVisits({ page }: BenchInBrowser, caseId: string): Promise<void> {
  const put = (id: string, kind: string, body: object) => ({ op: "put", id, kind, baseRevision: 0, body });
  const visit = (on: string, state: string) => ({
    ...{ on, aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: false },
    ...{ isolation: { rubberDam: "used" }, magnification: "none", anaesthetic: [] },
    canals: [{ canal: "Single", state, patency: "notTried", reference: "" }],
    ...{ irrigation: [], instruments: [], solvent: [], lots: [], films: [], flareUp: "none", told: "", note: "" },
  });
  const recall = {
    ...{ on: "2026-10-01", retained: "retained", functional: "yes", symptoms: "none", percussion: "none" },
    ...{ palpation: "none", sinusTract: "none", swelling: "none", mobility: "notDone" },
    ...{ restoration: "notRecorded", onFilm: "notTaken", imaging: "none", readings: [], note: "" },
  };
  const { roots } = (await (await page.request.get("/api/teeth/11/usual")).json()) as { roots: unknown };
  const operations = [
    put("roots-one", "anatomy", { roots, foundBy: [] }),
    put("visit-one", "visit", visit("2026-03-03", "shaped")),
    put("visit-two", "visit", visit("2026-03-24", "filled")),
    put("recall-one", "recall", recall),
  ];
  const answer = await page.request.post(`/api/cases/${caseId}/gestures`, { data: { words: "Written", operations } });
  expect(answer.ok(), await answer.text()).toBe(true);
}

async function middleOfMark(page: Page, title: RegExp): Promise<{ x: number; y: number }> {
  const mark = page
    .getByRole("navigation", { name: "Moments of the case" })
    .getByRole("link", { name: title })
    .locator(".spine-mark");
  const box = await mark.boundingBox();
  if (box === null) throw new Error(`${title} has no mark in sight`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function rootsOf(bench: BenchInBrowser, caseId: string): Promise<unknown> {
  return thePart((await bench.caseNow(caseId)).parts, "anatomy")?.body.roots;
}

async function changesOf(page: Page, caseId: string): Promise<string[]> {
  const changes = (await (await page.request.get(`/api/cases/${caseId}/changes`)).json()) as { words: string }[];
  return changes.map(({ words }) => words);
}
