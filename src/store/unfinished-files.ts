import { fromJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import type { DocumentRow } from "./document-row.ts";
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

/** Takes away the noted files that no row names, and the notes; gives the paths that were taken away. */
export async function finishFiles(db: Db, home: string): Promise<string[]> {
  const noted = await db.selectFrom("unfinishedFiles").select("path").orderBy("path").execute();
  if (noted.length === 0) return [];
  const named = await namedFiles(db);
  const unnamed = noted.map(({ path }) => path).filter((path) => !named.has(path));
  for (const path of unnamed) await removeKeptFile(home, path);
  await db.deleteFrom("unfinishedFiles").execute();
  return unnamed;
}
