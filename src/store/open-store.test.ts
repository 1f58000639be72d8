import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { consentBody, filmBody, newCase, put, recording, remove, revisionIn } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { ledgerEntryId, caseId as named } from "../core/ids.ts";
import { stateHash } from "../record/change.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { firstSettings } from "../record/settings.ts";
import { filmPath, sha256Of } from "./kept-files.ts";
import { openStore } from "./open-store.ts";
import type { DeriveLedger } from "./store.ts";

async function newStore(home = temporaryFolder()) {
  const opened = await openStore(home);
  onTestFinished(() => opened.store.close());
  return { ...opened, home };
}
const pixels = (text: string): Uint8Array => new TextEncoder().encode(text);

test("a new home is made, opens with nothing recovered and nothing wrong", async () => {
  const { store, recovered, migratedCopy } = await newStore(join(temporaryFolder(), "deep", "home"));
  expect(recovered).toEqual([]);
  expect(migratedCopy).toBeUndefined();
  expect(await store.cases()).toEqual([]);
  expect(await store.verify()).toEqual([]);
});

test("settings are those before anybody changed them, then those written, also after reopening", async () => {
  const { store, home } = await newStore();
  expect(await store.settings()).toEqual(firstSettings);
  const mine = { ...firstSettings, who: "R. \ud800\u0000 O'Brien", clickSigmaPx: 1.5 };
  await store.writeSettings(mine);
  await store.close();
  const again = await newStore(home);
  expect(await again.store.settings()).toEqual(mine);
  await expect(again.store.writeSettings({ ...mine, clickSigmaPx: -1 })).rejects.toMatchObject({
    code: "input.invalid",
  });
});

test("a case is made, changed, read, read as it stood, and lists its chain", async () => {
  const { store } = await newStore();
  const made = await store.createCase("case-1", newCase(), recording);
  expect(made.sequence).toBe(1);
  const words = "Consent taken \u0000 \ud800 ü";
  const changed = await store.record(
    "case-1",
    put("consent-1", "consent", 0, consentBody("2026-02-11"), words),
    recording,
  );
  expect(changed.parts.map(({ id, revision }) => [id, revision])).toEqual([
    ["about", 1],
    ["consent-1", 1],
  ]);
  expect(await store.readCase("case-1")).toEqual(changed);
  expect(await store.readCaseAt("case-1", 1)).toEqual(made);
  expect(await store.readCaseAt("case-1", 2)).toEqual(changed);
  const chain = await store.changes("case-1");
  expect(chain.map((change) => change.words)).toEqual(["case set", words]);
  expect(chain[1]?.previousHash).toBe(chain[0]?.hash);
  expect(await store.verify()).toEqual([]);
});

test("lists read facts, newest first", async () => {
  const { store } = await newStore();
  await store.createCase("case-old", newCase({ presentedOn: "2024-01-01" }), recording);
  await store.createCase("case-new", newCase({ presentedOn: "2026-01-01", demo: true }), recording);
  const facts = await store.cases();
  expect(facts.map(({ caseId, demo, retained }) => [caseId, demo, retained])).toEqual([
    ["case-new", true, null],
    ["case-old", false, null],
  ]);
});

test("an id that is taken, no id, and a first change that says nothing of a tooth are refused", async () => {
  const { store } = await newStore();
  await store.createCase("case-1", newCase(), recording);
  await expect(store.createCase("case-1", newCase(), recording)).rejects.toMatchObject({ code: "record.conflict" });
  await expect(store.createCase("../x", newCase(), recording)).rejects.toMatchObject({ code: "input.invalid" });
  const consent = put("consent-1", "consent", 0, consentBody("2026-02-11"));
  await expect(store.createCase("case-2", consent, recording)).rejects.toMatchObject({ code: "input.impossible" });
  await expect(store.readCase("case-2")).rejects.toMatchObject({ code: "record.notFound" });
  expect(await store.verify()).toEqual([]);
});

test("what is not there is refused as not found", async () => {
  const { store } = await newStore();
  await store.createCase("case-1", newCase(), recording);
  const notFound = { code: "record.notFound" };
  await expect(store.readCaseAt("case-1", 2)).rejects.toMatchObject(notFound);
  await expect(store.readCaseAt("case-1", 0)).rejects.toMatchObject(notFound);
  await expect(store.changes("nothing")).rejects.toMatchObject(notFound);
  await expect(store.record("nothing", newCase(), recording)).rejects.toMatchObject(notFound);
  await expect(store.removeCase("nothing", recording)).rejects.toMatchObject(notFound);
  await expect(store.ledgerEntry("0".repeat(64))).rejects.toMatchObject(notFound);
  await expect(store.readFilm("0".repeat(64))).rejects.toMatchObject(notFound);
  await expect(store.readDocument("nothing")).rejects.toMatchObject(notFound);
});

test("a gesture that changes nothing leaves no link", async () => {
  const { store } = await newStore();
  const made = await store.createCase("case-1", newCase(), recording);
  const same = await store.record("case-1", put("about", "case", 1, made.parts[0]?.body), recording);
  expect(same).toEqual(made);
});

test("a part that is removed and comes back goes on counting, in the state and in the replay", async () => {
  const { store } = await newStore();
  await store.createCase("case-1", newCase(), recording);
  await store.record("case-1", put("consent-1", "consent", 0, consentBody("2026-02-11")), recording);
  await store.record("case-1", put("consent-2", "consent", 0, consentBody("2026-02-12")), recording);
  await store.record("case-1", remove("consent-1", "consent", 1), recording);
  const back = await store.record("case-1", put("consent-1", "consent", 0, consentBody("2026-02-13")), recording);
  expect(back.parts.map(({ id, revision }) => [id, revision])).toEqual([
    ["about", 1],
    ["consent-2", 1],
    ["consent-1", 3],
  ]);
  expect(await store.readCaseAt("case-1", back.sequence)).toEqual(back);
  expect(await store.readCase("case-1")).toEqual(back);
  expect(await store.verify()).toEqual([]);
});

test("of two writers on one part the second gets both versions, and nothing is lost", async () => {
  const { store } = await newStore();
  await store.createCase("case-1", newCase(), recording);
  const theirs = put("about", "case", 1, { ...newBody(), complaint: "theirs" });
  const yours = put("about", "case", 1, { ...newBody(), complaint: "yours" });
  const [first, second] = await Promise.allSettled([
    store.record("case-1", theirs, recording),
    store.record("case-1", yours, recording),
  ]);
  expect(first.status).toBe("fulfilled");
  expect(second).toMatchObject({
    status: "rejected",
    reason: {
      code: "record.conflict",
      facts: {
        conflicts: [
          { id: "about", yours: { complaint: "yours" }, theirs: { revision: 2, body: { complaint: "theirs" } } },
        ],
      },
    },
  });
  const other = put("consent-1", "consent", 0, consentBody("2026-02-11"));
  expect((await store.record("case-1", other, recording)).sequence).toBe(3);
});

const newBody = () => {
  const [operation] = newCase().operations;
  return operation?.op === "put" && typeof operation.body === "object" ? operation.body : {};
};

test("undo and redo take back one change at a time, in words, down to the first change and up again", async () => {
  const { store } = await newStore();
  const made = await store.createCase("case-1", newCase(), recording);
  await store.record("case-1", put("consent-1", "consent", 0, consentBody("2026-02-11"), "Consent taken"), recording);
  const full = await store.record(
    "case-1",
    put("consent-1", "consent", 1, consentBody("2026-02-12"), "Day mended"),
    recording,
  );
  await store.undo("case-1", recording);
  const bare = await store.undo("case-1", recording);
  expect(stateHash(bare.parts)).toBe(stateHash(made.parts));
  await expect(store.undo("case-1", recording)).rejects.toMatchObject({ code: "record.nothingToUndo" });
  await store.redo("case-1", recording);
  const redone = await store.redo("case-1", recording);
  expect(stateHash(redone.parts)).toBe(stateHash(full.parts));
  await expect(store.redo("case-1", recording)).rejects.toMatchObject({ code: "record.nothingToUndo" });
  await store.undo("case-1", recording);
  const chain = await store.changes("case-1");
  expect(chain.slice(3).map(({ words, inverts }) => [words, inverts])).toEqual([
    ["Undo: Day mended", 3],
    ["Undo: Consent taken", 2],
    ["Redo: Consent taken", 5],
    ["Redo: Day mended", 4],
    ["Undo: Day mended", 7],
  ]);
  expect(await store.verify()).toEqual([]);
});

test("an undo of a change that is no longer at the top is a conflict", async () => {
  const { store } = await newStore();
  await store.createCase("case-1", newCase(), recording);
  await store.record("case-1", put("consent-1", "consent", 0, consentBody("2026-02-11")), recording);
  await store.record("case-1", put("consent-1", "consent", 1, consentBody("2026-02-12")), recording);
  await expect(store.undo("case-1", recording, 2)).rejects.toMatchObject({ code: "record.conflict" });
  const undone = await store.undo("case-1", recording, 3);
  expect(undone.sequence).toBe(4);
  await expect(store.redo("case-1", recording, 3)).rejects.toMatchObject({ code: "record.conflict" });
});

const entryOf = (caseId: string, id: string, note: string): LedgerEntry => ({
  id: ledgerEntryId(id),
  caseId: named(caseId),
  subject: "length of mark-1",
  topic: "length",
  topicVersion: 1,
  input: { note },
  inputPaths: [{ input: "note", record: "consent-1/note" }],
  output: { basis: { formula: "none", assumptions: [], sources: [] } },
  at: "2026-03-01T09:30:00Z",
});

test("the ledger follows in the same transaction, and older entries stay", async () => {
  const { store } = await newStore();
  const asked: (string | undefined)[] = [];
  const derive: DeriveLedger = (state, { known }) => {
    const id = String(revisionIn(state, "about")).padStart(64, "0");
    asked.push(known(id)?.at);
    return [known(id) ?? entryOf(state.caseId, id, `revision ${id.at(-1)}`)];
  };
  await store.createCase("case-1", newCase(), { ...recording, deriveLedger: derive });
  await store.record("case-1", put("about", "case", 1, { ...newBody(), complaint: "none" }), {
    ...recording,
    deriveLedger: derive,
  });
  const [current] = await store.ledger("case-1");
  expect(current?.input).toEqual({ note: "revision 2" });
  const older = await store.ledgerEntry("1".padStart(64, "0"));
  expect(older).toEqual(entryOf("case-1", older.id, "revision 1"));
  await store.refreshLedger("case-1", derive);
  expect(asked).toEqual([undefined, undefined, "2026-03-01T09:30:00Z"]);
  const { output: _, ...refused } = { ...older, id: ledgerEntryId("9".repeat(64)), refused: ["a: b"] };
  await store.refreshLedger("case-1", () => [refused, older]);
  expect(await store.ledger("case-1")).toEqual([refused, older]);
  expect(await store.verify()).toEqual([]);
});

test("a ledger that fails takes the change with it", async () => {
  const { store } = await newStore();
  const failing = {
    ...recording,
    deriveLedger: () => {
      throw new Error("a bug");
    },
  };
  await expect(store.createCase("case-1", newCase(), failing)).rejects.toThrow("a bug");
  await expect(store.readCase("case-1")).rejects.toMatchObject({ code: "record.notFound" });
  await store.createCase("case-1", newCase(), recording);
});

test("a film is kept once by its content, and a film part needs a kept film", async () => {
  const { store, home } = await newStore();
  const hash = await store.keepFilm(pixels("film one"));
  // SHA-256 of the ASCII text by coreutils: printf 'film one' | sha256sum
  expect(hash).toBe(sha256Of(pixels("film one")));
  expect(await store.keepFilm(pixels("film one"))).toBe(hash);
  expect(new TextDecoder().decode(await store.readFilm(hash))).toBe("film one");
  expect(existsSync(join(home, filmPath(hash)))).toBe(true);
  await store.createCase("case-1", newCase(), recording);
  await store.record("case-1", put("film-1", "film", 0, filmBody(hash)), recording);
  const lost = put("film-2", "film", 0, filmBody("0".repeat(64)));
  await expect(store.record("case-1", lost, recording)).rejects.toMatchObject({ code: "file.missing" });
  expect(await store.verify()).toEqual([]);
});

test("a removed case leaves a tombstone, no row and no film that no other case names", async () => {
  const { store, home } = await newStore();
  const [own, shared] = [await store.keepFilm(pixels("own")), await store.keepFilm(pixels("shared"))];
  for (const caseId of ["case-1", "case-2"]) {
    await store.createCase(caseId, newCase(), recording);
    await store.record(caseId, put("film-1", "film", 0, filmBody(shared)), recording);
  }
  await store.record("case-1", put("film-2", "film", 0, filmBody(own)), recording);
  // The history names the film although its part is gone: it leaves with the case all the same.
  const head = await store.record("case-1", remove("film-2", "film", 1), recording);
  await store.keepDocument(documentOf("deck-1", "case-1"), pixels("a deck"));
  const tombstone = await store.removeCase("case-1", { who: "A. Writer", at: "2026-03-02T10:00:00Z" });
  expect(tombstone).toEqual({
    caseId: "case-1",
    headHash: head.headHash,
    at: "2026-03-02T10:00:00Z",
    who: "A. Writer",
  });
  expect(await store.tombstones()).toEqual([tombstone]);
  expect((await store.cases()).map(({ caseId }) => caseId)).toEqual(["case-2"]);
  expect([own, shared].map((hash) => existsSync(join(home, filmPath(hash))))).toEqual([false, true]);
  await expect(store.readFilm(own)).rejects.toMatchObject({ code: "record.notFound" });
  await expect(store.readDocument("deck-1")).rejects.toMatchObject({ code: "record.notFound" });
  expect(await store.verify()).toEqual([]);
  await store.createCase("case-1", newCase(), recording);
});

const documentOf = (id: string, caseId: string) => ({
  id,
  caseId,
  as: "deck" as const,
  fileName: "P-0417 26.pptx",
  at: "2026-03-01T10:00:00Z",
  who: "A. Writer",
  sequence: 1,
  numbers: [{ ledgerEntry: "1".repeat(64), path: "lengthMm", text: "21.4" }],
});

test("a document is kept with its row and its numbers", async () => {
  const { store } = await newStore();
  await store.createCase("case-1", newCase(), recording);
  const row = await store.keepDocument(documentOf("deck-1", "case-1"), pixels("a deck"));
  expect(row).toEqual({ ...documentOf("deck-1", "case-1"), sha256: sha256Of(pixels("a deck")), bytes: 6 });
  expect(await store.documents("case-1")).toEqual([row]);
  expect(await store.readDocument("deck-1")).toEqual({ row, bytes: Buffer.from("a deck") });
  const again = store.keepDocument(documentOf("deck-1", "case-1"), pixels("another"));
  await expect(again).rejects.toMatchObject({ code: "record.conflict" });
  const nowhere = store.keepDocument(documentOf("deck-2", "case-9"), pixels("a deck"));
  await expect(nowhere).rejects.toMatchObject({ code: "record.notFound" });
});
