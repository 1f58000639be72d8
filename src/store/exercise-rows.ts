import { faultsOf } from "../core/faults-of.ts";
import { Refusal } from "../core/refusal.ts";
import { type Exercise, exerciseSchema } from "../record/exercise.ts";
import { fromJsonText, sealOf, toJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";

/**
 * All exercises, newest first.
 * @throws Refusal `store.corrupt` when a row is not what was written
 */
export async function readExercises(db: Db): Promise<Exercise[]> {
  const rows = await db.selectFrom("exercises").select(["id", "row"]).orderBy("at", "desc").orderBy("id").execute();
  return rows.map(({ id, row }) => exerciseFromRow(id, row));
}

/**
 * One exercise.
 * @throws Refusal `record.notFound`, `store.corrupt`
 */
export async function readExercise(db: Db, id: string): Promise<Exercise> {
  const found = await db.selectFrom("exercises").select("row").where("id", "=", id).executeTakeFirst();
  if (found === undefined)
    throw new Refusal("record.notFound", `Cannot open exercise ${id}: there is no such exercise`, { id });
  return exerciseFromRow(id, found.row);
}

/**
 * Keeps a new exercise.
 * @throws Refusal `record.conflict` where one is under way or the id is taken, `input.invalid`
 */
export async function beginExercise(db: Db, exercise: Exercise): Promise<Exercise> {
  return db.transaction().execute(async (trx) => {
    const others = await readExercises(trx);
    const underWay = others.find(({ kind, finished }) => kind === exercise.kind && finished === undefined);
    if (underWay !== undefined || others.some(({ id }) => id === exercise.id))
      throw new Refusal("record.conflict", "Cannot begin: an exercise is under way; go on with it, or remove it first");
    const row = rowOf(exercise);
    await trx.insertInto("exercises").values(row).execute();
    return exercise;
  });
}

/**
 * Changes an exercise that is under way; what it is changed to is worked out from how it stands, in one transaction.
 * @throws Refusal `record.notFound`, `record.conflict` for one that is finished, `input.invalid`, and what `change` throws
 */
export async function changeExercise(db: Db, id: string, change: (stood: Exercise) => Exercise): Promise<Exercise> {
  return db.transaction().execute(async (trx) => {
    const next = change(await unfinished(trx, id));
    await trx.updateTable("exercises").set(rowOf(next)).where("id", "=", id).execute();
    return next;
  });
}

/**
 * Takes away an exercise that is under way.
 * @throws Refusal `record.notFound`, `record.conflict` for one that is finished
 */
export async function removeExercise(db: Db, id: string): Promise<void> {
  await db.transaction().execute(async (trx) => {
    await unfinished(trx, id);
    await trx.deleteFrom("exercises").where("id", "=", id).execute();
  });
}

async function unfinished(db: Db, id: string): Promise<Exercise> {
  const exercise = await readExercise(db, id);
  if (exercise.finished === undefined) return exercise;
  throw new Refusal("record.conflict", `Cannot change exercise ${id}: it is finished and stays as it is`, { id });
}

function rowOf(exercise: Exercise) {
  const parsed = exerciseSchema.safeParse(exercise);
  if (!parsed.success)
    throw new Refusal("input.invalid", "Cannot keep the exercise: it has faults", {}, faultsOf(parsed.error, exercise));
  const row = { id: exercise.id, at: exercise.begunAt, row: toJsonText(parsed.data) };
  return { ...row, seal: sealOf(row) };
}

function exerciseFromRow(id: string, row: string): Exercise {
  const parsed = exerciseSchema.safeParse(readJson(row));
  if (parsed.success && parsed.data.id === id) return parsed.data;
  throw new Refusal("store.corrupt", `Cannot read exercise ${id}: its row has changed on disk; restore a backup`, {
    id,
  });
}

function readJson(text: string): unknown {
  try {
    return fromJsonText(text);
  } catch {
    return undefined;
  }
}
