import { existsSync, readdirSync, rmdirSync } from "node:fs";
import { mkdtemp, rename, rm } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { Refusal } from "../core/refusal.ts";
import { flushFolder } from "./kept-files.ts";
import { ownHolder, refuseWhileServed } from "./lock.ts";
import { checkVersion } from "./migrate.ts";
import { tablesSteps } from "./migrations.ts";
import type { Progress } from "./progress.ts";
import { readBackup } from "./read-backup.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";
import { finishRestore, removeRestoreNote, writeRestoreNote } from "./restore-note.ts";

/** How a backup is restored. */
export interface RestoreOptions {
  /** Whether a home that is not empty is renamed out of the way; without it such a home is refused. */
  readonly moveAside?: boolean;
  readonly progress?: Progress;
  /** Told what has been done of taking the home's place; tests end the process there. */
  readonly reached?: (step: RestoreStep) => void;
}

/** What a restore has done once its record is checked. */
export type RestoreStep = "noted" | "movedAside" | "inPlace";

/**
 * Puts the record of a backup into a home. Everything is read and checked in a folder beside it first; only a whole
 * record takes the home's place. Gives the name that an earlier home was moved to.
 * @throws Refusal `file.missing`, `backup.invalid`, `input.impossible` for a home that is not empty, `store.newerVersion`,
 * `server.alreadyRunning`, `store.full`, `store.unwritable`; nothing half done is left
 */
export async function restore(
  file: string,
  home: string,
  options: RestoreOptions = {},
): Promise<{ readonly movedAside?: string }> {
  const folder = resolve(home);
  if (!existsSync(file))
    throw new Refusal("file.missing", `Cannot restore from ${file}: there is no such file`, { file });
  finishRestore(folder);
  refuseWhileServed(folder);
  const taken = existsSync(folder) && readdirSync(folder).length > 0;
  if (taken && options.moveAside !== true)
    throw new Refusal(
      "input.impossible",
      `Cannot restore into ${folder}: it is not empty; add --move-aside to keep it under another name, or name another folder with CANALOG_HOME`,
      { home: folder },
    );
  try {
    return await restoreInto(folder, file, taken, options);
  } catch (error) {
    throw refusalOfDisk(error, dirname(folder));
  }
}

async function restoreInto(home: string, file: string, taken: boolean, { progress, reached }: RestoreOptions) {
  const staging = await mkdtemp(`${home}.restoring-`);
  try {
    await readBackup(file, { into: staging, ...(progress === undefined ? {} : { progress }) });
    checkVersion(staging, tablesSteps.at(-1)?.version ?? 0);
    return await takePlace(staging, home, taken, reached);
  } catch (error) {
    await rm(staging, { recursive: true, force: true });
    throw error;
  }
}

/** Two renames, noted before: if the second fails the first is taken back, and a start after a crash finishes them. */
async function takePlace(
  staging: string,
  home: string,
  taken: boolean,
  reached: RestoreOptions["reached"] = () => undefined,
): Promise<{ movedAside?: string }> {
  const aside = `${home}.before-restore-${new Date().toISOString().slice(0, 19).replaceAll(":", "-")}`;
  await writeRestoreNote(home, { by: ownHolder(), staging, ...(taken ? { aside } : {}) });
  reached("noted");
  try {
    if (taken) await rename(home, aside);
    else if (existsSync(home)) rmdirSync(home);
    reached("movedAside");
    await rename(staging, home);
  } catch (error) {
    if (taken && !existsSync(home)) await rename(aside, home);
    removeRestoreNote(home);
    throw error;
  }
  reached("inPlace");
  await flushFolder(dirname(home));
  removeRestoreNote(home);
  return taken ? { movedAside: aside } : {};
}
