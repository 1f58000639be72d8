import { Refusal } from "../core/refusal.ts";
import { canonicalJson } from "../record/canonical-json.ts";
import { dueOf } from "../record/due.ts";
import { factsOf } from "../record/facts.ts";
import { fileUsesOf } from "../record/file-uses.ts";
import { replay, type Standing } from "../record/standing.ts";
import { filmsNamedBy, readChanges } from "./case-rows.ts";
import { factsFromRow, ledgerFromRow, partFromRow, sealOf } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import { dueToRow } from "./due-rows.ts";
import { fileUseToRow } from "./file-use-rows.ts";
import type { StoreFault } from "./store.ts";

/** What is wrong with one case: its chain, what stands against the chain, its facts, its films and its ledger. */
export async function verifyCase(db: Db, caseId: string): Promise<StoreFault[]> {
  return db
    .transaction()
    .execute(async (trx) => [...(await chainFaults(trx, caseId)), ...(await ledgerFaults(trx, caseId))]);
}

async function chainFaults(db: Db, caseId: string): Promise<StoreFault[]> {
  const fault = faultOf(caseId);
  try {
    const changes = await readChanges(db, caseId);
    if (changes.length === 0) return [fault("chain", "rows stand without a chain")];
    const standing = replay(caseId, changes);
    return [
      ...(await stateFaults(db, standing)),
      ...(await revisionFaults(db, standing)),
      ...(await factsFaults(db, standing)),
      ...(await fileUseFaults(db, standing)),
      ...(await dueFaults(db, standing)),
      ...(await filmUseFaults(db, caseId, filmsNamedBy(changes))),
    ];
  } catch (error) {
    return [fault("chain", saysOf(error))];
  }
}

async function stateFaults(db: Db, { caseId, parts }: Standing): Promise<StoreFault[]> {
  const rows = await db.selectFrom("parts").selectAll().where("caseId", "=", caseId).orderBy("place").execute();
  const stored = rows.map((row) => tryText(() => partFromRow(row)));
  const replayed = parts.map((part) => canonicalJson(part));
  if (stored.length === replayed.length && stored.every((text, index) => text === replayed[index])) return [];
  const differ = parts.filter((_, index) => stored[index] !== replayed[index]).map(({ id }) => id);
  return [faultOf(caseId)("state", `what stands differs from its chain: ${differ.join(", ") || "a part too many"}`)];
}

async function revisionFaults(db: Db, { caseId, revisions }: Standing): Promise<StoreFault[]> {
  const rows = await db.selectFrom("partRevisions").select(["id", "revision"]).where("caseId", "=", caseId).execute();
  const same = rows.length === revisions.size && rows.every(({ id, revision }) => revisions.get(id) === revision);
  return same ? [] : [faultOf(caseId)("state", "the counts of its parts' changes differ from its chain")];
}

async function factsFaults(db: Db, { caseId, parts }: Standing): Promise<StoreFault[]> {
  const row = await db.selectFrom("caseFacts").selectAll().where("caseId", "=", caseId).executeTakeFirst();
  const stored = row === undefined ? "null" : canonicalJson(factsFromRow(row));
  if (stored === canonicalJson(factsOf(caseId, parts) ?? null)) return [];
  return [faultOf(caseId)("facts", "the facts that lists read differ from its parts")];
}

async function fileUseFaults(db: Db, { caseId, parts }: Standing): Promise<StoreFault[]> {
  const rows = await db
    .selectFrom("fileUses")
    .selectAll()
    .where("caseId", "=", caseId)
    .orderBy("visitId")
    .orderBy("row")
    .execute();
  const uses = fileUsesOf(parts).map((use) => fileUseToRow(caseId, use));
  const inOrder = uses.sort((a, b) => (a.visitId === b.visitId ? a.row - b.row : a.visitId < b.visitId ? -1 : 1));
  if (canonicalJson(rows) === canonicalJson(inOrder)) return [];
  return [faultOf(caseId)("facts", "the uses of counted files noted for it differ from its visits")];
}

async function dueFaults(db: Db, { caseId, parts }: Standing): Promise<StoreFault[]> {
  const rows = await db.selectFrom("dueThings").selectAll().where("caseId", "=", caseId).execute();
  const due = dueOf(parts).map((one) => dueToRow(caseId, one));
  const [stored, owed] = [rows, due].map((some) => some.map(canonicalJson).sort().join());
  if (stored === owed) return [];
  return [faultOf(caseId)("facts", "the days that are due noted for it differ from its parts")];
}

async function filmUseFaults(db: Db, caseId: string, named: readonly string[]): Promise<StoreFault[]> {
  const rows = await db.selectFrom("filmUses").select("hash").where("caseId", "=", caseId).orderBy("hash").execute();
  if (rows.map(({ hash }) => hash).join() === named.join()) return [];
  return [faultOf(caseId)("film", "the films noted for it differ from those that its chain names")];
}

async function ledgerFaults(db: Db, caseId: string): Promise<StoreFault[]> {
  const rows = await db.selectFrom("ledgerEntries").selectAll().where("caseId", "=", caseId).execute();
  const changed = rows.filter((row) => tryText(() => sealOf(ledgerFromRow(row))) !== `"${row.seal}"`);
  const current = await db
    .selectFrom("ledgerCurrent")
    .selectAll()
    .where("caseId", "=", caseId)
    .orderBy("place")
    .execute();
  const fault = faultOf(caseId);
  const ids = new Set(rows.map(({ id }) => id));
  return [
    ...changed.map(({ id }) => fault("ledger", `entry ${id} is not what was written`)),
    ...current
      .filter(({ entryId, place }, index) => place !== index || !ids.has(entryId))
      .map(({ entryId }) => fault("ledger", `the current entry ${entryId} is missing or out of place`)),
  ];
}

const faultOf =
  (where: string) =>
  (what: StoreFault["what"], says: string): StoreFault => ({ what, where, says });

/** A value as canonical text, or nothing where the row can't be read. */
function tryText(read: () => unknown): string | undefined {
  try {
    return canonicalJson(read());
  } catch {
    return undefined;
  }
}

const saysOf = (error: unknown): string =>
  error instanceof Refusal ? error.message : `its rows can't be read (${error instanceof Error ? error.name : "?"})`;
