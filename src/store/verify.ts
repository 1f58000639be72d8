import type { OpenDatabase } from "./dialect.ts";
import { fileFolders, keptFiles } from "./kept-files.ts";
import type { StoreFault } from "./store.ts";
import { cabinetFaults } from "./verify-cabinet.ts";
import { verifyCase } from "./verify-case.ts";
import { documentFaults, filmFaults, orphanFaults } from "./verify-files.ts";
import { sealedRowFaults, tableFaults } from "./verify-rows.ts";

/**
 * Everything that is wrong with what is stored, found without changing anything: the database's own check, chains against
 * their hashes, states and facts against their chains, ledger entries and other rows against their seals, files against
 * rows and rows against files. Takes a hearer of progress (steps done, all steps).
 */
export async function verify(
  database: OpenDatabase,
  home: string,
  progress: (done: number, all: number) => void = () => undefined,
): Promise<StoreFault[]> {
  const { db } = database;
  const broken = tableFaults(database);
  if (broken.length > 0) return broken;
  // Files first: one that is kept while this runs is then in the rows, and not taken for an orphan.
  const files = (await Promise.all(fileFolders.map((folder) => keptFiles(home, folder)))).flat();
  const steps = [
    ...(await caseIdsOf(database)).map((caseId) => () => verifyCase(db, caseId)),
    () => cabinetFaults(db),
    () => sealedRowFaults(db),
    ...(await filmFaults(db, home)),
    ...(await documentFaults(db, home)),
    () => orphanFaults(db, files),
  ];
  const faults: StoreFault[] = [];
  for (const [index, step] of steps.entries()) {
    faults.push(...(await step()));
    progress(index + 1, steps.length);
  }
  return faults;
}

/** Every case that any table names: a row whose case is not in the chains is found too. */
async function caseIdsOf({ db }: OpenDatabase): Promise<string[]> {
  const ids = new Set<string>();
  for (const table of [
    "changes",
    "parts",
    "partRevisions",
    "caseFacts",
    "ledgerEntries",
    "filmUses",
    "fileUses",
    "dueThings",
  ] as const)
    for (const { caseId } of await db.selectFrom(table).select("caseId").distinct().execute()) ids.add(caseId);
  return [...ids].sort();
}
