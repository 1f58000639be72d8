import { existsSync } from "node:fs";
import { join } from "node:path";
import { Migrator } from "kysely";
import { Refusal } from "../core/refusal.ts";
import { factsVersion } from "../record/facts.ts";
import { readStanding, writeFacts } from "./case-rows.ts";
import { type Db, type OpenDatabase, versionOfFile } from "./dialect.ts";
import type { TablesStep } from "./migrations.ts";

/** The database's file in a home folder. */
export const databaseFile = (home: string): string => join(home, "canalog.sqlite");

/**
 * The version of the tables in a home, 0 where there are none, found without touching the folder.
 * @throws Refusal `store.newerVersion` naming both versions, `store.corrupt` for a file that is no database
 */
export function checkVersion(home: string, known: number): number {
  const found = versionOfFile(databaseFile(home));
  if (found === "notADatabase")
    throw new Refusal(
      "store.corrupt",
      `Cannot read the record in ${home}: ${databaseFile(home)} is not a database; move the folder aside and restore a backup (canalog restore)`,
      { home },
    );
  const version = found === "absent" ? 0 : found;
  if (version > known)
    throw new Refusal(
      "store.newerVersion",
      `Cannot open the record in ${home}: a newer program wrote it (version ${version}, this program knows ${known}); use the newer program, nothing was touched`,
      { home, version, known },
    );
  return version;
}

/**
 * Brings the tables to the last of the steps. Gives the path of the copy that was made before, or undefined when there
 * was nothing to turn.
 * @throws the driver's error; the tables are then as they were
 */
export async function migrate(
  database: OpenDatabase,
  home: string,
  found: number,
  steps: readonly TablesStep[],
): Promise<string | undefined> {
  const latest = steps.at(-1)?.version ?? 0;
  if (found === latest) return undefined;
  const copy = found === 0 ? undefined : copyPath(home, found, latest);
  if (copy !== undefined) database.copyInto(copy);
  const { error } = await new Migrator({
    db: database.db,
    provider: {
      getMigrations: async () => Object.fromEntries(steps.map(({ version, up }) => [nameOf(version), { up }])),
    },
  }).migrateToLatest();
  if (error !== undefined) throw error;
  await database.db
    .insertInto("meta")
    .values({ name: "tablesVersion", value: String(latest) })
    .onConflict((it) => it.column("name").doUpdateSet({ value: String(latest) }))
    .execute();
  database.noteVersion(latest);
  return copy;
}

/** Works the facts of all cases out anew when another version of the program wrote them; lists read nothing else. */
export async function renewFacts(db: Db): Promise<void> {
  await db.transaction().execute(async (trx) => {
    const row = await trx.selectFrom("meta").select("value").where("name", "=", "factsVersion").executeTakeFirst();
    const value = String(factsVersion);
    if (row?.value === value) return;
    const cases = await trx.selectFrom("changes").select("caseId").where("sequence", "=", 1).execute();
    for (const { caseId } of cases) await writeFacts(trx, await readStanding(trx, caseId));
    await trx
      .insertInto("meta")
      .values({ name: "factsVersion", value })
      .onConflict((it) => it.column("name").doUpdateSet({ value }))
      .execute();
  });
}

const nameOf = (version: number): string => String(version).padStart(4, "0");

/** A name that is not taken: an earlier try that was cut short leaves its copy. */
function copyPath(home: string, from: number, to: number): string {
  const base = join(home, `canalog-before-version-${to}-was-${from}`);
  for (let number = 1; ; number += 1) {
    const path = `${base}${number === 1 ? "" : `-${number}`}.sqlite`;
    if (!existsSync(path)) return path;
  }
}
