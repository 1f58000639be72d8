import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Refusal } from "../core/refusal.ts";

/** What a lock says about the process that holds it. */
export interface LockHolder {
  readonly pid: number;
  /** Where it serves, once it does. */
  readonly port?: number;
  readonly startedAt: string;
  /** What tells this process from a later one of the same number, where the system says so. */
  readonly mark?: string;
}

/** The hold on a home. */
export interface HomeLock {
  /** Says that a dead process was found holding the home, or nothing. */
  readonly takenOver: string | undefined;
  /** Notes where this process serves. */
  servesAt(port: number): void;
  release(): void;
}

const lockFile = (home: string): string => join(home, "canalog.lock");

/**
 * Takes hold of a home for this process; only one may serve it. A hold whose process is dead is taken over.
 * @throws Refusal `server.alreadyRunning` with pid, port and start of the process that holds it
 */
export function lockHome(home: string, port?: number): HomeLock {
  const file = lockFile(home);
  const found = readLock(file);
  if (found !== undefined && isAlive(found)) throw alreadyRunning(home, found);
  if (found !== undefined || leftEmpty(file)) setAside(file);
  let mine = ownHolder(port);
  try {
    writeFileSync(file, JSON.stringify(mine), { flag: "wx" });
  } catch (error) {
    const other = readLock(file);
    throw other === undefined ? error : alreadyRunning(home, other);
  }
  return {
    takenOver: found && `The program (process ${found.pid}) had not closed the record; it was opened again.`,
    servesAt: (at) => {
      mine = { ...mine, port: at };
      writeFileSync(`${file}.part`, JSON.stringify(mine));
      renameSync(`${file}.part`, file);
    },
    release: () => {
      if (readLock(file)?.pid === process.pid) rmSync(file, { force: true });
    },
  };
}

/**
 * Refuses work that needs a home that nobody serves.
 * @throws Refusal `server.alreadyRunning`
 */
export function refuseWhileServed(home: string): void {
  const found = readLock(lockFile(home));
  if (found !== undefined && isAlive(found)) throw alreadyRunning(home, found);
}

function alreadyRunning(home: string, { pid, port, startedAt }: LockHolder): Refusal {
  const where = port === undefined ? "" : `, at http://127.0.0.1:${port}`;
  return new Refusal(
    "server.alreadyRunning",
    `Cannot open ${home}: the program already runs on it (process ${pid}${where}); use that one, or close it first`,
    { home, pid, startedAt, ...(port === undefined ? {} : { port }) },
  );
}

/** This process, as a file names it that only one may hold. */
export function ownHolder(port?: number): LockHolder {
  const mark = markOf(process.pid);
  return {
    pid: process.pid,
    startedAt: new Date().toISOString(),
    ...(port === undefined ? {} : { port }),
    ...(mark === undefined ? {} : { mark }),
  };
}

function readLock(file: string): LockHolder | undefined {
  try {
    const found: unknown = JSON.parse(readFileSync(file, "utf8"));
    return isHolder(found) ? found : undefined;
  } catch {
    return undefined;
  }
}

/** Whether what a file holds names a process. */
export const isHolder = (found: unknown): found is LockHolder =>
  typeof found === "object" && found !== null && Number.isInteger(Reflect.get(found, "pid"));

/** A lock that says nothing was cut short while it was written; younger ones may still be being written. */
function leftEmpty(file: string): boolean {
  try {
    return Date.now() - statSync(file).mtimeMs > 2_000;
  } catch {
    return false;
  }
}

/** Renaming first makes one of two processes that take over at once lose, and not both win. */
function setAside(file: string): void {
  const aside = `${file}.${process.pid}.part`;
  try {
    renameSync(file, aside);
  } catch {
    return;
  }
  rmSync(aside, { force: true });
}

/** Whether the process that a file names is running still, and not another of the same number. */
export function isAlive({ pid, mark }: LockHolder): boolean {
  try {
    process.kill(pid, 0);
  } catch (error) {
    // EPERM: it lives and belongs to somebody else.
    if (!(error instanceof Error) || Reflect.get(error, "code") !== "EPERM") return false;
  }
  return mark === undefined || markOf(pid) === undefined || markOf(pid) === mark;
}

/** On Linux the start of this boot and of the process in clock ticks; undefined elsewhere. */
function markOf(pid: number): string | undefined {
  try {
    const boot = readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
    const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)?.split(" ") ?? [];
    // A killed process that nobody has asked after yet (state Z) serves nothing.
    return `${boot} ${fields[0] === "Z" ? "dead" : fields[19]}`;
  } catch {
    return undefined;
  }
}
