import Database from "libsql";
import { expect, test } from "vitest";
import { newCase, put, recording, remove } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { visitWithFiles } from "../../test/samples/visit-with-files.ts";
import { ledgerEntryId } from "../core/ids.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";
import type { Recording, Store } from "./store.ts";

const use = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" } as const;
const file = { id: "file-1", label: "S1" };
const visit = visitWithFiles("2026-03-01", [
  { ...use, canal: "MB1", rpm: 300, seconds: 20, file },
  { ...use, canal: "P", rpm: 300, seconds: 30 },
  { ...use, canal: "P", file },
]);

async function withVisit(store: Store, caseId: string, demo = false): Promise<void> {
  await store.createCase(caseId, newCase({ demo }), recording);
  await store.record(caseId, put("visit-1", "visit", 0, visit), recording);
}

/** 300 turns a minute for 20 s are 100 turns; a row without its time counts no turn, and one without a file is not there. */
const expected = [
  {
    visitId: "visit-1",
    row: 0,
    fileId: "file-1",
    on: "2026-03-01",
    canal: "MB1",
    seconds: 20,
    turnsNet: 100,
    turnsSwept: 100,
  },
  {
    visitId: "visit-1",
    row: 2,
    fileId: "file-1",
    on: "2026-03-01",
    canal: "P",
    seconds: null,
    turnsNet: null,
    turnsSwept: null,
  },
];

test("uses of counted files are noted with the visit, follow undo, and go with the visit and the case", async () => {
  const { store } = await openStore(temporaryFolder());
  await withVisit(store, "case-1");
  await withVisit(store, "case-2", true);
  const all = [
    ...expected.map((one) => ({ caseId: "case-1", demo: false, ...one })),
    ...expected.map((one) => ({ caseId: "case-2", demo: true, ...one })),
  ];
  expect(await store.fileUses()).toEqual(all);
  await store.record("case-1", remove("visit-1", "visit", 1), recording);
  expect(await store.fileUses()).toEqual(all.slice(2));
  await store.undo("case-1", recording);
  expect(await store.fileUses()).toEqual(all);
  expect(await store.verify()).toEqual([]);
  await store.removeCase("case-2", recording);
  expect(await store.fileUses()).toEqual(all.slice(0, 2));
  expect(await store.verify()).toEqual([]);
  await store.close();
});

test.each([
  ["changed", "UPDATE file_uses SET turns_net = 1", ["facts"]],
  ["left out", "DELETE FROM file_uses", ["facts"]],
  ["of a case that is not there", "UPDATE file_uses SET case_id = 'case-9'", ["facts", "chain"]],
])("a use that was %s behind the program's back is found", async (_, statement, what) => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await withVisit(store, "case-1");
  await store.close();
  const database = new Database(databaseFile(home));
  database.exec(statement);
  database.close();
  const { store: again } = await openStore(home);
  expect((await again.verify()).map((fault) => fault.what)).toEqual(what);
  await again.close();
});

test("uses are worked out anew at the next start where another version of the program wrote them", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await withVisit(store, "case-1");
  await store.close();
  const database = new Database(databaseFile(home));
  database.exec("DELETE FROM file_uses");
  database.exec("UPDATE meta SET value = '1' WHERE name = 'factsVersion'");
  database.close();
  const { store: again } = await openStore(home);
  expect(await again.fileUses()).toHaveLength(2);
  await again.close();
});

test("entries of one topic are read of cases that used a counted file, as they hold now", async () => {
  const { store } = await openStore(temporaryFolder());
  const entry = (caseId: string, topic: string, id: string) => ({
    ...{ caseId: caseId as never, id: ledgerEntryId(id.repeat(64)), subject: `${topic} of file file-1`, topic },
    ...{ topicVersion: 1, input: {}, inputPaths: [], output: { is: id }, at: recording.at },
  });
  let told = "1";
  const deriving: Recording = {
    ...recording,
    deriveLedger: ({ caseId }) => [entry(caseId, "lifeUsed", told), entry(caseId, "bend", "b")],
  };
  await store.createCase("case-1", newCase(), deriving);
  expect(await store.entriesOfFileUsers("lifeUsed")).toEqual([]);
  told = "2";
  await store.record("case-1", put("visit-1", "visit", 0, visit), deriving);
  expect((await store.entriesOfFileUsers("lifeUsed")).map(({ output }) => output)).toEqual([{ is: "2" }]);
  await store.close();
});
