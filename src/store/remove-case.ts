import { readStanding } from "./case-rows.ts";
import { fromJsonText, sealOf, toJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import type { DocumentRow } from "./document-row.ts";
import { noteUnfinished } from "./film-rows.ts";
import { documentPath, filmPath } from "./kept-files.ts";
import type { Recording, Tombstone } from "./store.ts";

/**
 * Takes a case out of every table and leaves a tombstone; its documents, and the films that no other case names, are
 * noted to be taken from the disk; gives the paths of both. Called inside a transaction.
 * @throws Refusal `record.notFound`
 */
export async function removeCaseRows(
  db: Db,
  caseId: string,
  { who, at }: Pick<Recording, "who" | "at">,
): Promise<{ readonly tombstone: Tombstone; readonly files: readonly string[] }> {
  const { headHash } = await readStanding(db, caseId);
  const files = [...(await documentFiles(db, caseId)), ...(await removeFilms(db, caseId))];
  for (const table of ["ledgerCurrent", "ledgerEntries", "documents", "caseFacts", "partRevisions"] as const)
    await db.deleteFrom(table).where("caseId", "=", caseId).execute();
  for (const table of ["parts", "changes", "fileUses", "dueThings"] as const)
    await db.deleteFrom(table).where("caseId", "=", caseId).execute();
  const tombstone = { caseId, headHash, at, who };
  const row = { caseId, headHash, at, who: toJsonText(who) };
  await db
    .insertInto("tombstones")
    .values({ ...row, seal: sealOf(row) })
    .onConflict((it) => it.columns(["caseId", "headHash"]).doNothing())
    .execute();
  await noteUnfinished(db, files);
  return { tombstone, files };
}

async function documentFiles(db: Db, caseId: string): Promise<string[]> {
  const rows = await db.selectFrom("documents").select("row").where("caseId", "=", caseId).execute();
  return rows.map(({ row }) => documentPath((fromJsonText(row) as DocumentRow).sha256));
}

/** Takes the case's films that no other case names out of the table; gives their paths. */
async function removeFilms(db: Db, caseId: string): Promise<string[]> {
  const uses = await db.selectFrom("filmUses").select("hash").where("caseId", "=", caseId).execute();
  await db.deleteFrom("filmUses").where("caseId", "=", caseId).execute();
  const paths: string[] = [];
  for (const { hash } of uses) {
    const other = await db.selectFrom("filmUses").select("caseId").where("hash", "=", hash).executeTakeFirst();
    if (other !== undefined) continue;
    await db.deleteFrom("films").where("hash", "=", hash).execute();
    paths.push(filmPath(hash));
  }
  return paths;
}
