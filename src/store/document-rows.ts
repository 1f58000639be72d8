import { Refusal } from "../core/refusal.ts";
import { readStanding } from "./case-rows.ts";
import { fromJsonText, sealOf, toJsonText } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import type { DocumentRow } from "./document-row.ts";
import { noteUnfinished, readChecked } from "./film-rows.ts";
import { documentPath, sha256Of, writeKeptFile } from "./kept-files.ts";

/**
 * Keeps a finished document and its row; the row is written after the file has reached the disk.
 * @throws Refusal `record.notFound` for a case that is not there, `record.conflict` when the id is taken
 */
export async function keepDocument(
  db: Db,
  home: string,
  about: Omit<DocumentRow, "sha256" | "bytes">,
  bytes: Uint8Array,
): Promise<DocumentRow> {
  await readStanding(db, about.caseId);
  const row: DocumentRow = { ...about, sha256: sha256Of(bytes), bytes: bytes.length };
  const path = documentPath(row.sha256);
  await noteUnfinished(db, [path]);
  await writeKeptFile(home, path, bytes);
  await db.transaction().execute(async (trx) => {
    const taken = await trx.selectFrom("documents").select("id").where("id", "=", row.id).executeTakeFirst();
    if (taken !== undefined)
      throw new Refusal("record.conflict", `Cannot keep document ${row.id}: there is a document of that id`);
    const stored = { id: row.id, caseId: row.caseId, at: row.at, row: toJsonText(row) };
    await trx
      .insertInto("documents")
      .values({ ...stored, seal: sealOf(stored) })
      .execute();
    await trx.deleteFrom("unfinishedFiles").where("path", "=", path).execute();
  });
  return row;
}

/** The documents of a case, newest first. */
export async function readDocuments(db: Db, caseId: string): Promise<DocumentRow[]> {
  const rows = await db
    .selectFrom("documents")
    .select("row")
    .where("caseId", "=", caseId)
    .orderBy("at", "desc")
    .orderBy("id")
    .execute();
  return rows.map(({ row }) => fromJsonText(row) as DocumentRow);
}

/**
 * One document with its bytes.
 * @throws Refusal `record.notFound`, `file.missing`, `store.corrupt`
 */
export async function readDocument(db: Db, home: string, id: string): Promise<{ row: DocumentRow; bytes: Uint8Array }> {
  const found = await db.selectFrom("documents").select("row").where("id", "=", id).executeTakeFirst();
  if (found === undefined)
    throw new Refusal("record.notFound", `Cannot open document ${id}: there is no such document`, { id });
  const row = fromJsonText(found.row) as DocumentRow;
  return { row, bytes: await readChecked(home, documentPath(row.sha256), row.sha256) };
}
