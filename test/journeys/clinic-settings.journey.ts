import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import type { Settings } from "../../src/record/settings.ts";
import type { CaseView } from "../../src/server/api.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { failingShot } from "./shots.ts";

const settingsNow = async ({ page }: BenchInBrowser): Promise<Settings> =>
  (await page.request.get("/api/settings")).json();

const section = (page: Page, name: string) => page.getByRole("region", { name, exact: true });

/** Goes to a field of a section by its label, writes in it and leaves it. */
async function write(page: Page, where: string, label: string, text: string): Promise<void> {
  const field = section(page, where).getByLabel(label, { exact: true });
  await field.focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.type(text);
  await page.keyboard.press("Tab");
}

const save = (page: Page, name: string) => section(page, name).getByRole("button", { name: /^Save/ }).press("Enter");

/** The room: a refused volume, a figure from elsewhere taken by a press, a closed room, and what was typed over a reload. */
async function setRoom(bench: BenchInBrowser): Promise<void> {
  const { page } = bench;
  await page.keyboard.press("3");
  await expect
    .poll(() =>
      page.getByRole("heading", { name: "Room", exact: true }).evaluate((one) => one === document.activeElement),
    )
    .toBe(true);
  // The section stands at the top of the window, and the head with the way to the emergency page above it.
  expect((await section(page, "Room").boundingBox())?.y).toBeLessThan(120);
  expect(
    (await page.getByRole("banner").getByRole("link", { name: "Emergency" }).boundingBox())?.y,
  ).toBeGreaterThanOrEqual(0);
  await write(page, "Room", "Volume of the room", "-30");
  await write(page, "Room", "Fresh air: room volumes an hour, 0 if closed", "0");
  await section(page, "Room").getByText("A closed room: no air changes").waitFor();
  await save(page, "Room");
  await section(page, "Room").getByText("-30 is below what is accepted", { exact: false }).first().waitFor();
  await section(page, "Room").getByText("is needed; nothing stands here").first().waitFor();
  expect((await settingsNow(bench)).clinic).toBeUndefined();
  await faultsAtBothSizes(page, "settings-refused");

  await page.reload();
  await section(page, "Room").getByText("Not saved yet").waitFor();
  expect(await section(page, "Room").getByLabel("Volume of the room", { exact: true }).inputValue()).toBe("-30");
  await section(page, "Room").getByRole("button", { name: "31.2 m³" }).press("Enter");
  await save(page, "Room");
  await section(page, "Room").getByText("✓ Saved").waitFor();
  const { clinic } = await settingsNow(bench);
  expect(clinic?.room).toMatchObject({
    volumeM3: 31.2,
    airChangesPerHour: 0,
    from: expect.stringContaining("assumption"),
  });
  expect(Object.keys(clinic ?? {})).toEqual(["room"]);
}

/** Rows by the keyboard: whom to call, in the order that the clinic wants. */
async function setEmergency(bench: BenchInBrowser): Promise<void> {
  const { page } = bench;
  const emergency = section(page, "Emergency");
  for (const [who, number] of [
    ["Anaesthetist on call", "4711"],
    ["Ambulance", "112"],
  ] as const) {
    const row = (await emergency.getByRole("row").count()) || 1;
    await emergency.getByRole("button", { name: "Add a call" }).press("Enter");
    await write(page, "Emergency", `Whom of call ${row}`, who);
    await write(page, "Emergency", `Number of call ${row}`, number);
  }
  await emergency.getByLabel("Whom of call 2").focus();
  await page.keyboard.press("Alt+ArrowUp");
  await write(page, "Emergency", "Allergy", "As agreed.");
  await save(page, "Emergency");
  await emergency.getByText("✓ Saved").waitFor();
  expect((await settingsNow(bench)).emergency).toEqual({
    calls: [
      { who: "Ambulance", number: "112" },
      { who: "Anaesthetist on call", number: "4711" },
    ],
    protocols: { allergy: "As agreed." },
  });
}

const about: BodyOf<"case"> = {
  ...{ pseudonym: "P-26", tooth: "26", birthYear: 1970, sex: "female", presentedOn: "2026-01-12" },
  ...{ treatment: "retreatment", complaint: "", referredFor: "", background: "", demo: false },
};

/** Opens a case in a window of its own; what comes back adds a visit there and tells it as it was recorded. */
async function caseOpenElsewhere(bench: BenchInBrowser): Promise<() => Promise<BodyOf<"visit">>> {
  const { caseId }: CaseView = await (await bench.page.request.post("/api/cases", { data: { case: about } })).json();
  const elsewhere = await bench.context.newPage();
  await elsewhere.goto(`/case/${caseId}/instruments`);
  const addVisit = elsewhere.getByRole("button", { name: "Add a visit" });
  await addVisit.waitFor();
  return async () => {
    await addVisit.press("Enter");
    await elsewhere.getByRole("region", { name: "At the chair" }).waitFor();
    const visits = async () => partsOf((await bench.caseNow(caseId)).parts, "visit");
    await expect.poll(async () => (await visits()).length).toBe(1);
    await elsewhere.close();
    const [visit] = await visits();
    if (visit === undefined) throw new Error("no visit was recorded");
    return visit.body;
  };
}

it("the clinic's settings are set by the keyboard, refused at their field, and kept from two windows", async () => {
  const bench = await benchInBrowser({ who: "A. Resident" });
  const { page } = bench;
  failingShot(page, "clinic-settings");
  await page.goto("/settings");
  await page.getByRole("heading", { name: "Emergency", exact: true }).waitFor();
  await faultsAtBothSizes(page, "settings-empty");
  await setRoom(bench);

  // Another window has this page open with nothing of the room in it, and keeps its own section.
  const other = await bench.context.newPage();
  await other.goto("/settings");
  await section(other, "Irrigation").waitFor();
  await setEmergency(bench);
  await write(other, "Irrigation", "Closed, side-vented needle: the same", "1");
  await save(other, "Irrigation");
  await section(other, "Irrigation").getByText("✓ Saved").waitFor();
  const both = await settingsNow(bench);
  expect(both).toMatchObject({
    emergency: { calls: [{ number: "112" }, {}] },
    clinic: { irrigation: { sideVentedMm: 1 } },
  });
  expect(both.clinic?.room?.volumeM3).toBe(31.2);

  // The same section in both windows: nothing is overwritten before the person chose.
  await write(page, "Irrigation", "Closed, side-vented needle: the same", "2.5");
  await save(page, "Irrigation");
  await section(page, "Irrigation").getByText("This was changed in another window as well").waitFor();
  expect((await settingsNow(bench)).clinic?.irrigation?.sideVentedMm).toBe(1);
  await section(page, "Irrigation").getByRole("button", { name: "Save mine" }).press("Enter");
  await expect.poll(async () => (await settingsNow(bench)).clinic?.irrigation?.sideVentedMm).toBe(2.5);
  await other.close();

  const begun = await caseOpenElsewhere(bench);

  // Own limits are chosen and none is given: said at the choice.
  await section(page, "Anaesthetic").locator("label", { hasText: "our own rows below" }).click();
  await save(page, "Anaesthetic");
  await section(page, "Anaesthetic").getByText("limits of your own are chosen and none is given").first().waitFor();
  await section(page, "Anaesthetic").locator("label", { hasText: "Canada" }).click();
  await page.getByText("What each set says").click();
  await page.getByRole("table", { name: /chosen: Canadian/ }).waitFor();
  await save(page, "Anaesthetic");
  await expect.poll(async () => (await settingsNow(bench)).clinic?.doseLimits).toBe("canada");
  await faultsAtBothSizes(page, "settings-set");

  // A case that was open since before the last saving begins its visit with what is saved by now.
  expect((await begun()).clinic).toEqual((await settingsNow(bench)).clinic);
  expect((await page.textContent("main"))?.toLowerCase()).not.toMatch(/\bsafe\b|proves/);
  await bench.close();
});
