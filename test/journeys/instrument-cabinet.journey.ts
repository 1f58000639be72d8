import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { CabinetItemOf, CabinetKind } from "../../src/record/cabinet/cabinet-item.ts";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import type { CabinetView, CaseView } from "../../src/server/api.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { failingShot } from "./shots.ts";

const cabinetNow = async ({ page }: BenchInBrowser): Promise<CabinetView> =>
  (await page.request.get("/api/cabinet")).json();

async function theItem<Kind extends CabinetKind>(
  bench: BenchInBrowser,
  kind: Kind,
  at = 0,
): Promise<CabinetItemOf<Kind>> {
  const { items } = await cabinetNow(bench);
  const found = items.filter((one): one is CabinetItemOf<Kind> & typeof one => one.kind === kind)[at];
  if (found === undefined) throw new Error(`no ${kind} ${at} in the cabinet`);
  return found;
}

/** Goes to a field by its label, writes in it and leaves it. */
async function write(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.type(text);
  await page.keyboard.press("Tab");
}

const leaveFields = (page: Page) =>
  page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());

/** Takes back the last gesture, once the page knows that it is recorded. */
async function takeBack(page: Page): Promise<void> {
  await page.locator('.save-mark[data-is="saved"]').waitFor();
  await page.keyboard.press("Control+z");
}

/** The cabinet of the story: an instrument, one of variable taper, a sequence of both and a counted file, by the keyboard. */
async function fillCabinet(bench: BenchInBrowser): Promise<void> {
  const { page } = bench;
  await page.keyboard.press("i");
  await page.getByRole("heading", { name: "Nothing in the cabinet yet" }).waitFor();
  await faultsAtBothSizes(page, "cabinet-empty");

  // The standard's hand files in one press, taken back in one.
  await page.getByRole("button", { name: "Add the standard's hand files" }).focus();
  await page.keyboard.press("Enter");
  // ISO 3630-1 (memory) has 21 sizes from 06 to 140; the cabinet keeps each in 21, 25 and 31 mm.
  await expect.poll(async () => (await cabinetNow(bench)).items.length).toBe(63);
  await page.getByText("By hand, 63").first().waitFor();
  await takeBack(page);
  await page.getByRole("heading", { name: "Nothing in the cabinet yet" }).waitFor();

  await page.keyboard.press("i");
  await page.getByRole("heading", { name: "Instrument 1", exact: true }).waitFor();
  // What was added is written at once: its name has the focus, and no letter of the shortcut in it.
  const name = page.getByLabel("Name", { exact: true });
  await expect.poll(() => name.evaluate((one) => one === document.activeElement)).toBe(true);
  expect(await name.inputValue()).toBe("Instrument 1");
  await write(page, "Name", "Path");
  await write(page, "Size, 1/100 mm at the tip", "20");
  await write(page, "Speed", "300");
  await write(page, "Usual time in one canal", "8");
  // A length that can't be is refused in words, without the names of the code.
  await write(page, "Length, tip to handle", "12");
  await page.getByText("12 is shorter than the working part, 16 mm; give working part", { exact: true }).waitFor();
  await write(page, "Length, tip to handle", "25");
  await write(page, "Canals", "1");
  await page.getByRole("img", { name: /^Instruments to scale\. Path, yellow/ }).waitFor();
  await leaveFields(page);
  await page.keyboard.press("f");
  await page.getByRole("heading", { name: "File 1", exact: true }).waitFor();
  await write(page, "Marked as", "P7");
  await expect.poll(async () => (await theItem(bench, "file")).body.label).toBe("P7");
  await leaveFields(page);

  await page.keyboard.press("i");
  await page.getByRole("heading", { name: "Instrument 2", exact: true }).waitFor();
  await write(page, "Name", "Rotary");
  await page.getByRole("button", { name: "Its taper varies: give diameters at stations" }).press("Enter");
  await page.getByRole("button", { name: "Add a station" }).press("Enter");
  await write(page, "From the tip of station 2", "3");
  await write(page, "Diameter of station 2", "0.49");
  await write(page, "Usual time in one canal", "12");
  // Linear between stations: 0.25 at the tip and 0.49 at 3 mm make 0.41 at 2 mm.
  await page.getByText(/^Diameters along it/).click();
  await expect.poll(() => page.getByRole("row", { name: /^2\.0 / }).textContent()).toMatch(/^2\.00\.4100\.3900\.430$/);
  await faultsAtBothSizes(page, "cabinet-instrument");
  await leaveFields(page);

  // From the overview no instrument is looked at: it is asked for, and none is chosen before the person does.
  const [path, shaper] = [await theItem(bench, "instrument", 0), await theItem(bench, "instrument", 1)];
  await page.keyboard.press("o");
  await page.locator(".cabinet-line[aria-current=page]", { hasText: "Overview" }).waitFor();
  await page.keyboard.press("s");
  const asked = page.getByRole("dialog", { name: "New sequence" });
  await faultsAtBothSizes(page, "cabinet-asks");
  expect(await asked.getByRole("button", { name: "Add the sequence" }).isDisabled()).toBe(true);
  await asked.getByLabel("Which instrument goes first").selectOption(shaper.id);
  await asked.getByRole("button", { name: "Add the sequence" }).press("Enter");
  await page.getByRole("heading", { name: "Sequence 1", exact: true }).waitFor();
  await expect
    .poll(() => page.getByLabel("Name", { exact: true }).evaluate((one) => one === document.activeElement))
    .toBe(true);
  await write(page, "Name", "Usual");
  // A step is of no instrument before one is chosen.
  expect(await page.getByRole("button", { name: "Add a step" }).isDisabled()).toBe(true);
  await page.getByLabel("The next step's instrument").selectOption(path.id);
  await page.getByRole("button", { name: "Add a step" }).press("Enter");
  expect(await page.getByLabel("Instrument of step 1").inputValue()).toBe(shaper.id);
  await write(page, "Short of the working length by of step 2", "2");
  // The second step goes first, by the keyboard.
  await page.getByLabel("Instrument of step 2").focus();
  await page.keyboard.press("Alt+ArrowUp");
  await expect
    .poll(async () => (await theItem(bench, "sequence")).body.steps)
    .toEqual([{ instrument: path.id, shortByMm: 2 }, { instrument: shaper.id }]);
  await faultsAtBothSizes(page, "cabinet-sequence");
}

const about: BodyOf<"case"> = {
  ...{ pseudonym: "P-26", tooth: "26", birthYear: 1970, sex: "female", presentedOn: "2026-01-12" },
  ...{ treatment: "firstTreatment", complaint: "", referredFor: "", background: "", demo: false },
};
const canal = (name: string, workingLengthMm?: number): BodyOf<"visit">["canals"][number] => ({
  ...{ canal: name, state: "negotiated", patency: "patent", reference: "mesiobuccal cusp" },
  ...(workingLengthMm === undefined ? {} : { workingLengthMm }),
});
const visitBody: BodyOf<"visit"> = {
  ...{ on: "2026-02-02", aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: false },
  ...{ isolation: { rubberDam: "used" }, magnification: "microscope", anaesthetic: [] },
  canals: [canal("MB1", 19.5), canal("DB", 19), canal("P")],
  ...{ irrigation: [], instruments: [], solvent: [], lots: [], films: [], flareUp: "notRecorded", told: "", note: "" },
};

/** A case with a visit of three canals, the length of the third not known; its page of the visit open. */
async function openVisit(bench: BenchInBrowser): Promise<() => Promise<BodyOf<"visit">["instruments"]>> {
  const { page } = bench;
  const { caseId }: CaseView = await (await page.request.post("/api/cases", { data: { case: about } })).json();
  const operation = { op: "put", id: "visit-1", kind: "visit", baseRevision: 0, body: visitBody };
  const data = { words: "Visit added", operations: [operation] };
  expect((await page.request.post(`/api/cases/${caseId}/gestures`, { data })).ok()).toBe(true);
  await page.goto(`/case/${caseId}/visit-1`);
  await page.getByRole("button", { name: /^Instruments into a canal/ }).waitFor();
  return async () => partsOf((await bench.caseNow(caseId)).parts, "visit")[0]?.body.instruments ?? [];
}

/** Presses keys one after the other and gives how many they were. */
async function presses(page: Page, keys: readonly string[]): Promise<number> {
  for (const key of keys) await page.keyboard.press(key);
  return keys.length;
}

const entry = (page: Page) => page.getByRole("dialog", { name: "Instruments into a canal" });

describe("the instrument cabinet", () => {
  it("holds the clinic's own instruments, and a usual sequence enters a canal in four keys or fewer", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "instrument-cabinet");
    await page.getByRole("heading", { name: "Logbook" }).waitFor();
    await fillCabinet(bench);
    const file = await theItem(bench, "file");
    const tally = async () => (await cabinetNow(bench)).files[file.id];
    const uses = await openVisit(bench);

    // The first canal: open, the sequence by its digit, Enter.
    expect(await presses(page, ["i", "1", "Enter"])).toBeLessThanOrEqual(4);
    await expect.poll(async () => (await uses()).length).toBe(2);
    const [path, shaper] = await uses();
    expect(path).toMatchObject({ canal: "MB1", size: 20, rpm: 300, seconds: 8, depthMm: 17.5, lengthMm: 25 });
    expect(path?.file).toEqual({
      ...{ id: file.id, label: "P7", usesBefore: 0, turnsBefore: 0, sterilisationsBefore: 0 },
    });
    expect(shaper).toMatchObject({ canal: "MB1", seconds: 12, depthMm: 19.5, profile: [{}, { atMm: 3 }, {}] });
    expect(shaper).not.toHaveProperty("file");
    // 300 turns a minute for 8 s are 40 turns.
    await expect.poll(async () => (await tally())?.turnsNet).toBeCloseTo(40, 6);
    expect(await tally()).toMatchObject({ uses: 1, canals: 1, over: [] });
    await page.getByText("largest to length 25/v").waitFor();

    // The next canal comes by itself, and what is said against the file stands there before it is recorded.
    await page.keyboard.press("i");
    await entry(page).getByText("at its limit", { exact: true }).waitFor();
    const db = entry(page).getByRole("radio", { name: /^DB/ });
    expect(await db.isChecked()).toBe(true);
    expect(await db.evaluate((radio) => radio === document.activeElement)).toBe(true);
    await faultsAtBothSizes(page, "cabinet-entry");
    expect(1 + (await presses(page, ["Enter"]))).toBeLessThanOrEqual(4);
    await expect.poll(async () => (await uses()).length).toBe(4);
    expect((await uses())[2]).toMatchObject({ canal: "DB", depthMm: 17, file: { usesBefore: 1, turnsBefore: 40 } });
    await expect.poll(async () => (await tally())?.over).toEqual([{ name: "canals", limit: 1, found: 2 }]);

    // A canal of unknown length gets rows without depth; a file over its limit is said and can still be recorded.
    await page.keyboard.press("i");
    await entry(page).getByText("discard: over its limit", { exact: true }).waitFor();
    await entry(page).getByText("The working length of P is not in this visit's table").waitFor();
    await presses(page, ["Enter"]);
    await expect.poll(async () => (await uses()).length).toBe(6);
    expect((await uses())[4]).not.toHaveProperty("depthMm");

    // One gesture, one undo.
    await takeBack(page);
    await expect.poll(async () => (await uses()).length).toBe(4);
    await expect.poll(async () => (await tally())?.canals).toBe(2);

    // One instrument instead of a sequence, by pointer, into a canal of one's choice.
    await page.getByRole("button", { name: /^Instruments into a canal/ }).click();
    await entry(page).locator("label", { hasText: "MB1" }).click();
    await entry(page).locator("label", { hasText: "Rotary" }).click();
    await entry(page)
      .getByRole("button", { name: /^Record 1 instrument in MB1/ })
      .click();
    await expect.poll(async () => (await uses()).length).toBe(5);
    expect((await uses())[4]).toMatchObject({ canal: "MB1", depthMm: 19.5, seconds: 12 });

    // The rest of a row, on a page of its own.
    await page.getByRole("button", { name: /^more.*MB1.*row 5/ }).click();
    await page.getByLabel("Section").selectOption("s");
    await write(page, "Share of the time at depth", "0.5");
    await faultsAtBothSizes(page, "cabinet-row");
    await page.keyboard.press("Escape");
    await expect.poll(async () => (await uses())[4]).toMatchObject({ section: "s", engagedFraction: 0.5 });
    await faultsAtBothSizes(page, "cabinet-visit");
    const wide = await page.evaluate(() =>
      [...document.querySelectorAll(".rows-scroll")].some((table) => table.scrollWidth > table.clientWidth),
    );
    expect(wide, "a table scrolls sideways").toBe(false);

    await flaggedAndDiscarded(bench, file.id);
    await bench.close();
  });

  it("keeps both versions where an item was changed elsewhere, and says what is not there", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "instrument-cabinet-conflict");
    await page.goto("/instruments/nothing-of-this");
    await page.getByText("The cabinet holds nothing of that address").waitFor();
    await page.keyboard.press("s");
    await page.getByText("Add an instrument first").waitFor();
    await page.keyboard.press("i");
    await page.getByRole("heading", { name: "Instrument 1", exact: true }).waitFor();
    await expect.poll(async () => (await cabinetNow(bench)).items.length).toBe(1);
    const { id, body } = await theItem(bench, "instrument");
    const operation = { op: "put", id, kind: "instrument", baseRevision: 1, body: { ...body, name: "Theirs" } };
    const answer = await page.request.post("/api/cabinet/gestures", { data: { words: "x", operations: [operation] } });
    expect(answer.ok()).toBe(true);

    bench.expectComplaint(/409 \(Conflict\)/);
    await write(page, "Name", "Mine");
    await page.getByRole("dialog", { name: "This was changed in another window as well" }).waitFor();
    await page.getByRole("table", { name: "Instrument" }).waitFor();
    await faultsAtBothSizes(page, "cabinet-conflict");
    await page.getByRole("button", { name: "Keep mine" }).click();
    await page.getByRole("heading", { name: "Mine", exact: true }).waitFor();
    await expect.poll(async () => (await theItem(bench, "instrument")).body.name).toBe("Mine");

    // What can't be is said where it stands, and the rest goes on.
    await write(page, "Taper at the tip", "0.2");
    await page.locator(".cabinet-refused").waitFor();
    await leaveFields(page);
    await takeBack(page);
    await page.getByRole("img", { name: /^Instruments to scale/ }).waitFor();
    await page.getByRole("button", { name: "Take out this instrument" }).click();
    await page.getByRole("button", { name: "Take it out" }).click();
    await page.getByRole("heading", { name: "Nothing in the cabinet yet" }).waitFor();
    await takeBack(page);
    await page.getByRole("link", { name: /^Mine/ }).waitFor();
    await bench.close();
  });
});

/** A material by its kind and a template that offers it first, by the keyboard. */
it("keeps materials by kind and templates of visits", async () => {
  const bench = await benchInBrowser({ who: "A. Resident" });
  const { page } = bench;
  failingShot(page, "cabinet-materials");
  // A strength that can't be is refused on the way.
  bench.expectComplaint(/400 \(Bad Request\)/);
  await page.goto("/instruments");
  await page.getByRole("heading", { name: "Nothing in the cabinet yet" }).waitFor();

  // Its kind first; nothing is chosen before the person chooses, and a silence is no plain solution.
  await page.keyboard.press("m");
  const asked = page.getByRole("dialog", { name: "New material" });
  expect(await asked.getByRole("button", { name: "Add the material" }).isDisabled()).toBe(true);
  expect(await asked.getByRole("radio", { checked: true }).count()).toBe(0);
  await asked.locator("label", { hasText: "local anaesthetic" }).click();
  await asked.getByLabel("Agent").selectOption("lidocaine");
  await asked.getByLabel("Strength").fill("20");
  await asked.getByRole("button", { name: "Add the material" }).press("Enter");
  await asked.getByText("with which? plain where there is none").waitFor();
  await faultsAtBothSizes(page, "cabinet-new-material");
  await asked.getByLabel("Strength", { exact: true }).fill("2");
  await asked.getByLabel("Vasoconstrictor").selectOption("epinephrine");
  await asked.getByLabel("Its strength, 1 in").fill("100000");
  await asked.getByLabel("Volume of a cartridge").fill("1,8");
  await asked.getByLabel("Expires").fill("2020-05-31");
  await asked.getByRole("button", { name: "Add the material" }).press("Enter");
  await page.getByRole("heading", { name: "lidocaine 2 %, epinephrine 1:100000", exact: true }).waitFor();
  await page.getByText("Expired on 31 May 2020").waitFor();
  const material = await theItem(bench, "stock");
  expect(material.body).toEqual({
    name: "lidocaine 2 %, epinephrine 1:100000",
    holds: {
      ...{ kind: "anaesthetic", agent: "lidocaine", percent: 2, cartridgeMl: 1.8 },
      vasoconstrictor: { name: "epinephrine", ratio: 100_000 },
    },
    expires: "2020-05-31",
  });
  // What can't be is said at its field, and what stood stands.
  await write(page, "Strength", "70");
  await page.locator(".field-fault").first().waitFor();
  await faultsAtBothSizes(page, "cabinet-material");
  await write(page, "Strength", "2");
  await write(page, "Lot of the package in use", "A-17");
  await expect.poll(async () => (await theItem(bench, "stock")).body.lot).toBe("A-17");
  await leaveFields(page);

  await page.keyboard.press("t");
  await page.getByRole("heading", { name: "Template 1", exact: true }).waitFor();
  await write(page, "Name", "First visit");
  for (const says of ["Access", "Tooth and side"]) {
    await page.getByLabel("The next step, in a few words").fill(says);
    await page.keyboard.press("Enter");
  }
  await page.getByLabel("Words of step 2").focus();
  await page.keyboard.press("Alt+ArrowUp");
  await page.getByLabel("About of step 1").selectOption("timeOut");
  await page.getByLabel("Hold point of step 2").selectOption("access");
  await page.getByLabel("The next material").selectOption(material.id);
  await page.getByRole("button", { name: "Offer it too" }).press("Enter");
  await expect
    .poll(async () => (await theItem(bench, "template")).body)
    .toEqual({
      name: "First visit",
      steps: [
        { says: "Tooth and side", about: "timeOut" },
        { says: "Access", holdPoint: "access" },
      ],
      stock: [material.id],
    });
  await faultsAtBothSizes(page, "cabinet-template");

  // A material that a template names stays and says why; without the template it goes.
  await page
    .getByRole("link", { name: /^lidocaine/ })
    .first()
    .click();
  await page.getByText("It stays while it is named by: First visit.").waitFor();
  await page.getByRole("link", { name: "First visit" }).last().click();
  await page.getByRole("button", { name: "Take out this template" }).click();
  await page.getByRole("button", { name: "Take it out" }).click();
  await expect.poll(async () => (await cabinetNow(bench)).items.length).toBe(1);
  await takeBack(page);
  await expect.poll(async () => (await cabinetNow(bench)).items.length).toBe(2);
  await bench.close();
});

/** The file over its limit: flagged in the overview, sterilised in one press, discarded with its reason, never taken out. */
async function flaggedAndDiscarded(bench: BenchInBrowser, fileId: string): Promise<void> {
  const { page } = bench;
  const body = async () => (await theItem(bench, "file")).body;
  await page.goto("/instruments");
  await page.getByText("2 canals, 1 above the limit of 1").waitFor();
  await faultsAtBothSizes(page, "cabinet-overview");
  await page.getByRole("button", { name: /^Sterilised today.*P7/ }).click();
  await expect.poll(async () => (await body()).sterilisedOn.length).toBe(1);

  await page.getByRole("link", { name: "P7" }).last().click();
  await page.getByRole("heading", { name: "P7", exact: true }).waitFor();
  expect(page.url()).toContain(fileId);
  await page.keyboard.press("e");
  await expect.poll(async () => (await body()).sterilisedOn.length).toBe(2);
  await takeBack(page);
  await expect.poll(async () => (await body()).sterilisedOn.length).toBe(1);
  await page.getByText("Canals", { exact: true }).click();
  await page.getByText("Each canal once for each visit").waitFor();
  await faultsAtBothSizes(page, "cabinet-file");

  await page.getByText("This file was counted: it stays").waitFor();
  expect(await page.getByRole("button", { name: /^Take out/ }).count()).toBe(0);
  await page.getByRole("button", { name: "Discard it" }).click();
  expect(await page.getByRole("button", { name: "Discard it today" }).isDisabled()).toBe(true);
  await page.keyboard.type("past its limit of canals");
  await page.keyboard.press("Enter");
  await expect.poll(async () => (await body()).discarded?.because).toBe("past its limit of canals");
  await page.locator(".file-flag-lines").getByText("discarded", { exact: true }).waitFor();
  await page.getByRole("button", { name: "Bring it back into use" }).waitFor();
  expect((await page.textContent("main"))?.toLowerCase()).not.toMatch(/\bsafe\b|proves/);
}
