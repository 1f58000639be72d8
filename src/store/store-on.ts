import { Refusal } from "../core/refusal.ts";
import { replay } from "../record/standing.ts";
import { filmsNamedBy, readChanges, readStanding } from "./case-rows.ts";
import { factsFromRow, fromJsonText } from "./column-codecs.ts";
import type { Db, OpenDatabase } from "./dialect.ts";
import { keepDocument, readDocument, readDocuments } from "./document-rows.ts";
import { beginExercise, changeExercise, readExercise, readExercises, removeExercise } from "./exercise-rows.ts";
import { keepFilm, readFilm } from "./film-rows.ts";
import { inTurn } from "./in-turn.ts";
import { KnownEntries, readAllEntries, readLedger, readLedgerEntry, writeLedger } from "./ledger-rows.ts";
import { chainOf, writeCaseFile } from "./load-case-file.ts";
import type { HomeLock } from "./lock.ts";
import { stateOf, type Writing, writeGesture, writeInverse, writeNewCase } from "./record-change.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";
import { removeCaseRows } from "./remove-case.ts";
import { readSettings, writeSettings } from "./settings-row.ts";
import type { CaseState, Store, Tombstone } from "./store.ts";
import { finishFiles } from "./unfinished-files.ts";
import { removeUnusedFilms, unusedFilms } from "./unused-films.ts";
import { verify } from "./verify.ts";

/** The store on an open database and the files of its home. */
export function storeOn(database: OpenDatabase, home: string, lock: HomeLock | undefined): Store {
  const { db } = database;
  const known = new KnownEntries();
  const written = writerOf(db, known);
  // Files and rows are brought together one after the other: a film can't be kept while a removal takes it away.
  const filesInTurn = inTurn();
  const store: Store = {
    settings: () => readSettings(db),
    writeSettings: (settings) => writeSettings(db, settings),
    exercises: () => readExercises(db),
    exercise: (id) => readExercise(db, id),
    beginExercise: (exercise) => beginExercise(db, exercise),
    changeExercise: (id, change) => changeExercise(db, id, change),
    removeExercise: (id) => removeExercise(db, id),
    cases: () => readCases(db),
    readCase: async (caseId) => stateOf(await db.transaction().execute((trx) => readStanding(trx, caseId))),
    readCaseAt: (caseId, sequence) => readCaseAt(db, caseId, sequence),
    changes: (caseId) => existingChanges(db, caseId),
    createCase: (caseId, gesture, recording) =>
      written(caseId, (writing) => writeNewCase(writing, caseId, gesture, recording)),
    record: (caseId, gesture, recording) =>
      written(caseId, (writing) => writeGesture(writing, caseId, gesture, recording)),
    undo: (caseId, recording, seen) =>
      written(caseId, (writing) => writeInverse(writing, caseId, { what: "undo", seen }, recording)),
    redo: (caseId, recording, seen) =>
      written(caseId, (writing) => writeInverse(writing, caseId, { what: "redo", seen }, recording)),
    loadCaseFile: async (file, films, deriveLedger) => {
      const chain = chainOf(file);
      const bytes = filmsNamedBy(chain.changes).flatMap((hash) => films.get(hash) ?? []);
      for (const film of bytes) await store.keepFilm(film);
      return written(file.caseId, (writing) => writeCaseFile(writing, chain, deriveLedger));
    },
    removeCase: (caseId, recording) =>
      filesInTurn(async () => {
        const { tombstone, files } = await written(caseId, ({ db: trx }) => removeCaseRows(trx, caseId, recording));
        known.forget(caseId);
        await finishFiles(db, home, files);
        return tombstone;
      }),
    tombstones: () => readTombstones(db),
    ledger: (caseId) => readLedger(db, caseId),
    keptLedger: async (caseId) => [...(await readAllEntries(db, caseId)).values()],
    ledgerEntry: (id) => readLedgerEntry(db, id),
    refreshLedger: (caseId, deriveLedger) =>
      written(caseId, async (writing) => {
        const state = stateOf(await readStanding(writing.db, caseId));
        await writeLedger(writing.db, state, deriveLedger, await known.of(writing.db, caseId));
      }),
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
        await database.close();
      } finally {
        lock?.release();
      }
    },
  };
  return refusing(store, home);
}

/** Work in one transaction; what it taught about the ledger is forgotten when it fails. */
function writerOf(db: Db, known: KnownEntries) {
  return async <Given>(caseId: string, work: (writing: Writing) => Promise<Given>): Promise<Given> => {
    try {
      return await db.transaction().execute((trx) => work({ db: trx, known }));
    } catch (error) {
      known.forget(caseId);
      throw error;
    }
  };
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
