import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { expect, test } from "vitest";
import { filmBody, newCase, put, recording } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { ledgerEntryId } from "../core/ids.ts";
import { firstSettings } from "../record/settings.ts";
import { documentPath, filmPath, sha256Of } from "./kept-files.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";
import type { DeriveLedger, StoreFault } from "./store.ts";

const film = Buffer.from("a film");
const deck = Buffer.from("a deck");
const derive: DeriveLedger = ({ caseId }) => [
  {
    ...{
      id: ledgerEntryId("1".repeat(64)),
      caseId,
      subject: "tooth",
      topic: "tooth",
      topicVersion: 1,
      input: { tooth: "26" },
    },
    ...{ inputPaths: [], output: { name: "upper left first molar" }, at: "2026-03-01T09:30:00Z" },
  },
];

const exercise = {
  ...{
    id: "exercise-1",
    kind: "clicks" as const,
    who: "A. Writer",
    begunAt: recording.at,
    seed: 5,
    marks: [],
    films: "0".repeat(64),
  },
};

/** A closed home with a row in every table. */
async function filledHome(): Promise<string> {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  const deriving = { ...recording, deriveLedger: derive };
  const clickSigmaFrom = { exerciseId: exercise.id, at: recording.at, n: 120 };
  await store.writeSettings({ ...firstSettings, who: "A. Writer", clickSigmaFrom });
  await store.beginExercise(exercise);
  await store.createCase("case-0", newCase(), deriving);
  await store.removeCase("case-0", recording);
  await store.createCase("case-1", newCase(), deriving);
  await store.record("case-1", put("film-1", "film", 0, filmBody(await store.keepFilm(film))), deriving);
  const about = { id: "deck-1", caseId: "case-1", as: "deck" as const, fileName: "deck.pptx", at: recording.at };
  await store.keepDocument({ ...about, who: "", sequence: 2, numbers: [] }, deck);
  await store.close();
  return home;
}

async function faultsOf(home: string): Promise<StoreFault[]> {
  const { store } = await openStore(home);
  const faults = await store.verify();
  await store.close();
  return faults;
}

function change(home: string, ...statements: string[]): void {
  const database = new Database(databaseFile(home));
  for (const statement of statements) database.exec(statement);
  database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
  database.close();
}

test("what is whole has no faults, and progress ends at its end", async () => {
  const home = await filledHome();
  const { store } = await openStore(home);
  const heard: [number, number][] = [];
  expect(await store.verify((done, all) => heard.push([done, all]))).toEqual([]);
  expect(heard.at(-1)?.[0]).toBe(heard.at(-1)?.[1]);
  await store.close();
});

const inOne = (table: string, column: string, from: string, to: string): string =>
  `UPDATE ${table} SET ${column} = replace(${column}, '${from}', '${to}')`;
test.each([
  ["changes: patches", inOne("changes", "patches", "retreatment", "retreatmenu"), "chain"],
  ["changes: words", inOne("changes", "words", "film", "filn"), "chain"],
  ["changes: who", inOne("changes", "who", "Writer", "Writes"), "chain"],
  ["changes: at", inOne("changes", "at", "2026", "2027"), "chain"],
  ["changes: hash", inOne("changes", "hash", "a", "b"), "chain"],
  ["changes: a link left out", "DELETE FROM changes WHERE sequence = 1", "chain"],
  ["changes: the last link left out", "DELETE FROM changes WHERE sequence = 2", "state"],
  ["parts: body", inOne("parts", "body", "dull", "full"), "state"],
  ["parts: not JSON", "UPDATE parts SET body = '{'", "state"],
  ["parts: revision", "UPDATE parts SET revision = revision + 1", "state"],
  ["parts: one left out", "DELETE FROM parts WHERE kind = 'film'", "state"],
  ["part_revisions", "UPDATE part_revisions SET revision = 9", "state"],
  ["case_facts", "UPDATE case_facts SET birth_year = 1968", "facts"],
  ["case_facts: left out", "DELETE FROM case_facts", "facts"],
  ["film_uses", "DELETE FROM film_uses", "film"],
  ["films: kept_at", inOne("films", "kept_at", "20", "21"), "film"],
  ["films: bytes", "UPDATE films SET bytes = bytes + 1", "film"],
  ["documents", inOne("documents", "row", "deck.pptx", "deck.pptz"), "document"],
  ["ledger_entries: output", inOne("ledger_entries", "output", "upper", "lower"), "ledger"],
  ["ledger_entries: input", inOne("ledger_entries", "input", "26", "27"), "ledger"],
  ["ledger_current", "UPDATE ledger_current SET place = 3", "ledger"],
  ["settings", inOne("settings", "value", "Writer", "Writes"), "settings"],
  ["exercises", inOne("exercises", "row", "Writer", "Writes"), "exercise"],
  ["exercises: the one that the settings name left out", "DELETE FROM exercises", "settings"],
  ["tombstones", inOne("tombstones", "who", "Writer", "Writes"), "tombstone"],
  ["meta", "UPDATE meta SET value = '9' WHERE name = 'tablesVersion'", "schema"],
])("a change behind the program's back is found in %s", async (_, statement, what) => {
  const home = await filledHome();
  change(home, "PRAGMA foreign_keys=OFF", statement);
  expect((await faultsOf(home)).map((fault) => fault.what)).toContain(what);
});

test("rows of a case that has no chain are found", async () => {
  const home = await filledHome();
  change(home, "INSERT INTO part_revisions VALUES ('case-9', 'about', 1)");
  expect(await faultsOf(home)).toEqual([{ what: "chain", where: "case-9", says: "rows stand without a chain" }]);
});

test.each([
  ["film", filmPath(sha256Of(film)), filmPath(sha256Of(film))],
  ["document", documentPath(sha256Of(deck)), "deck-1"],
] as const)(
  "a flipped byte in a %s, a missing one and an orphan are found; reading refuses",
  async (what, path, where) => {
    const home = await filledHome();
    const file = join(home, path);
    const bytes = readFileSync(file);
    writeFileSync(file, Buffer.concat([Buffer.from("A"), bytes.subarray(1)]));
    expect(await faultsOf(home)).toEqual([{ what, where, says: "its file has changed" }]);
    const { store } = await openStore(home);
    const read = what === "film" ? store.readFilm(sha256Of(film)) : store.readDocument("deck-1");
    await expect(read).rejects.toMatchObject({ code: "store.corrupt" });
    rmSync(file);
    const missing = what === "film" ? store.readFilm(sha256Of(film)) : store.readDocument("deck-1");
    await expect(missing).rejects.toMatchObject({ code: "file.missing" });
    await store.close();
    expect(await faultsOf(home)).toEqual([{ what, where, says: "its file is missing or can't be read" }]);
    writeFileSync(file, bytes);
    const orphan = path.replace(/.$/, "Z");
    writeFileSync(join(home, orphan), "x");
    expect(await faultsOf(home)).toEqual([{ what, where: orphan, says: "a file that no row names" }]);
  },
);

test("facts of another version of the program are worked out anew at the next start", async () => {
  const home = await filledHome();
  change(home, "UPDATE case_facts SET birth_year = 1968", "UPDATE meta SET value = '0' WHERE name = 'factsVersion'");
  const { store } = await openStore(home);
  expect((await store.cases()).map(({ birthYear }) => birthYear)).toEqual([1969]);
  await store.close();
});
