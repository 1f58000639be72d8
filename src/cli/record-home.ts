import { existsSync } from "node:fs";
import { Refusal } from "../core/refusal.ts";
import { homeFolder } from "../store/home.ts";
import { databaseFile } from "../store/migrate.ts";
import { finishRestore } from "../store/restore-note.ts";

/**
 * The folder of the record for a command that works on what is there: one that is misspelt is not made anew and found in
 * order. Takes what the command would do, as "check the record".
 * A restore that a crash cut short is finished first, and said.
 * @throws Refusal `file.missing`, `server.alreadyRunning` while a restore goes on
 */
export function recordHome(toDo: string): string {
  const home = homeFolder(process.env);
  for (const line of finishRestore(home)) console.log(`Recovered: ${line}`);
  if (existsSync(databaseFile(home))) return home;
  const why = `there is no record in ${home}; start Canalog once, or name the record's folder in CANALOG_HOME`;
  throw new Refusal("file.missing", `Cannot ${toDo}: ${why}`);
}
