import { readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { Refusal } from "../core/refusal.ts";
import type { Db } from "./dialect.ts";
import { fileFolders, keptFiles, temporaryEnd } from "./kept-files.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";
import { finishFiles, unfinishedFiles } from "./unfinished-files.ts";

/** Finishes what a crash cut short; gives one plain sentence for each thing found and done. Only for the holder of the home. */
export async function recover(db: Db, home: string): Promise<string[]> {
  const parts = await removeTemporary(home);
  const unnamed = await finishFiles(db, home, await unfinishedFiles(db)).catch((error) => onlyFull(error, home));
  const removed =
    parts === 0 ? [] : [`${counted(parts, "half-written file")} left by a write that was cut short: removed.`];
  if (unnamed === "full")
    return [...removed, "The disk is full: files that a write left behind are seen to at a later start."];
  if (unnamed.length === 0) return removed;
  return [...removed, `${counted(unnamed.length, "file")} that no case names (import or removal cut short): removed.`];
}

/** A full disk keeps nobody from reading: the notes stay, and a later start finishes them. */
function onlyFull(error: unknown, home: string): "full" {
  const refusal = refusalOfDisk(error, home);
  if (refusal instanceof Refusal && refusal.code === "store.full") return "full";
  throw error;
}

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

async function removeTemporary(home: string): Promise<number> {
  const inFolders = await Promise.all(fileFolders.map((folder) => keptFiles(home, folder)));
  const paths = [...(await readdir(home)), ...inFolders.flat()].filter((path) => path.endsWith(temporaryEnd));
  for (const path of paths) await rm(join(home, path), { force: true, recursive: true });
  return paths.length;
}
