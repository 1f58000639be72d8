import { existsSync, readdirSync, rmdirSync } from "node:fs";
import { mkdtemp, rename, rm } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { Refusal } from "../core/refusal.ts";
import { flushFolder } from "./kept-files.ts";
import { refuseWhileServed } from "./lock.ts";
import { checkVersion } from "./migrate.ts";
import { tablesSteps } from "./migrations.ts";
import type { Progress } from "./progress.ts";
import { readBackup } from "./read-backup.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";

/** How a backup is restored. */
export interface RestoreOptions {
  /** Whether a home that is not empty is renamed out of the way; without it such a home is refused. */
  readonly moveAside?: boolean;
  readonly progress?: Progress;
}

/**
 * Puts the record of a backup into a home. Everything is read and checked in a folder beside it first; only a whole
 * record takes the home's place. Gives the name that an earlier home was moved to.
 * @throws Refusal `file.missing`, `backup.invalid`, `input.impossible` for a home that is not empty, `store.newerVersion`,
 * `server.alreadyRunning`, `store.full`, `store.unwritable`; nothing half done is left
 */
export async function restore(
  file: string,
  home: string,
  { moveAside = false, progress }: RestoreOptions = {},
): Promise<{ readonly movedAside?: string }> {
  const folder = resolve(home);
  if (!existsSync(file))
    throw new Refusal("file.missing", `Cannot restore from ${file}: there is no such file`, { file });
  refuseWhileServed(folder);
  const taken = existsSync(folder) && readdirSync(folder).length > 0;
  if (taken && !moveAside)
    throw new Refusal(
      "input.impossible",
      `Cannot restore into ${folder}: it is not empty; add --move-aside to keep it under another name, or name another folder with CANALOG_HOME`,
      { home: folder },
    );
  try {
    return await restoreInto(folder, file, taken, progress);
  } catch (error) {
    throw refusalOfDisk(error, dirname(folder));
  }
}

async function restoreInto(home: string, file: string, taken: boolean, progress: Progress | undefined) {
  const staging = await mkdtemp(`${home}.restoring-`);
  try {
    await readBackup(file, { into: staging, ...(progress === undefined ? {} : { progress }) });
    checkVersion(staging, tablesSteps.at(-1)?.version ?? 0);
    return await takePlace(staging, home, taken);
  } catch (error) {
    await rm(staging, { recursive: true, force: true });
    throw error;
  }
}

/** Two renames; if the second fails the first is taken back. */
async function takePlace(staging: string, home: string, taken: boolean): Promise<{ movedAside?: string }> {
  const aside = `${home}.before-restore-${new Date().toISOString().slice(0, 19).replaceAll(":", "-")}`;
  if (taken) await rename(home, aside);
  else if (existsSync(home)) rmdirSync(home);
  try {
    await rename(staging, home);
  } catch (error) {
    if (taken) await rename(aside, home);
    throw error;
  }
  await flushFolder(dirname(home));
  return taken ? { movedAside: aside } : {};
}
