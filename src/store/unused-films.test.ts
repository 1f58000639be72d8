import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { filmBody, newCase, put, recording } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { openDatabase } from "./dialect.ts";
import { filmPath } from "./kept-files.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";

const bytes = (text: string) => new TextEncoder().encode(text);

/** A home with four films: in use, taken back by an undo, of a case that was removed, and never used. */
async function filled() {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  const keep = (text: string) => store.keepFilm(bytes(text));
  const [used, undone, removed, unused] = [await keep("a"), await keep("b"), await keep("c"), await keep("dd")];
  await store.createCase("case-1", newCase(), recording);
  await store.record("case-1", put("film-1", "film", 0, filmBody(used)), recording);
  await store.record("case-1", put("film-2", "film", 0, filmBody(undone)), recording);
  await store.undo("case-1", recording);
  await store.createCase("case-2", newCase(), recording);
  await store.record("case-2", put("film-1", "film", 0, filmBody(removed)), recording);
  await store.removeCase("case-2", recording);
  return { home, store, hashes: { used, undone, removed, unused } };
}

test("only a film that no change ever named is unused; undo and redo keep theirs", async () => {
  const { home, store, hashes } = await filled();
  expect((await store.unusedFilms()).map(({ hash, bytes: count }) => [hash, count])).toEqual([[hashes.unused, 2]]);
  expect((await store.removeUnusedFilms()).map(({ hash }) => hash)).toEqual([hashes.unused]);
  expect(existsSync(join(home, filmPath(hashes.unused)))).toBe(false);
  await expect(store.readFilm(hashes.unused)).rejects.toMatchObject({ code: "record.notFound" });
  expect(await store.unusedFilms()).toEqual([]);
  expect(await store.verify()).toEqual([]);
  await store.redo("case-1", recording);
  expect(await store.readFilm(hashes.undone)).toEqual(Buffer.from("b"));
  expect(await store.readFilm(hashes.used)).toEqual(Buffer.from("a"));
  // What was taken away can be kept again.
  expect(await store.keepFilm(bytes("dd"))).toBe(hashes.unused);
  expect(await store.verify()).toEqual([]);
  await store.close();
});

test("a film whose use is noted nowhere but in the chain is not unused", async () => {
  const { home, store, hashes } = await filled();
  await store.close();
  const database = openDatabase(databaseFile(home));
  await database.db.deleteFrom("filmUses").execute();
  await database.close();
  const { store: again } = await openStore(home);
  expect((await again.unusedFilms()).map(({ hash }) => hash)).toEqual([hashes.unused]);
  await again.close();
});

test("nothing is removed by a store that was opened beside another", async () => {
  const { home, store, hashes } = await filled();
  const { store: beside } = await openStore(home, { hold: "beside" });
  await expect(beside.removeUnusedFilms()).rejects.toMatchObject({ code: "server.alreadyRunning" });
  expect((await beside.unusedFilms()).map(({ hash }) => hash)).toEqual([hashes.unused]);
  await beside.close();
  await store.close();
});
