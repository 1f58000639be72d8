import { expect, test, vi } from "vitest";
import { newCase, put, recording } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { ledgerEntryId, caseId as named } from "../core/ids.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { openStore } from "./open-store.ts";
import type { CaseState, DeriveLedger, LedgerGround } from "./store.ts";

const entryOf = ({ caseId, sequence }: CaseState): LedgerEntry => ({
  ...{ id: ledgerEntryId(String(sequence).padStart(64, "0")), caseId: named(caseId), subject: "length of mark-1" },
  ...{ topic: "length", topicVersion: 1, input: { sequence }, inputPaths: [], output: {}, at: recording.at },
});

/** A ledger of one entry for each change, and what was worked out inside transactions. */
function deriving(ahead: NonNullable<DeriveLedger["ahead"]>) {
  const inside: number[] = [];
  const derive = (state: CaseState, { known }: LedgerGround) => {
    const entry = entryOf(state);
    if (known(entry.id) === undefined) inside.push(state.sequence);
    return [known(entry.id) ?? entry];
  };
  return { inside, recording: { ...recording, deriveLedger: Object.assign(derive, { ahead }) } };
}

test("what is worked out ahead is known inside and stored; ahead is what will stand", async () => {
  const { store } = await openStore(temporaryFolder());
  const foreseen = vi.fn(async (state: CaseState) => [entryOf(state)]);
  const { inside, recording: how } = deriving(foreseen);
  await store.createCase("case-1", newCase(), how);
  const state = await store.record("case-1", put("about", "case", 1, { ...newBody(), complaint: "none" }), how);
  await store.undo("case-1", how);
  await store.redo("case-1", how);
  await store.refreshLedger("case-1", how.deriveLedger);
  expect(inside).toEqual([]);
  expect(foreseen.mock.calls.map(([{ sequence }]) => sequence)).toEqual([1, 2, 3, 4, 4]);
  expect(foreseen.mock.calls[1]?.[0]).toEqual(state);
  expect((await store.keptLedger("case-1")).length).toBe(4);
  expect(await store.verify()).toEqual([]);
  await store.close();
});

test("where working out ahead fails, it is worked out inside", async () => {
  const { store } = await openStore(temporaryFolder());
  const { inside, recording: how } = deriving(() => Promise.reject(new Error("no thread")));
  await store.createCase("case-1", newCase(), how);
  expect(inside).toEqual([1]);
  expect((await store.ledger("case-1")).length).toBe(1);
  await store.close();
});

test("what is refused is refused before anything is worked out", async () => {
  const { store } = await openStore(temporaryFolder());
  const foreseen = vi.fn(async () => []);
  const { recording: how } = deriving(foreseen);
  await expect(store.record("case-1", newCase(), how)).rejects.toMatchObject({ code: "record.notFound" });
  await store.createCase("case-1", newCase(), how);
  await expect(store.createCase("case-1", newCase(), how)).rejects.toMatchObject({ code: "record.conflict" });
  await expect(store.record("case-1", put("about", "case", 7, newBody()), how)).rejects.toMatchObject({
    code: "record.conflict",
  });
  await expect(store.undo("case-1", how)).rejects.toMatchObject({ code: "record.nothingToUndo" });
  expect(foreseen).toHaveBeenCalledTimes(1);
  await store.close();
});

test("writes to one case follow each other, those to another do not wait, and closing waits for all", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  let letGo: (() => void) | undefined;
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await store.createCase("case-1", newCase(), recording);
  const { recording: slow } = deriving(async () => held.then(() => []));
  const order: string[] = [];
  const noting = (what: string) => () => order.push(what);
  const first = store.record("case-1", put("about", "case", 1, { ...newBody(), complaint: "a" }), slow);
  const second = store.record("case-1", put("about", "case", 2, { ...newBody(), complaint: "b" }), recording);
  await store.createCase("case-2", newCase(), recording).then(noting("another case"));
  const closed = store.close().then(noting("closed"));
  letGo?.();
  await Promise.all([first.then(noting("first")), second.then(noting("second")), closed]);
  expect(order).toEqual(["another case", "first", "second", "closed"]);
  const { store: again } = await openStore(home);
  expect((await again.readCase("case-1")).sequence).toBe(3);
  await again.close();
});

const newBody = () => {
  const [operation] = newCase().operations;
  return operation?.op === "put" ? (operation.body as object) : {};
};
