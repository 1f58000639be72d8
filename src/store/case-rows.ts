import { caseId as named } from "../core/ids.ts";
import { Refusal } from "../core/refusal.ts";
import type { Change } from "../record/change.ts";
import { factsOf } from "../record/facts.ts";
import type { Standing } from "../record/standing.ts";
import { changeFromRow, changeToRow, factsToRow, partFromRow, partToRow } from "./column-codecs.ts";
import type { Db } from "./dialect.ts";
import { writeDue } from "./due-rows.ts";
import { writeFileUses } from "./file-use-rows.ts";
import { inPortions } from "./in-portions.ts";

/**
 * Where a case stands now.
 * @throws Refusal `record.notFound`
 */
export async function readStanding(db: Db, caseId: string): Promise<Standing> {
  const standing = await findStanding(db, caseId);
  if (standing !== undefined) return standing;
  throw new Refusal("record.notFound", `Cannot open case ${caseId}: there is no such case`, { caseId });
}

/** Where a case stands now, or undefined where there is no such case. */
export async function findStanding(db: Db, caseId: string): Promise<Standing | undefined> {
  const head = await db
    .selectFrom("changes")
    .select(["sequence", "hash"])
    .where("caseId", "=", caseId)
    .orderBy("sequence", "desc")
    .limit(1)
    .executeTakeFirst();
  if (head === undefined) return undefined;
  const rows = await db.selectFrom("parts").selectAll().where("caseId", "=", caseId).orderBy("place").execute();
  const counted = await db
    .selectFrom("partRevisions")
    .select(["id", "revision"])
    .where("caseId", "=", caseId)
    .execute();
  return {
    caseId: named(caseId),
    sequence: head.sequence,
    headHash: head.hash,
    parts: rows.map(partFromRow),
    revisions: new Map(counted.map(({ id, revision }) => [id, revision])),
  };
}

/** The chain of a case up to a change, first change first; all of it by default. */
export async function readChanges(db: Db, caseId: string, upTo = Number.MAX_SAFE_INTEGER): Promise<Change[]> {
  const rows = await db
    .selectFrom("changes")
    .selectAll()
    .where("caseId", "=", caseId)
    .where("sequence", "<=", upTo)
    .orderBy("sequence")
    .execute();
  return rows.map(changeFromRow);
}

/**
 * Writes new links of a chain and where the case stands after them: parts, their counts, the films named, and facts.
 * Called inside a transaction.
 */
export async function writeChanges(db: Db, changes: readonly Change[], after: Standing): Promise<void> {
  await inPortions(changes.map(changeToRow), (rows) => db.insertInto("changes").values(rows).execute());
  await writeParts(db, new Set(changes.flatMap(({ patches }) => patches.map(({ id }) => id))), after);
  await writeFilmUses(db, after.caseId, changes);
  await writeFacts(db, after);
}

async function writeParts(db: Db, touched: ReadonlySet<string>, { caseId, parts, revisions }: Standing): Promise<void> {
  const ids = [...touched];
  const places = await placesOf(
    db,
    caseId,
    ids,
    parts.map(({ id }) => id),
  );
  await inPortions(ids, (some) =>
    db.deleteFrom("parts").where("caseId", "=", caseId).where("id", "in", some).execute(),
  );
  const rows = parts.flatMap((part) =>
    touched.has(part.id) ? [partToRow(caseId, part, places.get(part.id) ?? 0)] : [],
  );
  await inPortions(rows, (some) => db.insertInto("parts").values(some).execute());
  const counted = ids.map((id) => ({ caseId, id, revision: revisions.get(id) ?? 0 }));
  await inPortions(counted, (some) =>
    db
      .insertInto("partRevisions")
      .values(some)
      .onConflict((it) =>
        it.columns(["caseId", "id"]).doUpdateSet((set) => ({ revision: set.ref("excluded.revision") })),
      )
      .execute(),
  );
}

/** A part keeps its place while it stands; one that comes (back) is placed after all others. */
async function placesOf(db: Db, caseId: string, touched: readonly string[], order: readonly string[]) {
  const rows = await db.selectFrom("parts").select(["id", "place"]).where("caseId", "=", caseId).execute();
  const places = new Map(rows.map(({ id, place }) => [id, place]));
  const last = Math.max(0, ...places.values());
  const coming = order.filter((id) => touched.includes(id) && !places.has(id));
  coming.forEach((id, index) => {
    places.set(id, last + 1 + index);
  });
  return places;
}

async function writeFilmUses(db: Db, caseId: string, changes: readonly Change[]): Promise<void> {
  const hashes = filmsNamedBy(changes);
  await checkFilmsAreKept(db, hashes);
  await inPortions(
    hashes.map((hash) => ({ caseId, hash })),
    (rows) =>
      db
        .insertInto("filmUses")
        .values(rows)
        .onConflict((it) => it.columns(["caseId", "hash"]).doNothing())
        .execute(),
  );
}

/** Hashes of the films that changes bring in; a film stays named by the history even where its part was removed. */
export function filmsNamedBy(changes: readonly Change[]): string[] {
  const named = changes.flatMap(({ patches }) =>
    patches.flatMap(({ kind, after }) => (kind === "film" && after !== null && "hash" in after ? [after.hash] : [])),
  );
  return [...new Set(named)].sort();
}

async function checkFilmsAreKept(db: Db, hashes: readonly string[]): Promise<void> {
  if (hashes.length === 0) return;
  const kept = await db.selectFrom("films").select("hash").where("hash", "in", hashes).execute();
  const missing = hashes.filter((hash) => !kept.some((film) => film.hash === hash));
  if (missing.length > 0)
    throw new Refusal("file.missing", "Cannot record a film whose pixels are not kept: import its file first", {
      missing,
    });
}

/**
 * Writes the facts of a case, the uses of counted files in it and what it owes, anew from its parts.
 * @throws Refusal `input.impossible` when no part says which tooth of whom it is
 */
export async function writeFacts(db: Db, { caseId, parts }: Pick<Standing, "caseId" | "parts">): Promise<void> {
  const facts = factsOf(caseId, parts);
  if (facts === undefined)
    throw new Refusal(
      "input.impossible",
      `Cannot record case ${caseId}: nothing says which tooth of whom it is; put a part of kind case first`,
    );
  await db.deleteFrom("caseFacts").where("caseId", "=", caseId).execute();
  await db.insertInto("caseFacts").values(factsToRow(facts)).execute();
  await writeFileUses(db, { caseId, parts });
  await writeDue(db, { caseId, parts });
}
