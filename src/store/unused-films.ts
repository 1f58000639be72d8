import { filmsNamedBy, readChanges } from "./case-rows.ts";
import type { Db } from "./dialect.ts";
import { noteUnfinished } from "./film-rows.ts";
import { filmPath } from "./kept-files.ts";
import type { UnusedFilm } from "./store.ts";
import { finishFiles } from "./unfinished-files.ts";

/**
 * The kept films that no change of any case ever named: what an import left that was refused or cut short after its pixels
 * were kept. A film whose part was removed is still named, by the history, and an undo may bring it back. Oldest first.
 */
export async function unusedFilms(db: Db): Promise<UnusedFilm[]> {
  const named = await everNamed(db);
  const films = await db.selectFrom("films").select(["hash", "bytes", "keptAt"]).orderBy("keptAt").execute();
  return films.filter(({ hash }) => !named.has(hash));
}

/**
 * Takes the unused films away, rows first and then files, so that a crash in between is finished by the next start.
 * Only for the holder of the home: elsewhere an import may be between keeping its film and naming it. Gives what was
 * taken away.
 */
export async function removeUnusedFilms(db: Db, home: string): Promise<UnusedFilm[]> {
  const { unused, paths } = await db.transaction().execute(async (trx) => {
    const found = await unusedFilms(trx);
    for (const { hash } of found) await trx.deleteFrom("films").where("hash", "=", hash).execute();
    const gone = found.map(({ hash }) => filmPath(hash));
    await noteUnfinished(trx, gone);
    return { unused: found, paths: gone };
  });
  await finishFiles(db, home, paths);
  return unused;
}

/** Every film that a case uses or that any change says, before or after it. */
async function everNamed(db: Db): Promise<Set<string>> {
  const uses = await db.selectFrom("filmUses").select("hash").distinct().execute();
  const named = new Set(uses.map(({ hash }) => hash));
  const cases = await db.selectFrom("changes").select("caseId").distinct().execute();
  for (const { caseId } of cases) for (const hash of filmsNamedBy(await readChanges(db, caseId))) named.add(hash);
  return named;
}
