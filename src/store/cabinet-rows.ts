import { Refusal } from "../core/refusal.ts";
import { type CabinetChange, cabinetInverse, cabinetPatchesOf } from "../record/cabinet/cabinet-change.ts";
import type { CabinetGesture } from "../record/cabinet/cabinet-gesture.ts";
import type { CabinetItem, CabinetKind } from "../record/cabinet/cabinet-item.ts";
import {
  advanceCabinet,
  type CabinetStanding,
  type CabinetStep,
  emptyCabinet,
  readCabinetBody,
  readCabinetPatch,
} from "../record/cabinet/cabinet-standing.ts";
import { countedFaults } from "../record/cabinet/counted-faults.ts";
import { undoStack } from "../record/undo-stack.ts";
import { fromJsonText, toJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import { inPortions } from "./in-portions.ts";
import type { CabinetState, Recording } from "./store.ts";
import type { CabinetChangeRow, CabinetItemRow } from "./tables.ts";

type Recorder = Pick<Recording, "who" | "at">;

/**
 * The cabinet as it stands; empty before its first change.
 * @throws Refusal `record.newerVersion`, `input.invalid`
 */
export async function readCabinet(db: Db): Promise<CabinetState> {
  return stateOf(await db.transaction().execute(readCabinetStanding));
}

/** The chain of the cabinet, first change first. */
export async function readCabinetChanges(db: Db): Promise<CabinetChange[]> {
  const rows = await db.selectFrom("cabinetChanges").selectAll().orderBy("sequence").execute();
  return rows.map(changeFromRow);
}

/** Whether a file that was counted may be taken out: it goes with the demo alone, whose cases go as well. */
interface AndCounted extends Recorder {
  readonly counted: "stays" | "goes";
}

/**
 * Records a gesture as the next change of the cabinet; one that changes nothing leaves no link.
 * @throws Refusal `input.invalid`, `input.impossible`, `record.conflict`
 */
export async function recordInCabinet(db: Db, gesture: CabinetGesture, recorder: AndCounted): Promise<CabinetState> {
  return db.transaction().execute(async (trx) => {
    const standing = await readCabinetStanding(trx);
    const patches = cabinetPatchesOf(gesture, standing.items);
    if (patches.length === 0) return stateOf(standing);
    if (recorder.counted === "stays") await checkCountedStays(trx, gesture, standing);
    return write(trx, standing, { ...recorderOf(recorder), words: gesture.words.trim(), patches });
  });
}

async function checkCountedStays(db: Db, gesture: CabinetGesture, { items }: CabinetStanding): Promise<void> {
  const rows = await db.selectFrom("fileUses").select("fileId").distinct().execute();
  const faults = countedFaults(gesture, items, new Set(rows.map(({ fileId }) => fileId)));
  if (faults.length > 0)
    throw new Refusal("input.impossible", `Cannot record "${gesture.words}": ${faults[0]?.says}`, {}, faults);
}

/** Which way, and the change that the person saw at the top of the history. */
interface Inverse {
  readonly what: "undo" | "redo";
  readonly seen?: number | undefined;
}

/**
 * Takes back the change at the top of the cabinet's history (undo), or the undo there (redo), as a new change.
 * @throws Refusal `record.nothingToUndo`; `record.conflict` where another change is at the top than the one seen
 */
export async function invertInCabinet(db: Db, { what, seen }: Inverse, recorder: Recorder): Promise<CabinetState> {
  return db.transaction().execute(async (trx) => {
    const changes = await readCabinetChanges(trx);
    const top = undoStack(changes, "goes")[what];
    const change = changes.find(({ sequence }) => sequence === top);
    if (change === undefined)
      throw new Refusal("record.nothingToUndo", `Cannot ${what}: there is nothing left to ${what}`);
    if (seen !== undefined && seen !== change.sequence)
      throw new Refusal(
        "record.conflict",
        `Cannot ${what} change ${seen}: the cabinet has changed in the meantime; look at it and ask again`,
        { seen, top: change.sequence, conflicts: [] },
      );
    const words = `${what === "undo" ? "Undo" : "Redo"}: ${change.words.replace(/^((Undo|Redo): )+/, "")}`;
    const patches = cabinetInverse(change.patches.map(readCabinetPatch));
    const step = { ...recorderOf(recorder), words, patches, inverts: change.sequence };
    return write(trx, await readCabinetStanding(trx), step);
  });
}

/**
 * Where the cabinet stands, by its rows.
 * @throws Refusal `record.newerVersion`, `input.invalid`
 */
export async function readCabinetStanding(db: Db): Promise<CabinetStanding> {
  const head = await db
    .selectFrom("cabinetChanges")
    .select(["sequence", "hash"])
    .orderBy("sequence", "desc")
    .limit(1)
    .executeTakeFirst();
  const rows = await db.selectFrom("cabinetItems").selectAll().orderBy("place").execute();
  return {
    sequence: head?.sequence ?? emptyCabinet.sequence,
    headHash: head?.hash ?? emptyCabinet.headHash,
    items: rows.flatMap((row) => itemFromRow(row) ?? []),
    revisions: new Map(rows.map(({ id, revision }) => [id, revision])),
  };
}

const stateOf = ({ sequence, headHash, items }: CabinetStanding): CabinetState => ({ sequence, headHash, items });

const recorderOf = ({ who, at }: Recorder): Recorder => ({ who, at });

async function write(db: Db, standing: CabinetStanding, step: CabinetStep): Promise<CabinetState> {
  const { change, standing: after } = advanceCabinet(standing, step);
  await db.insertInto("cabinetChanges").values(changeToRow(change)).execute();
  await writeItems(db, change, after);
  return stateOf(after);
}

/** An item keeps its place while it stands; a removed one keeps its row without a body, so that it goes on counting. */
async function writeItems(db: Db, { patches }: CabinetChange, { items, revisions }: CabinetStanding): Promise<void> {
  const ids = patches.map(({ id }) => id);
  const stood = await db.selectFrom("cabinetItems").select(["id", "place", "body"]).execute();
  const places = new Map(stood.flatMap(({ id, place, body }) => (body === null ? [] : [[id, place] as const])));
  let last = Math.max(0, ...stood.map(({ place }) => place));
  const rows = patches.map(({ id, kind, version, after }): CabinetItemRow => {
    const body = after === null ? null : toJsonText(after);
    return { id, place: places.get(id) ?? 0, kind, version, revision: revisions.get(id) ?? 0, body };
  });
  const order = new Map(items.map(({ id }, index) => [id, index]));
  rows.sort((a, b) => (order.get(a.id) ?? 0) - (order.get(b.id) ?? 0));
  for (const row of rows)
    if (!places.has(row.id)) {
      last += 1;
      row.place = last;
    }
  await inPortions(ids, (some) => db.deleteFrom("cabinetItems").where("id", "in", some).execute());
  await inPortions(rows, (some) => db.insertInto("cabinetItems").values(some).execute());
}

function itemFromRow({ id, kind: named, version, revision, body }: CabinetItemRow): CabinetItem | undefined {
  if (body === null) return undefined;
  const kind = named as CabinetKind;
  return { id, kind, revision, body: readCabinetBody({ id, kind, version, body: fromJsonText(body) }) } as CabinetItem;
}

function changeToRow({ who, words, patches, inverts, ...rest }: CabinetChange): CabinetChangeRow {
  const json = { who: toJsonText(who), words: toJsonText(words), patches: toJsonText(patches) };
  return { ...rest, ...json, inverts: inverts ?? null };
}

/** Its hash tells whether it is what was written. */
function changeFromRow({ who, words, patches, inverts, ...rest }: CabinetChangeRow): CabinetChange {
  return {
    ...rest,
    who: fromJsonText(who) as string,
    words: fromJsonText(words) as string,
    patches: fromJsonText(patches) as CabinetChange["patches"],
    ...(inverts === null ? {} : { inverts }),
  };
}
