import { fromJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import type { DocumentRow } from "./document-row.ts";
import { inPortions } from "./in-portions.ts";
import { documentPath, filmPath, removeKeptFile } from "./kept-files.ts";

/** Paths of all files that rows of the database name. */
export async function namedFiles(db: Db): Promise<Set<string>> {
  const films = await db.selectFrom("films").select("hash").execute();
  const documents = await db.selectFrom("documents").select("row").execute();
  return new Set([
    ...films.map(({ hash }) => filmPath(hash)),
    ...documents.map(({ row }) => documentPath((fromJsonText(row) as DocumentRow).sha256)),
  ]);
}

/** The files that are noted as being written or taken away. */
export async function unfinishedFiles(db: Db): Promise<string[]> {
  const noted = await db.selectFrom("unfinishedFiles").select("path").orderBy("path").execute();
  return noted.map(({ path }) => path);
}

/** Takes away those of the noted files that no row names, and the notes; gives the paths that were taken away. */
export async function finishFiles(db: Db, home: string, noted: readonly string[]): Promise<string[]> {
  if (noted.length === 0) return [];
  const named = await namedFiles(db);
  const unnamed = noted.filter((path) => !named.has(path));
  for (const path of unnamed) await removeKeptFile(home, path);
  await inPortions(noted, (paths) => db.deleteFrom("unfinishedFiles").where("path", "in", paths).execute());
  return unnamed;
}
