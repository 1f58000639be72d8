import { Refusal } from "../core/refusal.ts";
import { replay } from "../record/standing.ts";
import { invertInCabinet, readCabinet, readCabinetChanges, recordInCabinet } from "./cabinet-rows.ts";
import { filmsNamedBy, readChanges, readStanding } from "./case-rows.ts";
import { factsFromRow, fromJsonText } from "./column-codecs.ts";
import type { Db, OpenDatabase } from "./dialect.ts";
import { keepDocument, readDocument, readDocuments } from "./document-rows.ts";
import { readDue } from "./due-rows.ts";
import { beginExercise, changeExercise, readExercise, readExercises, removeExercise } from "./exercise-rows.ts";
import { readEntriesOfFileUsers, readFileUses } from "./file-use-rows.ts";
import { keepFilm, readFilm } from "./film-rows.ts";
import { inTurn } from "./in-turn.ts";
import { KnownEntries, readAllEntries, readLedger, readLedgerEntry } from "./ledger-rows.ts";
import { chainOf, planCaseFile } from "./load-case-file.ts";
import type { HomeLock } from "./lock.ts";
import { type Plan, planGesture, planInverse, planNewCase, stateOf } from "./record-change.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";
import { removeCaseRows } from "./remove-case.ts";
import {
  noteLedgerSums,
  noteLedgersFollow,
  readLedgerSums,
  readLedgersBehind,
  readSettings,
  writeSettings,
} from "./settings-row.ts";
import type { CaseState, Store, Tombstone } from "./store.ts";
import { finishFiles } from "./unfinished-files.ts";
import { removeUnusedFilms, unusedFilms } from "./unused-films.ts";
import { verify } from "./verify.ts";
import { writerOn } from "./write-case.ts";

/** The store on an open database and the files of its home. */
export function storeOn(database: OpenDatabase, home: string, lock: HomeLock | undefined): Store {
  const { db } = database;
  const known = new KnownEntries();
  const { write, ended } = writerOn(db, known);
  // Files and rows are brought together one after the other: a film can't be kept while a removal takes it away.
  const filesInTurn = inTurn();
  const store: Store = {
    settings: () => readSettings(db),
    writeSettings: (settings) => writeSettings(db, settings),
    ledgersBehind: () => readLedgersBehind(db),
    noteLedgersFollow: (behind) => noteLedgersFollow(db, behind),
    ledgerSums: () => readLedgerSums(db),
    noteLedgerSums: (done) => noteLedgerSums(db, done),
    exercises: () => readExercises(db),
    exercise: (id) => readExercise(db, id),
    beginExercise: (exercise) => beginExercise(db, exercise),
    changeExercise: (id, change) => changeExercise(db, id, change),
    removeExercise: (id) => removeExercise(db, id),
    cabinet: () => readCabinet(db),
    cabinetChanges: () => readCabinetChanges(db),
    recordInCabinet: (gesture, recorder, counted = "stays") => recordInCabinet(db, gesture, { ...recorder, counted }),
    undoInCabinet: (recorder, seen) => invertInCabinet(db, { what: "undo", seen }, recorder),
    redoInCabinet: (recorder, seen) => invertInCabinet(db, { what: "redo", seen }, recorder),
    fileUses: () => readFileUses(db),
    entriesOfFileUsers: (topic) => readEntriesOfFileUsers(db, topic),
    due: (asked) => readDue(db, asked),
    cases: () => readCases(db),
    readCase: async (caseId) => stateOf(await db.transaction().execute((trx) => readStanding(trx, caseId))),
    readCaseAt: (caseId, sequence) => readCaseAt(db, caseId, sequence),
    changes: (caseId) => existingChanges(db, caseId),
    createCase: (caseId, gesture, recording) =>
      write(caseId, planNewCase(caseId, gesture, recording), recording.deriveLedger),
    record: (caseId, gesture, recording) =>
      write(caseId, planGesture(caseId, gesture, recording), recording.deriveLedger),
    undo: (caseId, recording, seen) =>
      write(caseId, planInverse(caseId, { what: "undo", seen }, recording), recording.deriveLedger),
    redo: (caseId, recording, seen) =>
      write(caseId, planInverse(caseId, { what: "redo", seen }, recording), recording.deriveLedger),
    loadCaseFile: async (file, films, deriveLedger) => {
      const chain = chainOf(file);
      const bytes = filmsNamedBy(chain.changes).flatMap((hash) => films.get(hash) ?? []);
      for (const film of bytes) await store.keepFilm(film);
      return write(file.caseId, planCaseFile(chain), deriveLedger);
    },
    removeCase: (caseId, recording) =>
      filesInTurn(async () => {
        const { tombstone, files } = await db.transaction().execute((trx) => removeCaseRows(trx, caseId, recording));
        known.forget(caseId);
        await finishFiles(db, home, files);
        return tombstone;
      }),
    tombstones: () => readTombstones(db),
    ledger: (caseId) => readLedger(db, caseId),
    keptLedger: async (caseId) => [...(await readAllEntries(db, caseId)).values()],
    ledgerEntry: (id) => readLedgerEntry(db, id),
    refreshLedger: async (caseId, deriveLedger) => {
      const asItStands: Plan = async (trx) => ({ changes: [], after: await readStanding(trx, caseId) });
      await write(caseId, asItStands, deriveLedger);
    },
    keepFilm: (bytes) => filesInTurn(() => keepFilm(db, home, bytes)),
    readFilm: (hash) => readFilm(db, home, hash),
    unusedFilms: () => unusedFilms(db),
    removeUnusedFilms: () =>
      filesInTurn(async () => {
        if (lock === undefined) throw besideRefusal(home);
        return removeUnusedFilms(db, home);
      }),
    keepDocument: (row, bytes) => filesInTurn(() => keepDocument(db, home, row, bytes)),
    documents: (caseId) => readDocuments(db, caseId),
    readDocument: (id) => readDocument(db, home, id),
    verify: (progress) => verify(database, home, progress),
    close: async () => {
      try {
        await ended();
        await database.close();
      } finally {
        lock?.release();
      }
    },
  };
  return refusing(store, home);
}

/** The same store, whose failures of disk and database are refusals. */
function refusing(store: Store, home: string): Store {
  return new Proxy(store, {
    get: (target, name) => {
      const method: unknown = Reflect.get(target, name);
      if (typeof method !== "function") return method;
      return async (...given: unknown[]) => {
        try {
          return await method.apply(target, given);
        } catch (error) {
          throw refusalOfDisk(error, home);
        }
      };
    },
  });
}

const besideRefusal = (home: string): Refusal =>
  new Refusal(
    "server.alreadyRunning",
    `Cannot remove unused films from ${home}: it was opened beside another program, which may be taking one in; close that first`,
  );

async function readCases(db: Db) {
  const rows = await db.selectFrom("caseFacts").selectAll().orderBy("lastOn", "desc").orderBy("caseId").execute();
  return rows.map(factsFromRow);
}

async function readCaseAt(db: Db, caseId: string, sequence: number): Promise<CaseState> {
  const changes = await existingChanges(db, caseId, sequence);
  if (changes.at(-1)?.sequence === sequence) return stateOf(replay(caseId, changes));
  throw new Refusal("record.notFound", `Cannot open case ${caseId} at change ${sequence}: it has no such change`, {
    caseId,
    sequence,
  });
}

async function existingChanges(db: Db, caseId: string, upTo?: number) {
  const changes = await readChanges(db, caseId, upTo);
  if (changes.length > 0) return changes;
  throw new Refusal("record.notFound", `Cannot open case ${caseId}: there is no such case or change`, { caseId });
}

async function readTombstones(db: Db): Promise<Tombstone[]> {
  const rows = await db.selectFrom("tombstones").selectAll().orderBy("at").orderBy("caseId").execute();
  return rows.map(({ caseId, headHash, at, who }) => ({ caseId, headHash, at, who: fromJsonText(who) as string }));
}
