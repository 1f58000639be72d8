import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { mishapGuide } from "../../src/record/mishap-guide/mishap-guide.ts";
import { mishapKinds } from "../../src/record/parts/mishap-kinds.ts";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import { mishapWords } from "../../src/record/words/later-words.ts";
import type { CaseView } from "../../src/server/api.ts";
import { newBodies } from "../../src/web/rooms/case/new-bodies.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { byKeyboard } from "./by-keyboard.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { failingShot } from "./shots.ts";

const day = "2026-03-12";
const about: BodyOf<"case"> = {
  ...{ pseudonym: "P-26", tooth: "26", birthYear: 1970, sex: "female", presentedOn: "2026-01-12" },
  ...{ treatment: "retreatment", complaint: "", referredFor: "", background: "", demo: false },
};
const file = { id: "file-7", label: "7", usesBefore: 1 };
const used = {
  size: 25,
  taper: 0.06,
  lengthMm: 25,
  alloy: "nickelTitanium",
  movement: "continuous",
  canal: "MB1",
} as const;
const visit: BodyOf<"visit"> = {
  ...newBodies.visit(day, {}),
  instruments: [
    { ...used, size: 20, taper: 0.04, rpm: 300, seconds: 8, depthMm: 19 },
    { ...used, rpm: 300, seconds: 6, depthMm: 18.5, file },
  ],
};

/** A case with one visit and a mishap of no kind yet, its page open. */
async function caseWithMishap({ page }: BenchInBrowser): Promise<string> {
  const answer = await page.request.post("/api/cases", { data: { case: about } });
  const { caseId }: CaseView = await answer.json();
  const put = (id: string, kind: string, body: unknown) => ({ op: "put", id, kind, baseRevision: 0, body });
  const operations = [put("visit-1", "visit", visit), put("mishap-1", "mishap", newBodies.mishap(day))];
  const data = { words: "Visit and mishap recorded", operations };
  expect((await page.request.post(`/api/cases/${caseId}/gestures`, { data })).status()).toBe(200);
  await page.goto(`/case/${caseId}/mishap-1`);
  await page.getByRole("radiogroup", { name: "What happened" }).waitFor();
  return caseId;
}

const blur = (page: Page) =>
  page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());

async function pressKey(page: Page, key: string): Promise<void> {
  await blur(page);
  await page.keyboard.press(key);
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

describe("the desk of a mishap", () => {
  it("opens every kind with its steps, its plain words and its own record", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "mishap-kinds");
    const caseId = await caseWithMishap(bench);
    const body = async () => partsOf((await bench.caseNow(caseId)).parts, "mishap")[0]?.body;
    for (const [index, kind] of mishapKinds.entries()) {
      await pressKey(page, index < 10 ? String((index + 1) % 10) : "-");
      await expect.poll(async () => (await body())?.what).toBe(kind);
      await page.getByRole("heading", { name: `${capital(mishapWords[kind])}: what to note` }).waitFor();
      const { steps, tell } = mishapGuide(kind);
      expect(await page.getByRole("checkbox", { name: steps[0]?.says ?? "" }).isVisible()).toBe(true);
      expect(await page.getByText(tell[0] ?? "", { exact: true }).isVisible()).toBe(true);
      await faultsAtBothSizes(page, `mishap-${kind}`);
    }

    // What is said of one kind stays when it turns out to be another, and is told quietly.
    await pressKey(page, "2");
    await page.getByLabel("Depth of the ledge, from the reference point").fill("17.5");
    await pressKey(page, "4");
    await page.getByText("Said before of another kind, and kept:").waitFor();
    await expect.poll(async () => (await body())?.ledge?.depthMm).toBe(17.5);
    expect((await body())?.what).toBe("block");
    await bench.close();
  });

  it("takes a separated instrument from the first step to its explanation by keyboard alone", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "mishap-desk");
    const hand = byKeyboard(page);
    const caseId = await caseWithMishap(bench);
    const body = async () => partsOf((await bench.caseNow(caseId)).parts, "mishap")[0]?.body;
    await pressKey(page, "1");
    await expect.poll(async () => (await body())?.what).toBe("separatedInstrument");

    // A step is noted with its time by one press, and taken back by its name.
    await pressKey(page, "n");
    await expect.poll(async () => (await body())?.steps?.length).toBe(1);
    const [noted] = (await body())?.steps ?? [];
    expect(noted?.step).toBe("separated-stop");
    expect(Math.abs(Date.now() - Date.parse(noted?.at ?? ""))).toBeLessThan(600_000);
    await pressKey(page, "Control+z");
    await expect.poll(async () => (await body())?.steps?.length ?? 0).toBe(0);
    await pressKey(page, "n");
    await pressKey(page, "n");
    await expect.poll(async () => (await body())?.steps?.length).toBe(2);

    // What is said to the patient is put in by a press, and can be changed.
    await hand.press(page.getByRole("button", { name: "Put these sentences in, to be changed" }));
    await expect.poll(async () => (await body())?.told?.said).toContain("A thin tool broke");
    expect((await body())?.toldPatient).toBe("told");

    // The instrument is taken whole from the visit: geometry, file, depth, canal.
    await hand.press(page.getByRole("button", { name: /^It was 25\/\.06 “7”/ }));
    await expect.poll(body).toMatchObject({
      canal: "MB1",
      visit: "visit-1",
      instrument: { size: 25 },
      separated: { tipDepthMm: 18.5, file },
    });
    await hand.write(page.getByLabel("Length", { exact: true }), "3.1");
    await expect.poll(body).toMatchObject({ fragmentMm: 3.1, separated: { lengthMm: { value: 3.1, sigma: 0.2 } } });
    await hand.pick(
      page.getByRole("radiogroup", { name: "The tip was bound" }).getByRole("radio", { name: "no", exact: true }),
    );
    await expect.poll(async () => (await body())?.separated?.tipBound).toBe("no");

    // Three explanations stand side by side, each with its interval; none is said to be shown.
    const why = page.getByRole("region", { name: "How it may have broken" });
    await why.getByRole("table", { name: /^Each explanation before and after/ }).waitFor();
    for (const name of ["Bending fatigue", "Torsional overload", "A flaw or joint"])
      expect(await why.getByRole("columnheader", { name }).first().isVisible()).toBe(true);
    expect(await why.textContent()).toContain("Consistent with, no more");
    expect(await why.textContent()).not.toMatch(/\bprove/i);
    const { ledger } = await bench.caseNow(caseId);
    const entry = ledger.find(({ subject }) => subject === "fracture of mishap-1");
    expect(entry?.refused).toBeUndefined();
    expect(await why.locator(`a[href="#${entry?.id}"]`).count()).toBeGreaterThan(3);
    await faultsAtBothSizes(page, "mishap-explained");

    // Nothing is copied unasked; one press puts a sentence into the account.
    expect((await body())?.defence).toBeUndefined();
    await hand.press(page.getByRole("button", { name: "Put all of them in, to be changed" }));
    await expect.poll(async () => (await body())?.defence).toMatch(/consistent most with/);
    await hand.write(page.getByLabel("What the supervisor objects"), "The face was not looked at.");
    await expect.poll(async () => (await body())?.objection).toBe("The face was not looked at.");
    await hand.press(page.getByRole("button", { name: "Weigh its removal" }));
    await page.getByRole("heading", { name: "Removal weighed" }).waitFor();
    await bench.close();
  });
});
