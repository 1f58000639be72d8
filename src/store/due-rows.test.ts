import Database from "libsql";
import { expect, test } from "vitest";
import { recall, visit } from "../../scripts/demo/cases/usual-bodies.ts";
import { newCase, put, recording, remove } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";
import type { Store } from "./store.ts";

const body = visit({
  ...{ on: "2026-03-01", aim: "Shaping", nextOn: "2026-03-15", painAfter24h: 1 },
  medicament: { kind: "calciumHydroxide", changeBy: "2026-03-20" },
});

async function withVisit(store: Store, caseId: string, about: object = {}): Promise<void> {
  await store.createCase(caseId, newCase(about), recording);
  await store.record(caseId, put("visit-1", "visit", 0, body), recording);
}

const today = "2026-03-02";
const short = async (store: Store, asked: { today: string; until?: string }) =>
  (await store.due(asked)).map(({ caseId, kind, on }) => `${caseId} ${kind} ${on}`);

test("what is due stands with the gesture, over all cases by day, and follows undo, removal and the case's end", async () => {
  const { store } = await openStore(temporaryFolder());
  await withVisit(store, "case-2", { demo: true, pseudonym: "P-2", tooth: "36" });
  await withVisit(store, "case-1");
  const all = [
    ...["case-1 painAfterWeek 2026-03-08", "case-2 painAfterWeek 2026-03-08"],
    ...["case-1 visit 2026-03-15", "case-2 visit 2026-03-15"],
    ...["case-1 medicament 2026-03-20", "case-2 medicament 2026-03-20"],
  ];
  expect(await short(store, { today })).toEqual(all);
  expect((await store.due({ today }))[1]).toEqual({
    ...{ caseId: "case-2", partId: "visit-1", kind: "painAfterWeek", on: "2026-03-08", revision: 1 },
    ...{ pseudonym: "P-2", tooth: "36", demo: true },
  });
  await store.record("case-2", put("visit-1", "visit", 1, { ...body, painAfter7d: 0 }), recording);
  expect((await store.due({ today })).filter(({ caseId }) => caseId === "case-2").map((one) => one.revision)).toEqual([
    2, 2,
  ]);
  await store.undo("case-2", recording);
  expect(await short(store, { today })).toEqual(all);
  await store.record("case-1", remove("visit-1", "visit", 1), recording);
  expect(await short(store, { today })).toEqual(all.filter((one) => one.startsWith("case-2")));
  await store.undo("case-1", recording);
  const lost = recall({ on: "2026-03-03", retained: "lost" });
  await store.record("case-1", put("recall-1", "recall", 0, lost), recording);
  expect(await short(store, { today })).toEqual(all.filter((one) => one.startsWith("case-2")));
  expect(await store.verify()).toEqual([]);
  await store.removeCase("case-2", recording);
  expect(await store.due({ today })).toEqual([]);
  expect(await store.verify()).toEqual([]);
  await store.close();
});

test("a last day is within, and pain is asked about to the 31st day after the visit and not on the 32nd", async () => {
  const { store } = await openStore(temporaryFolder());
  await withVisit(store, "case-1");
  const kinds = async (asked: { today: string; until?: string }) => (await store.due(asked)).map(({ kind }) => kind);
  expect(await kinds({ today, until: "2026-03-07" })).toEqual([]);
  expect(await kinds({ today, until: "2026-03-08" })).toEqual(["painAfterWeek"]);
  expect(await kinds({ today, until: "2026-03-15" })).toEqual(["painAfterWeek", "visit"]);
  expect(await kinds({ today: "2026-04-01" })).toEqual(["painAfterWeek", "visit", "medicament"]);
  expect(await kinds({ today: "2026-04-02" })).toEqual(["visit", "medicament"]);
  await store.close();
});

test.each([
  ["changed", "UPDATE due_things SET day = '2030-01-01' WHERE kind = 'visit'", ["facts"]],
  ["left out", "DELETE FROM due_things WHERE kind = 'medicament'", ["facts"]],
  ["asked for longer", "UPDATE due_things SET asked_until = NULL", ["facts"]],
  ["of a case that is not there", "UPDATE due_things SET case_id = 'case-9'", ["facts", "chain"]],
])("a thing that was %s behind the program's back is found", async (_, statement, what) => {
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

test("what is due is worked out at the next start where an earlier version of the program wrote the facts", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await withVisit(store, "case-1");
  await store.close();
  const database = new Database(databaseFile(home));
  database.exec("DELETE FROM due_things");
  database.exec("UPDATE meta SET value = '2' WHERE name = 'factsVersion'");
  database.close();
  const { store: again } = await openStore(home);
  expect(await again.due({ today })).toHaveLength(3);
  await again.close();
});
