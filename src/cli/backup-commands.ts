import { resolve } from "node:path";
import { backup, restore } from "../store/backup.ts";
import { homeFolder } from "../store/home.ts";
import { progressLine } from "./progress-line.ts";
import { recordHome } from "./record-home.ts";

/** `canalog backup FILE`: the whole data folder in one verified file. */
export async function backupCommand(file: string): Promise<void> {
  const line = progressLine("Backing up");
  await backup(recordHome("back up"), resolve(file), line.show);
  line.end(`Backed up to ${resolve(file)}, every file verified`);
}

/** `canalog restore FILE`: the data folder as it was, verified before anything is written in its place. */
export async function restoreCommand(file: string, options: { moveAside?: boolean }): Promise<void> {
  const home = homeFolder(process.env);
  const line = progressLine("Restoring");
  const { movedAside } = await restore(resolve(file), home, {
    moveAside: options.moveAside === true,
    progress: line.show,
  });
  line.end(`Restored to ${home}${movedAside === undefined ? "" : `; what was there is now ${movedAside}`}`);
}
