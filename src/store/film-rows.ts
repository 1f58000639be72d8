import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { type FilmHash, filmHash } from "../core/ids.ts";
import { Refusal } from "../core/refusal.ts";
import { sealOf } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import { filmPath, isKept, sha256Of, writeKeptFile } from "./kept-files.ts";

/**
 * Keeps a film's bytes once, by content; gives their SHA-256. The row is written after the file has reached the disk, so
 * that no row ever names a file that is not there; until then the file is noted as unfinished.
 */
export async function keepFilm(db: Db, home: string, bytes: Uint8Array): Promise<FilmHash> {
  const hash = filmHash(sha256Of(bytes));
  const path = filmPath(hash);
  const known = await db.selectFrom("films").select("hash").where("hash", "=", hash).executeTakeFirst();
  if (known !== undefined && (await isKept(home, path, bytes.length))) return hash;
  await noteUnfinished(db, [path]);
  await writeKeptFile(home, path, bytes);
  await db.transaction().execute(async (trx) => {
    const row = { hash, bytes: bytes.length, keptAt: new Date().toISOString() };
    await trx
      .insertInto("films")
      .values({ ...row, seal: sealOf(row) })
      .onConflict((it) => it.column("hash").doNothing())
      .execute();
    await trx.deleteFrom("unfinishedFiles").where("path", "=", path).execute();
  });
  return hash;
}

/** Notes files that are about to be written or taken away, so that a start after a crash can finish the work. */
export async function noteUnfinished(db: Db, paths: readonly string[]): Promise<void> {
  if (paths.length === 0) return;
  await db
    .insertInto("unfinishedFiles")
    .values(paths.map((path) => ({ path })))
    .onConflict((it) => it.column("path").doNothing())
    .execute();
}

/**
 * The bytes of a kept film.
 * @throws Refusal `record.notFound` when no row names it, `file.missing` when its file is gone, `store.corrupt` when
 * its bytes are not those that were kept
 */
export async function readFilm(db: Db, home: string, hash: string): Promise<Uint8Array> {
  const row = await db.selectFrom("films").select("hash").where("hash", "=", hash).executeTakeFirst();
  if (row === undefined)
    throw new Refusal("record.notFound", `Cannot open film ${hash.slice(0, 12)}: no film of that hash is kept`);
  return readChecked(home, filmPath(hash), hash);
}

/**
 * The bytes of a kept file, checked against their hash.
 * @throws Refusal `file.missing`, `store.corrupt`
 */
export async function readChecked(home: string, path: string, sha256: string): Promise<Uint8Array> {
  const bytes = await readFile(join(home, path)).catch((error: unknown) => {
    if (!(error instanceof Error) || Reflect.get(error, "code") !== "ENOENT") throw error;
    throw new Refusal("file.missing", `Cannot open ${path}: the file is gone; restore a backup`, { path });
  });
  if (sha256Of(bytes) === sha256) return bytes;
  throw new Refusal("store.corrupt", `Cannot open ${path}: its bytes have changed on disk; restore a backup`, { path });
}
