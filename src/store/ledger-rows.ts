import { Refusal } from "../core/refusal.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { ledgerFromRow, ledgerToRow } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import { inPortions } from "./in-portions.ts";
import { readSettings } from "./settings-row.ts";
import type { CaseState, DeriveLedger } from "./store.ts";

/** The entries that hold for a case now, in the order in which the ledger gave them. */
export async function readLedger(db: Db, caseId: string): Promise<LedgerEntry[]> {
  const rows = await db
    .selectFrom("ledgerCurrent")
    .innerJoin("ledgerEntries", (join) =>
      join
        .onRef("ledgerEntries.caseId", "=", "ledgerCurrent.caseId")
        .onRef("ledgerEntries.id", "=", "ledgerCurrent.entryId"),
    )
    .where("ledgerCurrent.caseId", "=", caseId)
    .selectAll("ledgerEntries")
    .orderBy("ledgerCurrent.place")
    .execute();
  return rows.map(ledgerFromRow);
}

/**
 * One entry, whether it holds now or not.
 * @throws Refusal `record.notFound`
 */
export async function readLedgerEntry(db: Db, id: string): Promise<LedgerEntry> {
  const row = await db.selectFrom("ledgerEntries").selectAll().where("id", "=", id).limit(1).executeTakeFirst();
  if (row !== undefined) return ledgerFromRow(row);
  throw new Refusal("record.notFound", `Cannot open ledger entry ${id}: there is no such entry`, { id });
}

/** Entries that were worked out before a transaction, by id. */
export type Ahead = ReadonlyMap<string, LedgerEntry>;

/** The entries of the cases worked on last; entries never change, so what was read once need not be read again. */
export class KnownEntries {
  readonly #cases = new Map<string, Map<string, LedgerEntry>>();
  readonly #most = 4;

  /** All entries ever stored for a case, by id. */
  async of(db: Db, caseId: string): Promise<Map<string, LedgerEntry>> {
    const known = this.#cases.get(caseId) ?? (await readAllEntries(db, caseId));
    this.#cases.delete(caseId);
    this.#cases.set(caseId, known);
    const [oldest] = this.#cases.keys();
    if (this.#cases.size > this.#most && oldest !== undefined) this.#cases.delete(oldest);
    return known;
  }

  /** Forgets a case, after its transaction failed or it was removed. */
  forget(caseId: string): void {
    this.#cases.delete(caseId);
  }
}

/** Every entry that was ever kept for a case, by id. */
export async function readAllEntries(db: Db, caseId: string): Promise<Map<string, LedgerEntry>> {
  const rows = await db.selectFrom("ledgerEntries").selectAll().where("caseId", "=", caseId).execute();
  return new Map(rows.map((row) => [row.id, ledgerFromRow(row)]));
}

/**
 * Works out the ledger of a state and stores what is new in it; old entries stay. Called inside a transaction, with what
 * is stored and what was worked out ahead of it.
 */
export async function writeLedger(
  db: Db,
  state: CaseState,
  derive: DeriveLedger,
  { known, ahead }: { readonly known: Map<string, LedgerEntry>; readonly ahead: Ahead },
): Promise<void> {
  const { caseId } = state;
  const settings = await readSettings(db);
  const entries = derive(state, { settings, known: (id) => known.get(id) ?? ahead.get(id) });
  const fresh = new Map(entries.filter(({ id }) => !known.has(id)).map((entry) => [entry.id, entry]));
  await inPortions([...fresh.values()], (some) =>
    db
      .insertInto("ledgerEntries")
      .values(some.map(ledgerToRow))
      .onConflict((it) => it.columns(["caseId", "id"]).doNothing())
      .execute(),
  );
  for (const [id, entry] of fresh) known.set(id, entry);
  const ids = [...new Set(entries.map(({ id }) => id))];
  if (await isCurrent(db, caseId, ids)) return;
  await db.deleteFrom("ledgerCurrent").where("caseId", "=", caseId).execute();
  const rows = ids.map((entryId, place) => ({ caseId, place, entryId }));
  await inPortions(rows, (some) => db.insertInto("ledgerCurrent").values(some).execute());
}

async function isCurrent(db: Db, caseId: string, ids: readonly string[]): Promise<boolean> {
  const rows = await db
    .selectFrom("ledgerCurrent")
    .select("entryId")
    .where("caseId", "=", caseId)
    .orderBy("place")
    .execute();
  return rows.length === ids.length && rows.every(({ entryId }, place) => entryId === ids[place]);
}
