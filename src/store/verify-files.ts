import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { join } from "node:path";
import { fromJsonText, sealOf } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import type { DocumentRow } from "./document-row.ts";
import { documentPath, filmPath } from "./kept-files.ts";
import type { StoreFault } from "./store.ts";
import { namedFiles, unfinishedFiles } from "./unfinished-files.ts";

type Step = () => Promise<StoreFault[]>;

/** For each film a step that gives what is wrong with its row or its file. */
export async function filmFaults(db: Db, home: string): Promise<Step[]> {
  const rows = await db.selectFrom("films").selectAll().orderBy("hash").execute();
  return rows.map(({ seal, ...row }) => async () => {
    const where = filmPath(row.hash);
    const changed =
      sealOf(row) === seal ? [] : [{ what: "film", where, says: "its row is not what was written" } as const];
    const found = await hashOfFile(join(home, where));
    return [...changed, ...fileFault("film", where, found, row.hash)];
  });
}

/** For each document a step that gives what is wrong with its row or its file. */
export async function documentFaults(db: Db, home: string): Promise<Step[]> {
  const rows = await db.selectFrom("documents").selectAll().orderBy("id").execute();
  return rows.map(({ seal, ...row }) => async () => {
    if (sealOf(row) !== seal) return [{ what: "document", where: row.id, says: "its row is not what was written" }];
    const { sha256 } = fromJsonText(row.row) as DocumentRow;
    return fileFault("document", row.id, await hashOfFile(join(home, documentPath(sha256))), sha256);
  });
}

/** The files that no row names and that are not being written. */
export async function orphanFaults(db: Db, files: readonly string[]): Promise<StoreFault[]> {
  const named = await readableNames(db);
  const noted = new Set(await unfinishedFiles(db));
  return files
    .filter((path) => !named.has(path) && !noted.has(path))
    .map((path) => ({
      what: path.startsWith("films/") ? "film" : "document",
      where: path,
      says: "a file that no row names",
    }));
}

/** A document's row that can't be read is a fault of its own and must not hide the orphans. */
async function readableNames(db: Db): Promise<Set<string>> {
  try {
    return await namedFiles(db);
  } catch {
    return new Set();
  }
}

function fileFault(what: "film" | "document", where: string, found: string | undefined, hash: string): StoreFault[] {
  if (found === hash) return [];
  return [{ what, where, says: found === undefined ? "its file is missing or can't be read" : "its file has changed" }];
}

/** SHA-256 of a file read piece by piece; undefined where it can't be read. */
async function hashOfFile(file: string): Promise<string | undefined> {
  const hash = createHash("sha256");
  try {
    for await (const piece of createReadStream(file)) hash.update(piece);
    return hash.digest("hex");
  } catch {
    return undefined;
  }
}
