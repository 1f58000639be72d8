import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { partsOf } from "../../src/record/parts.ts";
import type { DocumentView } from "../../src/server/api.ts";
import type { BenchInBrowser } from "./bench-in-browser.ts";
import { filmIsOpen, type Hand, recorded } from "./hand.ts";
import type { FilmSpot, IncisorFilm } from "./incisor-films.ts";

/** The films of the story: straight on from DICOM, 25 degrees from PNG, the recall from JPEG. */
export interface StoryFilms {
  readonly straight: IncisorFilm;
  readonly angled: IncisorFilm;
  readonly recall: Uint8Array;
}

const days = { presented: "2026-02-10", first: "2026-02-17", second: "2026-03-03", recall: "2026-09-08" } as const;

/** Answers the first question. */
export async function nameYourself(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.write(page.getByLabel("Your name"), "A. Resident");
  await hand.press(page.getByRole("button", { name: "Open the logbook" }));
  await page.getByRole("heading", { name: "Logbook" }).waitFor();
}

/** Begins a case of a tooth, written as the person is used to; the page reads it back by its name. Gives the case's id. */
export async function beginCase(
  hand: Hand,
  toothAsWritten: string,
  name = "upper right central incisor",
): Promise<string> {
  const { page } = hand;
  await hand.press(page.getByRole("button", { name: "New case" }).first());
  const dialog = page.getByRole("dialog", { name: "New case" });
  await hand.write(dialog.getByLabel("Tooth, as you write it"), toothAsWritten);
  const reading = dialog.getByText(name).first();
  await reading.waitFor();
  await hand.write(dialog.getByLabel("Pseudonym, never a name"), "P-0811");
  await hand.write(dialog.getByLabel("Year of birth"), "1988");
  await hand.pick(dialog.getByRole("radio", { name: "woman", exact: true }));
  await hand.writeDay(dialog.getByLabel("Presented on"), days.presented);
  await hand.press(dialog.getByRole("button", { name: "Begin the case" }));
  await page.getByRole("navigation", { name: "Moments of the case" }).waitFor();
  return page.url().split("/case/")[1]?.split("/")[0] ?? "";
}

/** A field of the case's page by its whole label. */
const field = (page: Page, label: string): Locator => page.getByRole("main").getByLabel(label, { exact: true });

/** Writes why she came, what the tests said and the diagnosis, and notes the usual form of roots and canals. */
export async function examine(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.write(
    page.getByRole("textbox", { name: "Complaint, in the patient's words" }),
    "The front tooth has gone dark.",
  );
  await recorded(page);

  await hand.addMoment("Findings");
  await hand.writeDay(field(page, "Examined on"), days.presented);
  await hand.choose(field(page, "Cold of 11"), "none");
  await hand.choose(field(page, "Percussion of 11"), "slight");
  await hand.choose(field(page, "Radiolucency"), "apical");
  await hand.choose(field(page, "Apex"), "closed");
  await recorded(page);

  await hand.addMoment("Diagnosis");
  await hand.pick(page.getByRole("radio", { name: "pulp necrosis" }));
  await hand.pick(page.getByRole("radio", { name: "asymptomatic apical periodontitis", exact: true }));
  await hand.writeDay(field(page, "Made on"), days.presented);
  await hand.press(page.getByRole("button", { name: "Start from the usual form" }));
  await page.getByRole("heading", { name: "Roots and canals" }).waitFor();
  await recorded(page);
}

/** Takes in the three films by button, drop and paste. */
export async function takeInFilms(hand: Hand, films: StoryFilms): Promise<void> {
  const { page } = hand;
  await hand.openLightBox();
  await page.getByRole("heading", { name: "No films yet" }).waitFor();
  await hand.bringFilm({
    name: "straight.dcm",
    mediaType: "application/dicom",
    bytes: films.straight.dicom,
    by: "button",
  });
  await takeIn(hand, "working length", days.first);
  await hand.bringFilm({ name: "angled.png", mediaType: "image/png", bytes: films.angled.png, by: "drop" });
  await takeIn(hand, "angled", days.presented);
  await hand.bringFilm({ name: "recall.jpg", mediaType: "image/jpeg", bytes: films.recall, by: "paste" });
  await takeIn(hand, "recall", days.recall);
}

async function takeIn(hand: Hand, purpose: string, day: string): Promise<void> {
  const { page } = hand;
  const sheet = page.getByRole("dialog", { name: "Take in a film" });
  await hand.writeDay(sheet.getByLabel("Taken on"), day);
  await hand.pick(sheet.getByRole("radio", { name: purpose, exact: true }));
  await hand.press(sheet.getByRole("button", { name: "Take in the whole picture" }));
  await sheet.waitFor({ state: "detached" });
  await filmIsOpen(page);
}

/** Four places of the canal, as a person marks them: orifice, two on the way, apex. */
function anchorsOf({ course }: IncisorFilm): FilmSpot[] {
  const last = course.length - 1;
  return [0, Math.round(last * 0.4), Math.round(last * 0.75), last].map((index) => {
    const [u, v] = course[index] ?? [0, 0];
    return [Math.round(u), Math.round(v)];
  });
}

/** The length that stands over the panel of the light box, in mm, with its interval. */
async function lengthShown(page: Page): Promise<{ mm: number; low: number; high: number }> {
  const words = await page
    .getByRole("region", { name: /^Course of / })
    .locator("p")
    .first()
    .textContent();
  const [mm = Number.NaN, low = Number.NaN, high = Number.NaN] = (words?.match(/\d+(\.\d+)?/g) ?? []).map(Number);
  return { mm, low, high };
}

/** Goes to a film of the strip. */
export async function showFilm(hand: Hand, named: string): Promise<void> {
  const { page } = hand;
  await hand.press(page.getByRole("navigation", { name: "Films of this case" }).getByRole("button", { name: named }));
  await page
    .getByRole("navigation", { name: "Films of this case" })
    .locator("[aria-current=true]", { hasText: named })
    .waitFor();
  await filmIsOpen(page);
}

/** The names of the films in the strip. */
export const filmNames = { straight: "day 7 · working length", angled: "day 0 · angled" } as const;

/** Calibrates both films, the straight one by its file and the angled one by the rod, and traces the canal on each. */
export async function measure(hand: Hand, { straight, angled }: StoryFilms): Promise<void> {
  const { page } = hand;
  await showFilm(hand, filmNames.straight);
  await page.getByRole("region", { name: "Scale" }).getByText("from the file").waitFor();
  await hand.trace(anchorsOf(straight), "Single");
  await recorded(page);
  expect(await lengthShown(page)).toSatisfy(isNear(straight));

  const measures = page.getByRole("region", { name: /^Course of / });
  await measures.getByRole("row", { name: /^Angle of Schneider.*\d°/ }).waitFor();
  await measures.getByRole("row", { name: /^Largest bend.*\d+(\.\d+)?[–—]\d/ }).waitFor();

  await showFilm(hand, filmNames.angled);
  await page.getByRole("region", { name: "Scale" }).getByText("No lengths on this film").waitFor();
  await hand.markKnown(angled.rod);
  await recorded(page);
  await hand.trace(anchorsOf(angled), "Single");
  await recorded(page);
  expect(await lengthShown(page)).toSatisfy(isNear(angled));
}

/** A quarter of a millimetre is half of what a working length is read to, for the error and for the interval's half; the course is known from the mesh. */
const isNear =
  ({ lengthMm }: IncisorFilm) =>
  ({ mm, low, high }: { mm: number; low: number; high: number }): boolean =>
    Math.abs(mm - lengthMm) < 0.25 && low <= mm && mm <= high && high - low < 0.5;

/** Moves one anchor of the course on the straight film sideways. */
export async function moveOnePoint(hand: Hand, bench: BenchInBrowser, caseId: string): Promise<string> {
  const { page } = hand;
  await showFilm(hand, filmNames.straight);
  const before = await lengthShown(page);
  const { parts, sequence } = await bench.caseNow(caseId);
  const film = partsOf(parts, "film").find(({ body }) => body.purpose === "workingLength");
  const mark = partsOf(parts, "mark").find(({ body }) => body.shape === "trace" && body.film === film?.id);
  if (mark?.body.shape !== "trace") throw new Error("no course on the straight film");
  const [u, v] = mark.body.anchors[1] ?? [0, 0];
  await hand.moveAnchor([u, v], [u + 12, v], 1);
  await expect.poll(async () => (await bench.caseNow(caseId)).sequence).toBe(sequence + 1);
  await expect.poll(() => lengthShown(page)).not.toEqual(before);
  return mark.id;
}

/** Goes from the light box back to the case. */
export async function backToCase(hand: Hand): Promise<void> {
  await hand.press(hand.page.getByRole("link", { name: "Case", exact: true }));
  await hand.page.getByRole("navigation", { name: "Moments of the case" }).waitFor();
}

/** Goes from the documents over the case to the light box. */
export async function openLightBoxFromDocuments(hand: Hand): Promise<void> {
  await hand.press(hand.page.getByRole("link", { name: "Back to the case" }));
  await hand.openLightBox();
}

/** Goes from the case to its documents and makes both. */
export async function makeDocuments(hand: Hand): Promise<[deck: SavedDocument, handout: SavedDocument]> {
  await hand.press(hand.page.getByRole("link", { name: "Documents" }));
  return [await makeDocument(hand, "Deck"), await makeDocument(hand, "Hand-out")];
}

/** A document that was made and saved. */
export interface SavedDocument {
  readonly view: DocumentView;
  readonly bytes: Uint8Array;
}

/** What each kind of document is called where it is made. */
const documentNames = ["Deck", "Hand-out", "Consent page", "Page about a piece", "Letter of hand-back"] as const;

/** Makes a document in the room of documents and saves its file. */
export async function makeDocument(hand: Hand, as: (typeof documentNames)[number]): Promise<SavedDocument> {
  const { page } = hand;
  const made = page.getByRole("main").getByRole("listitem").filter({ hasText: "Save the file" });
  const before = await made.count();
  await hand.press(page.getByRole("button", { name: new RegExp(`^${as}`) }));
  await expect.poll(() => made.count(), { timeout: 180_000 }).toBe(before + 1);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    hand.press(made.first().getByRole("link", { name: "Save the file" })),
  ]);
  const bytes = readFileSync(await download.path());
  const id = new URL(download.url()).pathname.split("/").at(-2);
  const view: DocumentView = await (await page.request.get(`/api/documents/${id}`)).json();
  expect(download.suggestedFilename()).toBe(view.fileName);
  return { view, bytes };
}

/** Records a visit on a day with its canal row. */
export async function recordVisits(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.addMoment("Visit");
  await hand.writeDay(field(page, "On").first(), days.first);
  await fillRow(hand, { state: "medicated", locator: "23.5", length: "23" });
  await hand.addMoment("Visit");
  await hand.writeDay(field(page, "On").first(), days.second);
  await fillRow(hand, { state: "filled", locator: "23.5", length: "23" });
  await hand.write(field(page, "Filled with of Single"), "gutta-percha, epoxy resin sealer");
  await hand.write(field(page, "End of filling, short of the apex of Single"), "0.8");
  await recorded(page);
}

async function fillRow(hand: Hand, row: { state: string; locator: string; length: string }): Promise<void> {
  const { page } = hand;
  await hand.choose(field(page, "State of Single"), row.state);
  await hand.write(field(page, "Reference point of Single"), "incisal edge");
  await hand.write(field(page, "Locator of Single"), row.locator);
  await hand.write(field(page, "Working length of Single"), row.length);
  await hand.write(field(page, "Apical size of Single"), "40");
  await hand.write(field(page, "Taper of Single"), "0.04");
  await recorded(page);
}

/** Records the recall, which one reader has read. */
export async function recordRecall(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.addMoment("Recall");
  await hand.writeDay(field(page, "On").first(), days.recall);
  await hand.choose(field(page, "Symptoms"), "none");
  await hand.pick(page.getByRole("radio", { name: "smaller" }));
  await hand.press(page.getByRole("button", { name: "Add a reading" }));
  await hand.write(field(page, "Periapical index of resident"), "2");
  await recorded(page);
}

/** Takes back every change of the case but the first, then does all of them again; the states are the same as before. */
export async function undoAndRedoAll(
  hand: Hand,
  bench: BenchInBrowser,
  caseId: string,
  atStart: string,
): Promise<void> {
  const end = await bench.caseNow(caseId);
  expect(await repeated(bench, caseId, "undo", hand.undo)).toBe(atStart);
  expect(await repeated(bench, caseId, "redo", hand.redo)).toBe(end.stateHash);
}

/** Undoes or redoes as long as there is something; gives the hash of the state that this ends in. */
async function repeated(
  bench: BenchInBrowser,
  caseId: string,
  way: "undo" | "redo",
  act: () => Promise<void>,
): Promise<string> {
  let now = await bench.caseNow(caseId);
  while (now[way] !== undefined) {
    const { sequence } = now;
    await act();
    await expect
      .poll(async () => (await bench.caseNow(caseId)).sequence, { interval: 15, timeout: 20_000 })
      .toBeGreaterThan(sequence);
    now = await bench.caseNow(caseId);
  }
  return now.stateHash;
}
