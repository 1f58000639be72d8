import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { seededRandom } from "../../src/core/statistics/seeded-random.ts";
import type { LedgerEntry } from "../../src/record/ledger-entry.ts";
import type { CaseView, ExerciseView, FilmImported } from "../../src/server/api.ts";
import { sampleParts } from "../sample-case.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { root } from "./canalog.ts";
import { onDrawing } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** The error that is put into every mark, in each direction. */
const sigmaPx = 0.8;
const noiseSeed = 1_940;

interface KnownFilm {
  readonly name: string;
  readonly columns: number;
  readonly rows: number;
  readonly places: readonly { readonly kind: string; readonly truth?: readonly [number, number] }[];
}
const films: readonly KnownFilm[] = JSON.parse(readFileSync(join(root, "data/calibration/films.json"), "utf8"));

it("a click error is measured on twenty films, paused and gone on with, and every new sum carries it", async () => {
  const bench = await benchInBrowser({ who: "A. Resident" });
  const { page } = bench;
  failingShot(page, "calibration");
  await page.addInitScript(axe);
  const caseId = await newTrace(bench);
  const assumed = await courseOf(bench, caseId);
  expect(sigmaOf(assumed)).toBeCloseTo(0.05, 9);

  await page.goto("/");
  await page.getByRole("heading", { name: "Logbook" }).waitFor();
  await page.keyboard.press("c");
  await page.getByText("not measured yet").first().waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: /^Begin/ }).click();
  await page.locator("canvas.film-canvas").waitFor();
  const id = new URL(page.url()).pathname.split("/")[3] ?? "";
  const { steps } = await exercise(bench, id);
  const places = steps.flatMap((step) => step.places.map(({ kind }) => ({ step, kind })));
  expect(places).toHaveLength(120);

  await markByPointer(page, places.slice(0, 4), 0);
  await page.getByText("film 2 of 40", { exact: true }).waitFor();
  await isAccessible(page);
  await page.keyboard.press("q");
  await page.getByText("Paused after 4 of 120 marks").waitFor();
  await page.reload();
  await page.getByRole("button", { name: /^Go on/ }).waitFor();
  await page.keyboard.press("b");
  await isMarked(page, 4);
  await page.keyboard.press("Control+z");
  await isMarked(page, 3);
  await markByPointer(page, places.slice(3, 6), 3);

  await markByKeyboard(page, places.slice(6, 9), 6);
  await markByPointer(page, places.slice(9), 9);
  const { marks } = await exercise(bench, id);
  expect(marks.map(({ by }) => by === "keyboard").indexOf(true)).toBe(6);
  expect(marks.filter(({ by }) => by === "keyboard")).toHaveLength(3);
  await page.getByRole("heading", { name: "Every place is marked twice" }).waitFor();
  await page.keyboard.press("w");
  await page.getByText(/^So far a click of yours misses/).waitFor();
  await shot(page, "calibration-result");
  await isAccessible(page);

  const { finished } = await exercise(bench, id);
  const told = finished?.answer as { sigmaPx: number; intervals: Record<string, { low: number; high: number }> };
  expect(told.intervals.sigmaPx?.low).toBeLessThan(sigmaPx);
  expect(told.intervals.sigmaPx?.high).toBeGreaterThan(sigmaPx);
  await page.getByText(told.sigmaPx.toFixed(2)).first().waitFor();

  await page.keyboard.press("u");
  await page.getByText("In use:").waitFor();
  await page.goto("/settings");
  await page.getByText(/Your own, measured on .* \(120 clicks\)/).waitFor();
  await page.goto("/calibration");
  await page.getByRole("img", { name: /^Click error of 1 exercise\./ }).waitFor();
  await shot(page, "calibration-room");
  await isAccessible(page);

  const measured = await courseOf(bench, caseId);
  expect(sigmaOf(measured) / sigmaOf(assumed)).toBeCloseTo(told.sigmaPx, 3);
  expect(measured.inputPaths).toContainEqual({ input: "sigmaMm", record: `${id}/answer/sigmaPx` });
  expect(await bench.ledgerEntry(assumed.id)).toEqual(assumed);
  await page.goto(`/case/${caseId}`);
  await page
    .getByRole("button", { name: /largest bend/i })
    .first()
    .click();
  await shot(page, "calibration-ledger");
  await page
    .getByRole("link", { name: /your own, measured on .* \(120 clicks\)/ })
    .first()
    .waitFor();
  await bench.close();
});

/** Nothing keeps anybody out, in a wide window and in a narrow one that does not scroll sideways. */
async function isAccessible(page: Page): Promise<void> {
  for (const size of [
    { width: 900, height: 1200 },
    { width: 1440, height: 900 },
  ]) {
    await page.setViewportSize(size);
    expect(await violations(page), `at ${size.width}`).toEqual([]);
    const tooWide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
    expect(tooWide, "the page scrolls sideways").toBe(false);
  }
}

const exercise = async ({ page }: BenchInBrowser, id: string): Promise<ExerciseView> =>
  (await page.request.get(`/api/calibration/exercises/${id}`)).json();

type Place = { readonly step: ExerciseView["steps"][number]; readonly kind: string };

/**
 * Where a place is marked: its true place, or a stated one where it has none, with the error that is put in. The error
 * belongs to the place and the round, so that it is the same in whatever order the films come.
 */
function markOf({ step, kind }: Place): [number, number] {
  const index = films.findIndex(({ name }) => name === step.film);
  const places = films[index]?.places ?? [];
  const placeIndex = places.findIndex((place) => place.kind === kind);
  const [u, v] = places[placeIndex]?.truth ?? [120, step.rows / 2];
  const { normal } = seededRandom(noiseSeed + 6 * index + 2 * placeIndex + step.round);
  return [u + sigmaPx * normal(), v + sigmaPx * normal()];
}

const isMarked = (page: Page, count: number) =>
  count === 120
    ? page.getByRole("heading", { name: "Every place is marked twice" }).waitFor()
    : page.getByText(`${count} of 120 marks`, { exact: true }).waitFor();

/** The film that is asked now, with its pixels drawn and its own name. */
async function filmOf(page: Page, { step }: Place) {
  const film = page.getByRole("application", { name: new RegExp(`^${step.tooth}, `) });
  await film.locator("canvas.film-canvas").waitFor();
  return film;
}

async function markByPointer(page: Page, places: readonly Place[], before: number): Promise<void> {
  for (const [index, place] of places.entries()) {
    const { x, y } = await onDrawing(await filmOf(page, place), markOf(place));
    await page.mouse.click(x, y);
    await isMarked(page, before + index + 1);
  }
}

/** Marks the places of one film with arrows and Enter alone; the crosshair begins in the middle of the film. */
async function markByKeyboard(page: Page, places: readonly Place[], before: number): Promise<void> {
  const [first] = places;
  if (first === undefined) return;
  let [u, v] = [(first.step.columns - 1) / 2, (first.step.rows - 1) / 2];
  await (await filmOf(page, first)).focus();
  for (const [index, place] of places.entries()) {
    const [toU, toV] = markOf(place);
    u += await pressed(page, toU - u, place.step.mirrored ? ["ArrowLeft", "ArrowRight"] : ["ArrowRight", "ArrowLeft"]);
    v += await pressed(page, toV - v, ["ArrowDown", "ArrowUp"]);
    await page.keyboard.press("Enter");
    await isMarked(page, before + index + 1);
  }
}

/** Goes a way with arrow keys by steps of ten, one and a quarter; gives how far that is. */
async function pressed(page: Page, way: number, [ahead, back]: readonly [string, string]): Promise<number> {
  const key = way > 0 ? ahead : back;
  const quarters = Math.round(Math.abs(way) * 4);
  const steps = [
    ["Shift+", Math.floor(quarters / 40)],
    ["", Math.floor((quarters % 40) / 4)],
    ["Alt+", quarters % 4],
  ] as const;
  for (const [held, times] of steps) for (let time = 0; time < times; time += 1) await page.keyboard.press(held + key);
  return (Math.sign(way) * quarters) / 4;
}

/** A case with a film of known scale and a traced canal whose marks carry no error of their own. */
async function newTrace({ page }: BenchInBrowser): Promise<string> {
  const about = sampleParts().find(({ kind }) => kind === "case")?.body;
  const { caseId } = (await (await page.request.post("/api/cases", { data: { case: about } })).json()) as CaseView;
  const film = readFileSync(join(root, "data/calibration/films/film-01.png"));
  const address = `/api/cases/${caseId}/films?name=film.png&takenOn=2026-03-04&purpose=diagnostic`;
  const headers = { "content-type": "application/octet-stream" };
  const taken = (await (await page.request.post(address, { data: film, headers })).json()) as FilmImported;
  const known = {
    shape: "knownLength",
    film: taken.partId,
    object: "instrument",
    lengthMm: 20,
    from: [40, 60],
    to: [40, 460],
  };
  const points = Array.from({ length: 60 }, (_, at) => [150 + (at > 30 ? (at - 30) ** 2 / 40 : 0), 280 + 5 * at]);
  const trace = {
    shape: "trace",
    film: taken.partId,
    canal: "MB",
    polarity: "dark",
    anchors: [points[0], points.at(-1)],
  };
  const put = (id: string, body: object) => ({ op: "put", id, kind: "mark", baseRevision: 0, body });
  const operations = [put("mark-known", { ...known, sigmaPx: 0.01 }), put("mark-trace", { ...trace, points })];
  const recorded = await page.request.post(`/api/cases/${caseId}/gestures`, {
    data: { words: "A known length and a trace", operations },
  });
  expect(recorded.status(), await recorded.text()).toBe(200);
  return caseId;
}

async function courseOf(bench: BenchInBrowser, caseId: string): Promise<LedgerEntry> {
  const { ledger } = await bench.caseNow(caseId);
  const found = ledger.find(({ subject }) => subject === "curvature of mark-trace");
  if (found === undefined) throw new Error("the trace has no entry");
  return found;
}

const sigmaOf = ({ input }: LedgerEntry): number => Number(Reflect.get(Object(input), "sigmaMm"));

/** What the rules for accessible pages (WCAG 2.2 A and AA, and good practice) find wrong, a line each. */
const violations = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const { axe: rules } = window as unknown as { axe: typeof import("axe-core") };
    const found = await rules.run(document, { resultTypes: ["violations"] });
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
