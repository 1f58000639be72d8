import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { sampleParts } from "../../test/sample-case.ts";
import type { Part } from "../record/parts.ts";
import { firstSettings, type Settings } from "../record/settings.ts";
import type { CalibrationView, CaseView, ExerciseView, Job, RefusalView } from "./api.ts";
import { calibrationFilmsIn } from "./calibration-films.ts";

let one: SampleBench;
beforeAll(async () => {
  one = await sampleBench();
  await one.bench.store.writeSettings({ ...firstSettings, who: "A. Resident" });
});
afterAll(() => one.close());

const base = "/api/calibration/exercises";
const post = (url: string, payload: object = {}) => one.ask({ method: "POST", url, payload });
const room = async () => (await one.ask({ url: "/api/calibration" })).json<CalibrationView>();
const settings = async () => (await one.ask({ url: "/api/settings" })).json<Settings>();
const refused = async (reply: ReturnType<typeof post>): Promise<[number, string]> => {
  const { statusCode, json } = await reply;
  return [statusCode, json<RefusalView>().code];
};
const mark = (number: number, at: readonly [number, number] = [100, 100], more: object = {}) => ({
  ...{ number, at, by: "pointer", zoom: 1.2 },
  ...more,
});

/** Begins an exercise and marks it whole: at the true places, the second time 0.6 px to either side in turn. */
async function wholeExercise(astray = false): Promise<ExerciseView> {
  const begun = (await post(base)).json<ExerciseView>();
  const films = new Map((await calibrationFilmsIn(".").list()).films.map((film) => [film.name, film]));
  let number = 0;
  for (const { film, round, places } of begun.steps)
    for (const { kind } of places) {
      const [u, v] = films.get(film)?.places.find((place) => place.kind === kind)?.truth ?? [200, 300];
      const off = round === 1 ? 0 : number % 2 === 0 ? 0.6 : -0.6;
      const far = astray && number === 119 ? 90 : 0;
      await post(`${base}/${begun.id}/marks`, mark(number, [u + off, Math.max(0, v + off - far)]));
      number += 1;
    }
  return begun;
}

async function done(job: Job): Promise<Job> {
  for (let tries = 0; tries < 200; tries += 1) {
    const now = (await one.ask({ url: `/api/jobs/${job.id}` })).json<Job>();
    if (now.state !== "running") return now;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error("the job does not end");
}

describe("an exercise", () => {
  it("is not there at first; the click error is assumed", async () => {
    expect(await room()).toEqual({ films: 20, marks: 120, clickSigma: { px: 1 }, exercises: [] });
  });

  it("begins with forty showings of twenty films, never tells the true places, and is one at a time", async () => {
    const reply = await post(base);
    const begun = reply.json<ExerciseView>();
    expect(begun).toMatchObject({ kind: "clicks", who: "A. Resident", marks: [] });
    expect(begun.steps).toHaveLength(40);
    expect(new Set(begun.steps.map(({ film }) => film)).size).toBe(20);
    expect(reply.body).not.toContain("truth");
    expect(await refused(post(base))).toEqual([409, "record.conflict"]);
  });

  it("takes a mark at a time, tells what is marked, takes back the last, and goes on where it was left", async () => {
    const [{ id = "" } = {}] = (await room()).exercises;
    await post(`${base}/${id}/marks`, mark(0));
    const second = (await post(`${base}/${id}/marks`, mark(1, [20.25, 30.5], { by: "keyboard" }))).json<ExerciseView>();
    expect(second.marks).toEqual([
      { at: [100, 100], by: "pointer" },
      { at: [20.25, 30.5], by: "keyboard" },
    ]);
    expect((await post(`${base}/${id}/take-back`, { number: 1 })).json<ExerciseView>().marks).toHaveLength(1);
    expect((await one.ask({ url: `${base}/${id}` })).json<ExerciseView>().marks).toHaveLength(1);
    expect((await room()).exercises).toEqual([expect.objectContaining({ id, marked: 1 })]);
    const [stored] = (await one.bench.store.exercise(id)).marks;
    expect(stored).toMatchObject({ round: 1, mirrored: false, kind: "apex", zoom: 1.2 });
  });

  it("refuses a mark out of turn, one outside the film, a body with a fault, and to be finished too early", async () => {
    const [{ id = "" } = {}] = (await room()).exercises;
    const marks = `${base}/${id}/marks`;
    expect(await refused(post(marks, mark(0)))).toEqual([409, "record.conflict"]);
    expect(await refused(post(marks, mark(2)))).toEqual([409, "record.conflict"]);
    expect(await refused(post(marks, mark(1, [-0.1, 5])))).toEqual([422, "input.impossible"]);
    expect(await refused(post(marks, mark(1, [5, 9_999])))).toEqual([422, "input.impossible"]);
    for (const wrong of [
      { zoom: 0 },
      { by: "foot" },
      { at: [1] },
      { number: -1 },
      { number: 1.5 },
      { film: "film-01" },
    ])
      expect(await refused(post(marks, mark(1, [1, 1], wrong)))).toEqual([400, "input.invalid"]);
    expect(await refused(post(`${base}/${id}/take-back`, { number: 4 }))).toEqual([409, "record.conflict"]);
    expect(await refused(post(`${base}/${id}/finish`))).toEqual([422, "input.impossible"]);
    expect(await refused(post(`${base}/${id}/use`, { which: "all" }))).toEqual([422, "input.impossible"]);
    expect(await refused(post(`${base}/${id}/use`, { which: "best" }))).toEqual([400, "input.invalid"]);
    expect((await one.bench.store.exercise(id)).marks).toHaveLength(1);
  });

  it("can't go on when the program ships other films by now, and can be removed then", async () => {
    const [{ id = "" } = {}] = (await room()).exercises;
    const { films } = await one.bench.store.changeExercise(id, (stood) => ({ ...stood, films: "0".repeat(64) }));
    expect(films).toBe("0".repeat(64));
    expect(await refused(one.ask({ url: `${base}/${id}` }))).toEqual([422, "input.impossible"]);
    expect(await refused(post(`${base}/${id}/marks`, mark(1)))).toEqual([422, "input.impossible"]);
    expect(await refused(post(`${base}/${id}/finish`))).toEqual([422, "input.impossible"]);
    expect((await room()).exercises).toHaveLength(1);
  });

  it("can be removed while it is under way; one that is not there is not found", async () => {
    const [{ id = "" } = {}] = (await room()).exercises;
    const left = await one.ask({ method: "DELETE", url: `${base}/${id}` });
    expect(left.json<CalibrationView>().exercises).toEqual([]);
    expect(await refused(one.ask({ url: `${base}/${id}` }))).toEqual([404, "record.notFound"]);
    expect(await refused(post(`${base}/exercise-none/marks`, mark(0)))).toEqual([404, "record.notFound"]);
    expect(await refused(one.ask({ url: `${base}/..%2fsettings` }))).toEqual([400, "input.invalid"]);
    expect(await refused(post(`${base}/exercise-none/take-back`, { number: 0 }))).toEqual([404, "record.notFound"]);
  });
});

describe("a finished exercise", () => {
  it("keeps its answer and is changed no more", async () => {
    const { id } = await wholeExercise();
    expect(await refused(post(`${base}/${id}/marks`, mark(120)))).toEqual([409, "record.conflict"]);
    const finished = (await post(`${base}/${id}/finish`)).json<ExerciseView>();
    expect(finished.finished).toMatchObject({ topicVersion: 1, answer: { n: 60, clicks: 120 } });
    // Every difference is 0.6 px in both directions: 0.6 / sqrt 2.
    expect(finished.finished?.answer.sigmaPx).toBeCloseTo(0.6 / Math.SQRT2, 9);
    for (const again of [`${base}/${id}/finish`, `${base}/${id}/take-back`])
      expect(await refused(post(again, { number: 119 }))).toEqual([409, "record.conflict"]);
    expect(await refused(one.ask({ method: "DELETE", url: `${base}/${id}` }))).toEqual([409, "record.conflict"]);
    expect((await one.bench.store.verify()).map(({ says }) => says)).toEqual([]);
  });

  it("is used with one press: settings and the ledgers of cases follow, old entries stay", async () => {
    const bare = sampleParts().map((part) => withoutOwnSigma(part));
    const about = bare.find(({ kind }) => kind === "case");
    const { caseId } = (await post("/api/cases", { case: about?.body })).json<CaseView>();
    await one.bench.store.record(
      caseId,
      { words: "All of the sample", operations: await puts(bare) },
      { who: "A. Resident", at: one.bench.now(), deriveLedger: one.bench.deriveLedger() },
    );
    const before = (await one.bench.store.ledger(caseId)).find(({ subject }) => subject === "curvature of trace-1");
    const [{ id = "" } = {}] = (await room()).exercises;
    expect(await done((await post(`${base}/${id}/use`, { which: "all" })).json<Job>())).toMatchObject({
      state: "done",
    });
    const from = { exerciseId: id, at: expect.any(String), n: 120 };
    expect(await settings()).toMatchObject({ clickSigmaPx: 0.424, clickSigmaFrom: from });
    expect((await room()).clickSigma).toMatchObject({ px: expect.closeTo(0.424, 3), from });
    const after = (await one.bench.store.ledger(caseId)).find(({ subject }) => subject === "curvature of trace-1");
    expect(after?.id).not.toBe(before?.id);
    expect(after?.inputPaths).toContainEqual({ input: "sigmaMm", record: `${id}/answer/sigmaPx` });
    expect(await one.bench.store.ledgerEntry(before?.id ?? "")).toEqual(before);
  });

  it("stays the origin while other settings change, and goes when another error is written by hand", async () => {
    const put = (payload: object) => one.ask({ method: "PUT", url: "/api/settings", payload });
    const measured = await settings();
    expect((await put({ ...measured, notation: "universal" })).json<Settings>().clickSigmaFrom).toBeDefined();
    const wished = { ...measured, clickSigmaPx: 0.3 };
    expect((await put(wished)).json<Settings>()).not.toHaveProperty("clickSigmaFrom");
    expect((await put({ ...wished, clickSigmaFrom: measured.clickSigmaFrom })).json()).not.toHaveProperty(
      "clickSigmaFrom",
    );
  });

  it("offers its error without a pair that is out of line, and refuses that where there is none", async () => {
    const [{ id: even = "" } = {}] = (await room()).exercises;
    expect(await refused(post(`${base}/${even}/use`, { which: "without" }))).toEqual([422, "input.impossible"]);
    const { id } = await wholeExercise(true);
    const { finished } = (await post(`${base}/${id}/finish`)).json<ExerciseView>();
    expect(finished?.answer.outliers).toHaveLength(1);
    await done((await post(`${base}/${id}/use`, { which: "without" })).json<Job>());
    expect(await settings()).toMatchObject({ clickSigmaPx: expect.closeTo(0.424, 3), clickSigmaFrom: { n: 118 } });
  });
});

/** The mark's own error is taken off, so that the settings' error counts. */
function withoutOwnSigma(part: Part): Part {
  if (part.kind !== "mark" || part.body.shape !== "trace") return part;
  const { sigmaPx: _own, ...body } = part.body;
  return { ...part, body };
}

/** The sample's film and its trace, put into a case; the film's picture is a shipped one. */
async function puts(parts: readonly Part[]) {
  const picture = await calibrationFilmsIn(".").picture("film-01");
  const hash = await one.bench.store.keepFilm(picture);
  return parts
    .filter(({ kind }) => kind === "film" || kind === "mark")
    .map(({ id, kind, body }) => ({
      ...{ op: "put" as const, id, kind, baseRevision: 0 },
      body: kind === "film" ? { ...body, hash } : body,
    }));
}

describe("the films", () => {
  it("are PNG files by their names, and nothing else of the disk", async () => {
    const film = await one.ask({ url: "/api/calibration/films/film-20" });
    expect([film.statusCode, film.headers["content-type"]]).toEqual([200, "image/png"]);
    expect(film.rawPayload.subarray(1, 4).toString()).toBe("PNG");
    expect(await refused(one.ask({ url: "/api/calibration/films/film-21" }))).toEqual([404, "record.notFound"]);
    expect(await refused(one.ask({ url: "/api/calibration/films/..%2ffilms.json" }))).toEqual([400, "input.invalid"]);
  });
});
