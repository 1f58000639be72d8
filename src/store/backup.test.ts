import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { open } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import { filmBody, newCase, put, recording } from "../../test/samples/gestures.ts";
import { hashOfFolder, temporaryFolder } from "../../test/samples/home.ts";
import { backup, restore } from "./backup.ts";
import type { Manifest } from "./backup-manifest.ts";
import { documentPath, filmPath, sha256Of } from "./kept-files.ts";
import { tablesSteps } from "./migrations.ts";
import { openStore } from "./open-store.ts";
import { ZipWriter } from "./zip-writer.ts";

const film = new TextEncoder().encode("a film");

/** A closed home with one case, one film and one document. */
async function filledHome(): Promise<string> {
  const home = join(temporaryFolder(), "home");
  const { store } = await openStore(home);
  await store.beginExercise({
    ...{
      id: "exercise-1",
      kind: "clicks",
      who: "A. Writer",
      begunAt: recording.at,
      seed: 5,
      marks: [],
      films: "0".repeat(64),
    },
  });
  await store.createCase("case-1", newCase(), recording);
  await store.record("case-1", put("film-1", "film", 0, filmBody(await store.keepFilm(film))), recording);
  const about = { id: "deck-1", caseId: "case-1", as: "deck" as const, fileName: "deck.pptx", at: recording.at };
  await store.keepDocument({ ...about, who: "", sequence: 2, numbers: [] }, new TextEncoder().encode("a deck"));
  await store.close();
  writeFileSync(join(home, "demo.json"), '{"state":"removed"}');
  return home;
}

async function casesOf(home: string) {
  const { store } = await openStore(home);
  const state = await store.readCase("case-1");
  const faults = await store.verify();
  const exercises = await store.exercises();
  await store.close();
  return { state, exercises, faults };
}

test("a backup made while the record is served comes back whole in an empty place", async () => {
  const home = await filledHome();
  const { state, exercises } = await casesOf(home);
  expect(exercises.map(({ id }) => id)).toEqual(["exercise-1"]);
  const { store } = await openStore(home);
  const file = join(dirname(home), "teeth.zip");
  const heard: number[] = [];
  const made = await backup(home, file, (done, all) => heard.push(done / all));
  await store.close();
  expect(made).toMatchObject({ files: 4, missing: [] });
  expect(heard.at(-1)).toBe(1);
  expect(readdirSync(dirname(file)).sort()).toEqual(["home", "teeth.zip"]);
  const again = join(temporaryFolder(), "other");
  expect(await restore(file, again)).toEqual({});
  expect(await casesOf(again)).toEqual({ state, exercises, faults: [] });
  expect(readFileSync(join(again, "demo.json"), "utf8")).toBe('{"state":"removed"}');
});

test("a backup is a zip file that any reader opens, with a list of hashes", async () => {
  const home = await filledHome();
  const file = join(dirname(home), "teeth.zip");
  await backup(home, file);
  const entries = unzipSync(readFileSync(file));
  const manifest = JSON.parse(strFromU8(entries["manifest.json"] ?? new Uint8Array())) as Manifest;
  expect(Object.keys(entries).sort()).toEqual([...manifest.files.map(({ path }) => path), "manifest.json"].sort());
  for (const { path, sha256 } of manifest.files) expect(sha256Of(entries[path] ?? new Uint8Array())).toBe(sha256);
  expect(entries[filmPath(sha256Of(film))]).toEqual(film);
});

test("a film that is gone is named and does not hinder the rest", async () => {
  const home = await filledHome();
  rmSync(join(home, filmPath(sha256Of(film))));
  const file = join(dirname(home), "teeth.zip");
  expect((await backup(home, file)).missing).toEqual([filmPath(sha256Of(film))]);
  await restore(file, join(dirname(home), "other"));
});

test("no record, an unwritable place: refused, and nothing half done is left", async () => {
  const empty = temporaryFolder();
  await expect(backup(empty, join(empty, "teeth.zip"))).rejects.toMatchObject({ code: "file.missing" });
  expect(readdirSync(empty)).toEqual([]);
  const home = await filledHome();
  const nowhere = join(home, "demo.json", "teeth.zip");
  await expect(backup(home, nowhere)).rejects.toMatchObject({
    code: "store.unwritable",
    facts: { home: dirname(nowhere) },
  });
});

test("a home that is not empty is refused, or moved aside by name when asked", async () => {
  const home = await filledHome();
  const file = join(dirname(home), "teeth.zip");
  await backup(home, file);
  const before = hashOfFolder(home);
  await expect(restore(file, home)).rejects.toMatchObject({ code: "input.impossible" });
  expect(hashOfFolder(home)).toBe(before);
  const { movedAside } = await restore(file, home, { moveAside: true });
  expect(basename(movedAside ?? "")).toMatch(/^home\.before-restore-\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d$/);
  expect(hashOfFolder(movedAside ?? "")).toBe(before);
  expect((await casesOf(home)).faults).toEqual([]);
});

test("a home that is being served is refused", async () => {
  const home = await filledHome();
  const file = join(dirname(home), "teeth.zip");
  await backup(home, file);
  const { store } = await openStore(home);
  await expect(restore(file, home, { moveAside: true })).rejects.toMatchObject({ code: "server.alreadyRunning" });
  await store.close();
});

/** A backup with any names and bytes, its list as given. */
async function madeBackup(file: string, entries: [string, string][], list: unknown): Promise<string> {
  const handle = await open(file, "w");
  const zip = new ZipWriter(handle);
  for (const [name, text] of [...entries, ["manifest.json", JSON.stringify(list)]] as [string, string][])
    await zip.add(name, oneOf(text), () => undefined);
  await zip.finish();
  await handle.close();
  return file;
}
async function* oneOf(text: string) {
  yield Buffer.from(text);
}
const listOf = (entries: [string, string][]) => ({
  format: "canalog backup",
  version: 1,
  madeAt: "2026-03-01T09:30:00Z",
  files: entries.map(([path, text]) => ({ path, bytes: text.length, sha256: sha256Of(Buffer.from(text)) })),
  missing: [],
});

const database: [string, string] = ["canalog.sqlite", "not really"];
const inDocuments: [string, string] = [documentPath(sha256Of(Buffer.from("x"))), "x"];
const escaping: [string, string] = ["films/../../escaped", "x"];
const wrongHash = listOf([database]);
wrongHash.files[0] = { path: "canalog.sqlite", bytes: 10, sha256: "0".repeat(64) };
test.each([
  ["a path that leads out", [database, escaping], listOf([database, escaping])],
  ["an absolute path", [database, ["/tmp/escaped", "x"]], listOf([database, ["/tmp/escaped", "x"]])],
  ["a name that stands twice", [database, database], listOf([database])],
  ["a name that the list has twice", [database], listOf([database, database])],
  ["a file that the list does not name", [database, inDocuments], listOf([database])],
  ["a file that is missing", [database], listOf([database, inDocuments])],
  ["a wrong hash", [database], wrongHash],
  ["no database", [inDocuments], listOf([inDocuments])],
  ["a newer form of the list", [database], { ...listOf([database]), version: 2 }],
  ["no list worth the name", [database], "nothing"],
] as [string, [string, string][], unknown][])(
  "a backup with %s is refused and leaves nothing",
  async (_, entries, list) => {
    const folder = temporaryFolder();
    const file = await madeBackup(join(folder, "teeth.zip"), entries, list);
    await expect(restore(file, join(folder, "home"))).rejects.toMatchObject({ code: "backup.invalid" });
    expect(readdirSync(folder)).toEqual(["teeth.zip"]);
    expect(existsSync("/tmp/escaped")).toBe(false);
  },
);

test("a backup in which any one byte is turned, or that is cut anywhere, is refused or gives the same record", async () => {
  const home = await filledHome();
  const folder = temporaryFolder();
  const file = join(folder, "teeth.zip");
  await backup(home, file);
  const whole = readFileSync(file);
  const unharmed = new Set<string>();
  let refused = 0;
  for (let step = 0; step < 60; step += 1) {
    const bytes = Buffer.from(whole);
    const at = Math.floor((step / 60) * whole.length);
    bytes[at] = (bytes[at] ?? 0) ^ 0x41;
    writeFileSync(file, step % 3 === 0 ? whole.subarray(0, at) : bytes);
    const target = join(folder, "home");
    const refusal = await restore(file, target).catch((error: unknown) => error);
    if (existsSync(target)) {
      unharmed.add(hashOfFolder(target));
      rmSync(target, { recursive: true });
    } else {
      expect(refusal).toMatchObject({ code: "backup.invalid" });
      refused += 1;
    }
    expect(readdirSync(folder)).toEqual(["teeth.zip"]);
  }
  // Bytes that nobody reads (a date) may be turned; what is restored then is the same to the byte.
  expect(unharmed.size).toBeLessThanOrEqual(1);
  expect(refused).toBeGreaterThan(50);
});

test("a record that a newer program wrote is refused before it takes the home's place", async () => {
  const home = await filledHome();
  const file = join(home, "canalog.sqlite");
  const bytes = readFileSync(file);
  bytes.writeUInt32BE(99, 60);
  const folder = temporaryFolder();
  const entries: [string, string][] = [["canalog.sqlite", bytes.toString("latin1")]];
  mkdirSync(join(folder, "home"));
  const zip = await open(join(folder, "teeth.zip"), "w");
  const writer = new ZipWriter(zip);
  const list = {
    ...listOf(entries),
    files: [{ path: "canalog.sqlite", bytes: bytes.length, sha256: sha256Of(bytes) }],
  };
  await writer.add("canalog.sqlite", piecesOf(bytes), () => undefined);
  await writer.add("manifest.json", oneOf(JSON.stringify(list)), () => undefined);
  await writer.finish();
  await zip.close();
  await expect(restore(join(folder, "teeth.zip"), join(folder, "home"))).rejects.toMatchObject({
    code: "store.newerVersion",
    facts: { version: 99, known: tablesSteps.at(-1)?.version },
  });
  expect(readdirSync(folder).sort()).toEqual(["home", "teeth.zip"]);
});
async function* piecesOf(bytes: Buffer) {
  yield bytes;
}
