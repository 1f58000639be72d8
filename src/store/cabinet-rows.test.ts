import { join } from "node:path";
import fc from "fast-check";
import Database from "libsql";
import { expect, test } from "vitest";
import { cabinetBodies, putItem, removeItem } from "../../test/samples/cabinet.ts";
import { recording } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { hashOf } from "../record/canonical-json.ts";
import { backup, restore } from "./backup.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";
import type { CabinetState, Store } from "./store.ts";

const shaper = putItem("shaper", "instrument");

async function filled(store: Store): Promise<CabinetState> {
  await store.recordInCabinet(shaper, recording);
  await store.recordInCabinet(putItem("file-1", "file"), recording);
  return store.recordInCabinet(putItem("usual", "sequence"), recording);
}

test("what is put stands with its revision, in the order in which it came, after a new start and in a restored backup", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  expect(await store.cabinet()).toEqual({ sequence: 0, headHash: "0".repeat(64), items: [] });
  await filled(store);
  const state = await store.recordInCabinet(putItem("shaper", "instrument", 1, { rpm: 250 }), recording);
  expect(state.items.map(({ id, revision }) => [id, revision])).toEqual([
    ["shaper", 2],
    ["file-1", 1],
    ["usual", 1],
  ]);
  expect(state.items[0]?.body).toEqual({ ...cabinetBodies.instrument, rpm: 250 });
  const [first] = await store.cabinetChanges();
  expect(first).toMatchObject({ sequence: 1, who: recording.who, at: recording.at, words: "shaper put" });
  await store.close();
  const { store: again } = await openStore(home);
  expect(await again.cabinet()).toEqual(state);
  expect(await again.verify()).toEqual([]);
  await again.close();
  const [file, other] = [join(temporaryFolder(), "all.zip"), join(temporaryFolder(), "other")];
  await backup(home, file);
  await restore(file, other);
  const { store: restored } = await openStore(other);
  expect(await restored.cabinet()).toEqual(state);
  await restored.close();
});

test("a material and a template of it stand after a new start; undo takes the template back, and the chain holds", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await store.recordInCabinet(putItem("bleach", "stock"), recording);
  await store.recordInCabinet(putItem("first", "template"), recording);
  await expect(store.recordInCabinet(removeItem("bleach", "stock", 1), recording)).rejects.toMatchObject({
    code: "input.impossible",
    faults: [{ path: "operations[0].id", says: "bleach is still named by template First visit" }],
  });
  await store.undoInCabinet(recording);
  const redone = await store.redoInCabinet(recording);
  expect(redone.items.map(({ id, kind, body }) => [id, kind, body])).toEqual([
    ["bleach", "stock", cabinetBodies.stock],
    ["first", "template", cabinetBodies.template],
  ]);
  await store.close();
  const { store: again } = await openStore(home);
  expect(await again.cabinet()).toEqual(redone);
  expect(await again.verify()).toEqual([]);
  await again.close();
});

test("a change of what somebody else has changed is a conflict with both versions, and nothing is lost", async () => {
  const { store } = await openStore(temporaryFolder());
  await filled(store);
  const mine = putItem("shaper", "instrument", 1, { rpm: 250 });
  const theirs = putItem("shaper", "instrument", 1, { rpm: 400 });
  const both = await Promise.allSettled([
    store.recordInCabinet(theirs, recording),
    store.recordInCabinet(mine, recording),
  ]);
  expect(both.map(({ status }) => status)).toEqual(["fulfilled", "rejected"]);
  await expect(store.recordInCabinet(mine, recording)).rejects.toMatchObject({
    code: "record.conflict",
    facts: { conflicts: [{ id: "shaper", yours: { rpm: 250 }, theirs: { revision: 2, body: { rpm: 400 } } }] },
  });
  const put = store.recordInCabinet(putItem("shaper", "instrument", 0), recording);
  await expect(put).rejects.toMatchObject({ code: "record.conflict" });
  await expect(store.recordInCabinet(removeItem("none", "file", 1), recording)).rejects.toMatchObject({
    facts: { conflicts: [{ id: "none", yours: null, theirs: null }] },
  });
  expect((await store.cabinet()).sequence).toBe(4);
  await store.close();
});

test("a gesture that changes nothing leaves no link", async () => {
  const { store } = await openStore(temporaryFolder());
  await filled(store);
  expect((await store.recordInCabinet(putItem("shaper", "instrument", 1), recording)).sequence).toBe(3);
  await store.close();
});

test("undo and redo are new changes; an undo of a change that is not at the top any more is a conflict", async () => {
  const { store } = await openStore(temporaryFolder());
  await expect(store.undoInCabinet(recording)).rejects.toMatchObject({ code: "record.nothingToUndo" });
  await filled(store);
  const changed = await store.recordInCabinet(removeItem("usual", "sequence", 1), recording);
  const undone = await store.undoInCabinet(recording, 4);
  expect(undone.items.map(({ id, revision }) => [id, revision]).at(-1)).toEqual(["usual", 3]);
  await expect(store.undoInCabinet(recording, 4)).rejects.toMatchObject({ code: "record.conflict" });
  const redone = await store.redoInCabinet(recording, 5);
  expect(redone.items).toEqual(changed.items);
  expect((await store.cabinetChanges()).map(({ words, inverts }) => [words, inverts]).slice(3)).toEqual([
    ["usual removed", undefined],
    ["Undo: usual removed", 4],
    ["Redo: usual removed", 5],
  ]);
  await expect(store.redoInCabinet(recording)).rejects.toMatchObject({ code: "record.nothingToUndo" });
  expect(await store.verify()).toEqual([]);
  await store.close();
});

const step = fc.record({
  what: fc.constantFrom("put", "put", "remove", "undo", "redo"),
  number: fc.integer({ min: 1, max: 3 }),
  note: fc.string({ unit: "binary", maxLength: 8 }),
});
const bare = ({ items }: CabinetState): string =>
  hashOf(items.map(({ id, kind, body }) => ({ id, kind, body })).sort(byId));
const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);

test("after any gestures: undoing all gives the empty cabinet, redoing all gives the end, and the chain gives what stands", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 14 }), async (steps) => {
      const { store } = await openStore(temporaryFolder());
      for (const { what, number, note } of steps) {
        const id = `instrument-${number}`;
        const revision = (await store.cabinet()).items.find((item) => item.id === id)?.revision ?? 0;
        if (what === "put") await store.recordInCabinet(putItem(id, "instrument", revision, { note }), recording);
        else if (what === "undo") await store.undoInCabinet(recording).catch(() => undefined);
        else if (what === "redo") await store.redoInCabinet(recording).catch(() => undefined);
        else if (revision > 0) await store.recordInCabinet(removeItem(id, "instrument", revision), recording);
      }
      expect(await store.verify()).toEqual([]);
      while ((await store.redoInCabinet(recording).catch(() => undefined)) !== undefined);
      const end = bare(await store.cabinet());
      let undone = 0;
      while ((await store.undoInCabinet(recording).catch(() => undefined)) !== undefined) undone += 1;
      expect((await store.cabinet()).items).toEqual([]);
      for (let index = 0; index < undone; index += 1) await store.redoInCabinet(recording);
      expect(bare(await store.cabinet())).toBe(end);
      expect(await store.verify()).toEqual([]);
      await store.close();
    }),
    { numRuns: 15 },
  );
});

const inOne = (table: string, column: string, from: string, to: string): string =>
  `UPDATE ${table} SET ${column} = replace(${column}, '${from}', '${to}')`;
test.each([
  ["patches of a change", inOne("cabinet_changes", "patches", "Rotary", "Rotars"), "does not follow"],
  ["who made it", inOne("cabinet_changes", "who", "Writer", "Writes"), "does not follow"],
  ["the first link left out", "DELETE FROM cabinet_changes WHERE sequence = 1", "does not follow"],
  ["the last link left out", "DELETE FROM cabinet_changes WHERE sequence = 3", "differs from its chain"],
  ["an item", inOne("cabinet_items", "body", "Rotary", "Rotars"), "differs from its chain"],
  ["an item that is no JSON", "UPDATE cabinet_items SET body = '{'", "can't be read"],
  ["an item of another form", "UPDATE cabinet_items SET body = '{}'", "has faults"],
  ["an item of a newer program", "UPDATE cabinet_items SET version = 2", "newer program"],
  ["a count of changes", "UPDATE cabinet_items SET revision = 9 WHERE id = 'usual'", "differs from its chain"],
])("a change behind the program's back is found in %s", async (_, statement, says) => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await filled(store);
  await store.close();
  const database = new Database(databaseFile(home));
  database.exec(statement);
  database.close();
  const { store: again } = await openStore(home);
  const faults = await again.verify();
  await again.close();
  expect(faults).toMatchObject([{ what: "cabinet", where: "cabinet" }]);
  expect(faults[0]?.says).toContain(says);
});
