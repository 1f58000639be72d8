import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { expect, test } from "vitest";
import { temporaryFolder } from "../../test/samples/home.ts";
import type { Exercise, ExerciseMark } from "../record/exercise.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";

const exercise = (number: number): Exercise => ({
  ...{ id: `exercise-${number}a`, kind: "clicks", who: "A. Writer", seed: number, marks: [], films: "0".repeat(64) },
  begunAt: `2026-03-0${number}T09:30:00Z`,
});
const mark: ExerciseMark = {
  ...{ film: "film-07", kind: "apex", round: 1, mirrored: false, at: [98.25, 580.5], by: "pointer", zoom: 1.2 },
  markedAt: "2026-03-01T09:31:00Z",
};
const finished = { at: "2026-03-01T10:00:00Z", topicVersion: 1, answer: { sigmaPx: 0.8 } };
const finish = (stood: Exercise): Exercise => ({ ...stood, finished });

test("an exercise is kept mark by mark, and read again after a new start", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  expect(await store.exercises()).toEqual([]);
  await store.beginExercise(exercise(1));
  await store.changeExercise("exercise-1a", (stood) => ({ ...stood, marks: [...stood.marks, mark] }));
  await store.close();
  const { store: again } = await openStore(home);
  expect(await again.exercise("exercise-1a")).toEqual({ ...exercise(1), marks: [mark] });
  expect(await again.verify()).toEqual([]);
  await again.close();
});

test("one is under way at a time; the newest stands first", async () => {
  const { store } = await openStore(temporaryFolder());
  await store.beginExercise(exercise(1));
  await expect(store.beginExercise(exercise(2))).rejects.toMatchObject({ code: "record.conflict" });
  await store.changeExercise("exercise-1a", finish);
  await expect(store.beginExercise(exercise(1))).rejects.toMatchObject({ code: "record.conflict" });
  await store.beginExercise(exercise(2));
  expect((await store.exercises()).map(({ id }) => id)).toEqual(["exercise-2a", "exercise-1a"]);
  await store.close();
});

test("a finished one is neither changed nor removed; one under way can go", async () => {
  const { store } = await openStore(temporaryFolder());
  await store.beginExercise(exercise(1));
  await store.changeExercise("exercise-1a", finish);
  await expect(store.changeExercise("exercise-1a", finish)).rejects.toMatchObject({ code: "record.conflict" });
  await expect(store.removeExercise("exercise-1a")).rejects.toMatchObject({ code: "record.conflict" });
  await store.beginExercise(exercise(2));
  await store.removeExercise("exercise-2a");
  await expect(store.exercise("exercise-2a")).rejects.toMatchObject({ code: "record.notFound" });
  await expect(store.removeExercise("exercise-2a")).rejects.toMatchObject({ code: "record.notFound" });
  expect((await store.exercises()).map(({ id }) => id)).toEqual(["exercise-1a"]);
  await store.close();
});

test("what does not fit is not kept, and a change that throws leaves all as it was", async () => {
  const { store } = await openStore(temporaryFolder());
  const wrong = { ...exercise(1), seed: -1 };
  await expect(store.beginExercise(wrong)).rejects.toMatchObject({ code: "input.invalid", faults: [{ path: "seed" }] });
  await store.beginExercise(exercise(1));
  const badMark = (stood: Exercise): Exercise => ({ ...stood, marks: [{ ...mark, zoom: 0 }] });
  await expect(store.changeExercise("exercise-1a", badMark)).rejects.toMatchObject({
    faults: [{ path: "marks[0].zoom" }],
  });
  const throws = () => {
    throw new RangeError("a fault of the caller");
  };
  await expect(store.changeExercise("exercise-1a", throws)).rejects.toThrow("a fault of the caller");
  expect(await store.exercise("exercise-1a")).toEqual(exercise(1));
  await store.close();
});

test.each(["{", '{"id":"exercise-2a"}', "null"])("a row that holds %s is refused as changed on disk", async (text) => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await store.beginExercise(exercise(1));
  await store.close();
  const database = new Database(databaseFile(home));
  database.exec(`UPDATE exercises SET row = '${text}'`);
  database.close();
  const { store: again } = await openStore(home);
  await expect(again.exercises()).rejects.toMatchObject({ code: "store.corrupt" });
  expect((await again.verify()).map(({ what, where }) => [what, where])).toEqual([["exercise", "exercise-1a"]]);
  await again.close();
});

test("a record of version 1 gets the table, keeps a copy from before, and takes an exercise", async () => {
  const home = temporaryFolder();
  writeFileSync(
    databaseFile(home),
    readFileSync(join(import.meta.dirname, "../../test/old-files/record-version-1.sqlite")),
  );
  const { store, migratedCopy } = await openStore(home);
  expect(migratedCopy).toContain("canalog-before-version-4-was-1");
  await store.beginExercise(exercise(1));
  expect((await store.exercises()).map(({ id }) => id)).toEqual(["exercise-1a"]);
  expect((await store.cases()).length).toBeGreaterThan(0);
  await store.close();
});
