import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { recorded } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";

const day = "2026-03-02";
const about = {
  ...{ birthYear: 1970, sex: "female", presentedOn: "2026-01-12", treatment: "firstTreatment", pseudonym: "P-46" },
  ...{ complaint: "", referredFor: "", background: "", demo: false, tooth: "46" },
};
const history = { takenOn: day, nothingToNote: false, flags: [], medicines: [], bodyMassKg: 70, note: "" };
const canal = { canal: "MB", state: "located", patency: "notTried", reference: "" };
const visit = {
  ...{ on: day, aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: true, magnification: "notRecorded" },
  ...{ isolation: { rubberDam: "notRecorded" }, anaesthetic: [], canals: [canal], irrigation: [], instruments: [] },
  ...{ solvent: [], lots: [], films: [], flareUp: "notRecorded", told: "", note: "" },
};
/** What the clinic keeps; usual amounts where it wrote some down itself. */
const stock = {
  "stock-a-lidocaine": {
    name: "lidocaine with epinephrine",
    holds: {
      ...{ kind: "anaesthetic", agent: "lidocaine", percent: 2, cartridgeMl: 1.8 },
      vasoconstrictor: { name: "epinephrine", ratio: 100_000 },
    },
  },
  "stock-b-hypochlorite": {
    name: "hypochlorite 3 %",
    holds: {
      ...{ kind: "irrigant", solution: "sodium hypochlorite", percent: 3, activated: "no" },
      ...{ volumeMl: 5, minutes: 1 },
    },
  },
  "stock-c-chlorhexidine": {
    name: "chlorhexidine 2 %",
    holds: { kind: "irrigant", solution: "chlorhexidine", percent: 2, activated: "no" },
  },
  "stock-d-water": {
    name: "sterile water",
    holds: { kind: "irrigant", solution: "sterile water", volumeMl: 5, minutes: 1, activated: "no" },
  },
};

async function put(page: Page, path: string, words: string, parts: Readonly<Record<string, object>>, kind?: string) {
  const operations = Object.entries(parts).map(([id, body]) => ({
    ...{ op: "put", id, kind: kind ?? id.replace(/-[a-z0-9]+$/, ""), baseRevision: 0, body },
  }));
  const answer = await page.request.post(path, { data: { words, operations } });
  expect(answer.ok(), await answer.text()).toBe(true);
}

/** A case with a history and an empty visit, and the clinic's materials. */
async function openVisit({ page }: BenchInBrowser): Promise<string> {
  await put(page, "/api/cabinet/gestures", "Materials kept", stock, "stock");
  const made = await page.request.post("/api/cases", { data: { case: about } });
  const { caseId } = await made.json();
  await put(page, `/api/cases/${caseId}/gestures`, "History", { "history-a": history }, "medicalHistory");
  await put(page, `/api/cases/${caseId}/gestures`, "Visit", { "visit-a": visit }, "visit");
  await page.goto(`/case/${caseId}/visit-a`);
  await page.getByRole("button", { name: "Note an injection" }).waitFor();
  return caseId;
}

async function visitNow(bench: BenchInBrowser, caseId: string) {
  const part = (await bench.caseNow(caseId)).parts.find(({ kind }) => kind === "visit");
  if (part?.kind !== "visit") throw new Error("no visit");
  return part.body;
}

async function open(page: Page, button: string): Promise<void> {
  await page.getByRole("button", { name: button }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("dialog").waitFor();
}

describe("materials at the chair", () => {
  it("an injection over the limit is asked for, and who confirmed it is recorded", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "materials-injection");
    const caseId = await openVisit(bench);

    // The first: the solution by its digit, how many, Enter.
    await open(page, "Note an injection");
    await page.getByText(/1.8 ml; \d+ left, by the limit of epinephrine/).waitFor();
    await page.keyboard.press("1");
    await page.keyboard.press("1");
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await recorded(page);
    expect((await visitNow(bench, caseId)).anaesthetic).toHaveLength(1);

    // A percent in the place of a ratio, and a number below nothing, are told at their fields.
    await open(page, "Note an injection");
    await page.keyboard.press("0");
    const byHand = page.getByRole("dialog", { name: "Injection" });
    await byHand.getByRole("radio", { name: "lidocaine", exact: true }).check();
    await byHand.getByRole("radio", { name: "epinephrine", exact: true }).check();
    await byHand.getByLabel("Strength", { exact: true }).fill("100000");
    await byHand.getByLabel("Vasoconstrictor, one to", { exact: true }).fill("4");
    await byHand.getByLabel("Cartridges", { exact: true }).fill("-1");
    await byHand.getByText("100000 looks like the ratio of the vasoconstrictor").waitFor();
    await byHand.getByText("4 looks like the strength in percent").waitFor();
    await byHand.getByText(/is below nothing/).waitFor();
    await shot(page, "materials-mistaken");
    await page.keyboard.press("Escape");

    // Twelve more are over the limit of the vasoconstrictor: Enter asks, and records nothing.
    await open(page, "Note an injection");
    await page.keyboard.press("1");
    await page.keyboard.type("12");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: /Over a limit/ }).waitFor();
    const who = page.getByLabel(/^Confirmed by/);
    await who.and(page.locator(":focus")).waitFor();
    expect(await who.inputValue()).toBe("");
    await page.keyboard.press("Enter");
    await page.getByText("who says that it is to be recorded so?").waitFor();
    expect((await visitNow(bench, caseId)).anaesthetic).toHaveLength(1);
    await page.keyboard.type("supervisor");
    await page.keyboard.press("Tab");
    await page.keyboard.type("second block");
    await page.getByRole("button", { name: "Record over the limit" }).waitFor();
    await faultsAtBothSizes(page, "materials-over-limit");
    await page.getByLabel("Because").press("Enter");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await recorded(page);
    await expect.poll(async () => (await visitNow(bench, caseId)).anaesthetic.length).toBe(2);
    const [, second] = (await visitNow(bench, caseId)).anaesthetic;
    expect(second?.confirmed).toMatchObject({ by: "supervisor", because: "second block" });
    expect(second?.confirmed?.asked.join(" ")).toMatch(/Epinephrine: 234 micrograms are above the limit of 200/);

    // The page says what was given against its limits.
    await page.getByText(/▲ Epinephrine: 234 micrograms are above the limit of 200/).waitFor();
    await page.getByRole("button", { name: /^No: Significant disease of the heart/ }).focus();
    await page.keyboard.press("Enter");
    await expect
      .poll(async () => {
        const part = (await bench.caseNow(caseId)).parts.find(({ kind }) => kind === "medicalHistory");
        return part?.kind === "medicalHistory" ? part.body.denied : undefined;
      })
      .toEqual(["cardiacRisk"]);
    await shot(page, "materials-anaesthetic");
    await bench.close();
  });

  it("irrigants that must not meet are told before the second is recorded, and a rinse can go first", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "materials-irrigation");
    const caseId = await openVisit(bench);

    // One with the clinic's usual amounts: its digit and Enter.
    await open(page, "Note an irrigant");
    await page.keyboard.press("1");
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await recorded(page);

    // The second is chosen: the clash stands there with its remedy, and nothing is recorded.
    await open(page, "Note an irrigant");
    await page.keyboard.press("2");
    const clash = page.getByRole("alert", { name: "They must not meet" });
    await clash.getByText(/precipitate/).waitFor();
    await clash.getByText("Remedy:").waitFor();
    await clash.getByText(/Khatib 2020/).waitFor();
    expect((await visitNow(bench, caseId)).irrigation).toHaveLength(1);
    await faultsAtBothSizes(page, "materials-clash");

    // The rinse goes first; then nothing speaks against it.
    await clash.getByRole("button", { name: "Rinse between, first" }).focus();
    await page.keyboard.press("Enter");
    await clash.getByRole("button", { name: "Record the rinse: sterile water" }).focus();
    await page.keyboard.press("Enter");
    await page.getByText("Rinse recorded first: sterile water.").waitFor();
    await clash.waitFor({ state: "detached" });
    await page.getByLabel("Volume", { exact: true }).fill("5");
    await page.getByLabel("For", { exact: true }).fill("1");
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await recorded(page);
    await expect
      .poll(async () => (await visitNow(bench, caseId)).irrigation.map(({ solution }) => solution))
      .toEqual(["sodium hypochlorite", "sterile water", "chlorhexidine"]);

    // Back to the first without a rinse, recorded although they meet: what met stands between the two.
    await open(page, "Note an irrigant");
    await page.keyboard.press("1");
    await clash.waitFor();
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await recorded(page);
    const sequence = page.getByRole("list", { name: "Irrigants in their order" });
    await sequence.getByText(/▲ .*met/).waitFor();
    await shot(page, "materials-irrigation");
    await bench.close();
  });
});
