import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { consentBody, filmBody, newCase, put, remove } from "../../test/samples/gestures.ts";
import { temporaryFolder } from "../../test/samples/home.ts";
import { type CaseFile, caseFileSchema } from "../record/case-file.ts";
import type { Gesture } from "../record/change.ts";
import { stateHash } from "../record/change.ts";
import { sha256Of } from "./kept-files.ts";
import { databaseFile } from "./migrate.ts";
import { openStore } from "./open-store.ts";

const film = Buffer.from("a film");
const films = new Map([[sha256Of(film), film]]);
const fileOf = (caseId: string, gestures: Gesture[]): CaseFile => ({
  format: "canalog case",
  version: 1,
  caseId,
  gestures: gestures.map((gesture, index) => ({
    ...gesture,
    at: `2026-02-1${index}T09:30:00Z`,
    who: `Writer ${index}`,
  })),
});
const gestures = [
  newCase(),
  put("consent-1", "consent", 0, consentBody("2026-02-11"), "Consent taken"),
  put("consent-1", "consent", 1, consentBody("2026-02-11"), "Nothing new"),
  put("film-1", "film", 0, filmBody(sha256Of(film)), "Film taken in"),
  remove("consent-1", "consent", 1),
  put("consent-1", "consent", 0, consentBody("2026-02-12"), "Consent again"),
];

test("a case file is recorded gesture by gesture with its own moments, and its ledger once", async () => {
  const { store } = await openStore(temporaryFolder());
  let derived = 0;
  const state = await store.loadCaseFile(fileOf("case-1", gestures), films, () => {
    derived += 1;
    return [];
  });
  expect(derived).toBe(1);
  expect(await store.readCase("case-1")).toEqual(state);
  expect((await store.changes("case-1")).map(({ at, who, words }) => `${at.slice(8, 10)} ${who} ${words}`)).toEqual([
    "10 Writer 0 case set",
    "11 Writer 1 Consent taken",
    "13 Writer 3 Film taken in",
    "14 Writer 4 consent removed",
    "15 Writer 5 Consent again",
  ]);
  expect(await store.verify()).toEqual([]);
  await store.close();
});

test("a taken id, a film that is not there, and a gesture that does not follow leave nothing", async () => {
  const { store } = await openStore(temporaryFolder());
  const none = () => [];
  const load = (file: CaseFile, kept = films) => store.loadCaseFile(file, kept, none);
  await expect(load(fileOf("case-1", gestures), new Map())).rejects.toMatchObject({ code: "file.missing" });
  const jump = [newCase(), put("consent-1", "consent", 4, consentBody("2026-02-11"))];
  await expect(load(fileOf("case-1", jump))).rejects.toMatchObject({ code: "record.conflict" });
  expect(await store.cases()).toEqual([]);
  await load(fileOf("case-1", gestures));
  await expect(load(fileOf("case-1", gestures))).rejects.toMatchObject({ code: "record.conflict" });
  expect(await store.verify()).toEqual([]);
  await store.close();
});

test("240 cases of six gestures load in a few seconds", async () => {
  const { store } = await openStore(temporaryFolder());
  const started = performance.now();
  for (let number = 1; number <= 240; number += 1)
    await store.loadCaseFile(fileOf(`short-${number}`, gestures), films, () => []);
  expect(performance.now() - started).toBeLessThan(10_000);
  expect(await store.cases()).toHaveLength(240);
  await store.close();
});

const oldFiles = join(import.meta.dirname, "../../test/old-files");

test("a case file of version 1 still loads, and gives the state that it gave then", async () => {
  const read: unknown = JSON.parse(readFileSync(join(oldFiles, "case-version-1.json"), "utf8"));
  const { store } = await openStore(temporaryFolder());
  const state = await store.loadCaseFile(caseFileSchema.parse(read), films, () => []);
  expect(state.sequence).toBe(5);
  expect(stateHash(state.parts)).toBe(thenStateHash);
  await store.close();
});

test("a database of version 1 still opens whole, and gives the state that it gave then", async () => {
  const home = temporaryFolder();
  expect(readdirSync(oldFiles)).toContain("record-version-1.sqlite");
  writeFileSync(databaseFile(home), readFileSync(join(oldFiles, "record-version-1.sqlite")));
  const { store } = await openStore(home);
  const state = await store.readCase("case-1");
  expect(stateHash(state.parts)).toBe(thenStateHash);
  expect(state.headHash).toBe(thenHeadHash);
  expect((await store.verify()).map(({ says }) => says)).toEqual(["its file is missing or can't be read"]);
  await store.close();
});

// Written down when the files were made (2026-11-24); they never change.
const thenStateHash = "147d16034221ec04bb2abf45951461a060087a543f2aaad1dd2b09659164c562";
const thenHeadHash = "000ebb8a623436f72ce57acdaf39a09235ee30b9cc69087d80748be1fc5a15e2";
