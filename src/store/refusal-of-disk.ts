import { statfsSync } from "node:fs";
import { Refusal } from "../core/refusal.ts";

const unwritable = new Set([
  "EACCES",
  "EPERM",
  "ENOTDIR",
  "EROFS",
  "ENOENT",
  "EISDIR",
  "SQLITE_CANTOPEN",
  "SQLITE_READONLY",
]);
const full = new Set(["ENOSPC", "EDQUOT", "SQLITE_FULL"]);
const corrupt = new Set(["SQLITE_CORRUPT", "SQLITE_NOTADB"]);

/**
 * What the person is told when disk or database fails: a Refusal that names the folder and the way out. Takes whatever
 * was thrown and the home folder; gives a Refusal `store.full`, `store.unwritable` or `store.corrupt`, or the error as it
 * is when the disk has no part in it.
 */
export function refusalOfDisk(error: unknown, home: string): unknown {
  if (!(error instanceof Error) || error instanceof Refusal) return error;
  const code = codeOf(error);
  if (full.has(code) || (code === "SQLITE_IOERR" && isNearlyFull(home)))
    return new Refusal("store.full", `Cannot write to ${home}: the disk is full; make room there, nothing is lost`, {
      home,
    });
  if (unwritable.has(code) || code === "SQLITE_IOERR")
    return new Refusal(
      "store.unwritable",
      `Cannot use the folder ${home}: it can't be opened or written; check that it exists and is yours, or name another with CANALOG_HOME`,
      { home, code },
    );
  if (corrupt.has(code))
    return new Refusal(
      "store.corrupt",
      `Cannot read the record in ${home}: its database is damaged; move the folder aside and restore a backup (canalog restore)`,
      { home, code },
    );
  return error;
}

/** The code without its finer part: SQLITE_IOERR_WRITE is SQLITE_IOERR. The driver gives no code when it can't open. */
function codeOf(error: Error): string {
  const code = String(Reflect.get(error, "code") ?? "");
  if (code.startsWith("SQLITE_")) return code.split("_").slice(0, 2).join("_");
  if (code !== "") return code;
  const opening = /ConnectionFailed\(.*: (\d+)"\)/.exec(error.message)?.[1];
  return opening === undefined ? "" : (openingCodes[opening] ?? "SQLITE_CANTOPEN");
}

const openingCodes: Readonly<Record<string, string>> = {
  "10": "SQLITE_IOERR",
  "11": "SQLITE_CORRUPT",
  "13": "SQLITE_FULL",
  "14": "SQLITE_CANTOPEN",
  "26": "SQLITE_NOTADB",
};

function isNearlyFull(home: string): boolean {
  try {
    const { bavail, bsize } = statfsSync(home);
    return bavail * bsize < 256 * 1024;
  } catch {
    return false;
  }
}
