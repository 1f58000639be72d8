import { closeSync, existsSync, openSync, readSync } from "node:fs";
import { CamelCasePlugin, Kysely, type SqliteDatabase, SqliteDialect, type SqliteStatement } from "kysely";
import Database from "libsql";
import type { Tables } from "./tables.ts";

/** A connection to the record's database. */
export type Db = Kysely<Tables>;

/** An open database with what only this dialect can do. */
export interface OpenDatabase {
  readonly db: Db;
  /** Writes a consistent copy into a file that does not exist yet. */
  readonly copyInto: (file: string) => void;
  /** Notes the version of the tables in the file's own header, where {@link versionOfFile} reads it. */
  readonly noteVersion: (version: number) => void;
  /** What the database itself finds wrong with its file. */
  readonly integrityFaults: () => string[];
  /** Brings the log into the main file and lets go of it. */
  readonly close: () => Promise<void>;
}

/**
 * Opens the database of a file, made if it is not there.
 * @throws the driver's error; refusal-of-disk.ts turns it into a Refusal
 */
export function openDatabase(file: string): OpenDatabase {
  const raw = new Database(file);
  // FULL: an acknowledged change has reached the disk, not only the system's memory.
  for (const pragma of ["journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON", "busy_timeout=5000"])
    raw.pragma(pragma);
  const db = new Kysely<Tables>({
    dialect: new SqliteDialect({ database: asSqlite(raw) }),
    plugins: [new CamelCasePlugin()],
  });
  return {
    db,
    copyInto: (copy) => raw.exec(`VACUUM INTO '${copy.replaceAll("'", "''")}'`),
    noteVersion: (version) => {
      raw.pragma(`user_version=${Math.trunc(version)}`);
      raw.pragma("wal_checkpoint(TRUNCATE)");
    },
    integrityFaults: () =>
      rowsOf(raw.pragma("integrity_check"))
        .map(String)
        .filter((says) => says !== "ok"),
    close: async () => {
      if (raw.open) checkpoint(raw);
      await db.destroy();
      if (raw.open) raw.close();
    },
  };
}

/** A full disk can't take the log into the main file; the log then stays and is read at the next start. */
function checkpoint(raw: Database.Database): void {
  try {
    raw.pragma("wal_checkpoint(TRUNCATE)");
  } catch {
    // Nothing is lost: see above.
  }
}

function rowsOf(answer: unknown): unknown[] {
  if (!Array.isArray(answer)) return [];
  return answer.flatMap((row: unknown) => (typeof row === "object" && row !== null ? Object.values(row) : []));
}

/** The driver as kysely wants it; a transaction takes the write lock at once, so that two processes wait for each other. */
function asSqlite(raw: Database.Database): SqliteDatabase {
  return {
    close: () => raw.close(),
    prepare: (sql) => {
      if (sql === "begin") return asStatement(raw.prepare("begin immediate"));
      // A full disk ends a transaction by itself; a second rollback would hide why.
      if (sql === "rollback" && !raw.inTransaction) return nothingToDo;
      return asStatement(raw.prepare(sql));
    },
  };
}

/** Rows are read by all() alone (get() adds a field), and a value that the driver would abort the process for is refused. */
function asStatement(statement: Database.Statement): SqliteStatement {
  return {
    reader: statement.reader,
    all: (values) => statement.all(checked(values)),
    run: (values) => statement.run(checked(values)),
    iterate: (values) => statement.iterate(checked(values)),
  };
}

function checked(values: readonly unknown[]): unknown[] {
  for (const value of values)
    if (value !== null && typeof value !== "string" && typeof value !== "number")
      throw new TypeError(`the database stores text, numbers and null, not a ${typeof value}`);
  return [...values];
}

const nothingToDo: SqliteStatement = {
  reader: false,
  all: () => [],
  run: () => ({ changes: 0, lastInsertRowid: 0 }),
  iterate: () => [][Symbol.iterator](),
};

/** What stands in a file where the database should be: nothing yet, a database with its tables' version, or something else. */
export type FileVersion = "absent" | "notADatabase" | number;

/** The version of the tables in a file, read from its first bytes without opening it, so that nothing is touched. */
export function versionOfFile(file: string): FileVersion {
  if (!existsSync(file)) return "absent";
  const header = Buffer.alloc(100);
  const handle = openSync(file, "r");
  try {
    const length = readSync(handle, header, 0, 100, 0);
    if (length === 0) return "absent";
    if (length < 100 || header.toString("latin1", 0, 16) !== "SQLite format 3\0") return "notADatabase";
    return header.readUInt32BE(60);
  } finally {
    closeSync(handle);
  }
}
