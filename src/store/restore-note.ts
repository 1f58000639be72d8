import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import { dirname } from "node:path";
import { Refusal } from "../core/refusal.ts";
import { flushFolder } from "./kept-files.ts";
import { isAlive, isHolder, type LockHolder } from "./lock.ts";

/** What a restore writes down before it moves folders, so that a start after a crash can finish it. */
export interface RestoreNote {
  readonly by: LockHolder;
  /** The whole, checked record that is to take the home's place. */
  readonly staging: string;
  /** Where an earlier home goes; absent where there is none. */
  readonly aside?: string;
}

/** Where the note lies: beside the home, which may not be there for a moment. */
const noteFile = (home: string): string => `${home}.restore-under-way`;

/** Writes the note and makes sure that it lasts. */
export async function writeRestoreNote(home: string, note: RestoreNote): Promise<void> {
  const handle = openSync(noteFile(home), "w");
  try {
    writeSync(handle, JSON.stringify(note));
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  await flushFolder(dirname(home));
}

/** Takes the note away. */
export const removeRestoreNote = (home: string): void => rmSync(noteFile(home), { force: true });

/**
 * Finishes a restore that a crash cut short between moving the earlier home aside and putting the restored one in its
 * place; one that was cut short before that is given up, and the earlier home stays.
 * Takes the home. Gives one plain sentence for what was found and done; nothing where no restore was under way.
 * @throws Refusal `server.alreadyRunning` while the restore still goes on
 */
export function finishRestore(home: string): string[] {
  const note = readNote(home);
  if (note === undefined) return [];
  if (note.by.pid !== process.pid && isAlive(note.by))
    throw new Refusal(
      "server.alreadyRunning",
      `Cannot open ${home}: a backup is being restored there; wait until it is done`,
    );
  const { staging, aside } = note;
  const isThere = existsSync(home) && readdirSync(home).length > 0;
  if (!isThere && existsSync(staging)) {
    renameSync(staging, home);
    removeRestoreNote(home);
    const before = aside === undefined ? "" : ` What was there before is now ${aside}.`;
    return [`A restore had been cut short: it was finished.${before}`];
  }
  if (!isThere && aside !== undefined && existsSync(aside)) {
    renameSync(aside, home);
    removeRestoreNote(home);
    return ["A restore had been cut short: the record from before was put back."];
  }
  const left = existsSync(staging);
  rmSync(staging, { recursive: true, force: true });
  removeRestoreNote(home);
  if (left) return ["A restore had been cut short before it changed anything: it was given up, and its copy removed."];
  return [`A restore had just been finished.${aside === undefined ? "" : ` What was there before is now ${aside}.`}`];
}

function readNote(home: string): RestoreNote | undefined {
  try {
    const read: unknown = JSON.parse(readFileSync(noteFile(home), "utf8"));
    return isNote(read) ? read : undefined;
  } catch {
    // A note that is not there, or was cut short itself: nothing had been moved then.
    return undefined;
  }
}

const isNote = (read: unknown): read is RestoreNote =>
  typeof read === "object" &&
  read !== null &&
  isHolder(Reflect.get(read, "by")) &&
  typeof Reflect.get(read, "staging") === "string";
