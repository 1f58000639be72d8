import { writeChanges } from "./case-rows.ts";
import type { Db } from "./dialect.ts";
import { type Ahead, type KnownEntries, writeLedger } from "./ledger-rows.ts";
import { type Plan, stateOf } from "./record-change.ts";
import { readSettings } from "./settings-row.ts";
import type { CaseState, DeriveLedger } from "./store.ts";

/** How cases are written. */
export interface CaseWriter {
  /** Writes what is planned for a case; gives where it stands then. */
  readonly write: (caseId: string, plan: Plan, deriveLedger: DeriveLedger) => Promise<CaseState>;
  /** Waits for what is being written. */
  readonly ended: () => Promise<unknown>;
}

/**
 * Writes to cases: the ledger is worked out ahead, then links, state, facts and ledger go into one transaction, which
 * plans anew on what stands in it. Writes to one case are done one after the other, so that what is foreseen for the
 * second holds what the first made. What a transaction taught about the ledger is forgotten when it fails.
 */
export function writerOn(db: Db, known: KnownEntries): CaseWriter {
  const last = new Map<string, Promise<unknown>>();
  const written = async (caseId: string, plan: Plan, deriveLedger: DeriveLedger): Promise<CaseState> => {
    const ahead = await workedOutAhead({ db, known }, plan, deriveLedger);
    try {
      return await db.transaction().execute((trx) => writePlanned({ db: trx, known, ahead }, plan, deriveLedger));
    } catch (error) {
      known.forget(caseId);
      throw error;
    }
  };
  const write: CaseWriter["write"] = (caseId, plan, deriveLedger) => {
    const mine = (last.get(caseId) ?? Promise.resolve()).then(() => written(caseId, plan, deriveLedger));
    const done = mine
      .catch(() => undefined)
      .then(() => {
        if (last.get(caseId) === done) last.delete(caseId);
      });
    last.set(caseId, done);
    return mine;
  };
  return { write, ended: () => Promise.all(last.values()) };
}

interface Writing {
  readonly db: Db;
  readonly known: KnownEntries;
  readonly ahead: Ahead;
}

async function writePlanned({ db, known, ahead }: Writing, plan: Plan, deriveLedger: DeriveLedger): Promise<CaseState> {
  const { changes, after } = await plan(db);
  if (changes.length > 0) await writeChanges(db, changes, after);
  await writeLedger(db, stateOf(after), deriveLedger, { ahead, known: await known.of(db, after.caseId) });
  return stateOf(after);
}

/** What can be foreseen of the ledger; nothing where that fails, for the transaction judges and works out by itself. */
async function workedOutAhead(
  { db, known }: Pick<Writing, "db" | "known">,
  plan: Plan,
  { ahead }: DeriveLedger,
): Promise<Ahead> {
  if (ahead === undefined) return new Map();
  try {
    const { after } = await plan(db);
    const kept = await known.of(db, after.caseId);
    const settings = await readSettings(db);
    const entries = await ahead(stateOf(after), { settings, known: (id) => kept.get(id) });
    return new Map(entries.map((entry) => [entry.id, entry]));
  } catch {
    return new Map();
  }
}
