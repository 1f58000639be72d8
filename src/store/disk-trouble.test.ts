import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { consentBody, newCase, put, recording } from "../../test/samples/gestures.ts";
import { hashOfFolder, temporaryFolder } from "../../test/samples/home.ts";
import { backup } from "./backup.ts";
import { databaseFile } from "./migrate.ts";
import { tablesSteps } from "./migrations.ts";
import { openStore } from "./open-store.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";
import type { Store } from "./store.ts";

/** A disk of 2 MB, or undefined where this process may not make one. */
function smallDisk(): string | undefined {
  const folder = temporaryFolder();
  try {
    execFileSync("mount", ["-t", "tmpfs", "-o", "size=2m", "tmpfs", folder], { stdio: "ignore" });
  } catch {
    return undefined;
  }
  onTestFinished(() => {
    execFileSync("umount", ["-l", folder]);
  });
  return folder;
}

/** Everything that was acknowledged: every case with its state and chain, and the settings. */
async function contentOf(store: Store): Promise<unknown> {
  const cases = await store.cases();
  const states = await Promise.all(cases.map(({ caseId }) => store.readCase(caseId)));
  const chains = await Promise.all(cases.map(({ caseId }) => store.changes(caseId)));
  return { cases, states, chains, settings: await store.settings() };
}

test("a full disk refuses, names the folder, and what was recorded stays as it was", async (context) => {
  const disk = smallDisk();
  if (disk === undefined) return context.skip("no right to mount a small disk here");
  const home = join(disk, "home");
  const { store } = await openStore(home);
  let state = await store.createCase("case-1", newCase(), recording);
  let refusal: unknown;
  for (let index = 0; refusal === undefined && index < 2_000; index += 1) {
    const body = consentBody("2026-02-11", `${index} `.padEnd(7_000, "words "));
    const gesture = put(`consent-${index}`, "consent", 0, body);
    await store.record("case-1", gesture, recording).then(
      (next) => {
        state = next;
      },
      (error: unknown) => {
        refusal = error;
      },
    );
  }
  expect(refusal).toMatchObject({ code: "store.full", facts: { home }, message: expect.stringContaining(home) });
  expect(await store.readCase("case-1")).toEqual(state);
  const before = await contentOf(store);
  await expect(store.keepFilm(new Uint8Array(1_500_000))).rejects.toMatchObject({ code: "store.full" });
  await expect(backup(home, join(disk, "teeth.zip"))).rejects.toMatchObject({ code: "store.full" });
  await store.close().catch(() => undefined);
  const again = await openStore(home);
  expect(await contentOf(again.store)).toEqual(before);
  expect(await again.store.verify()).toEqual([]);
  await again.store.close();
});

test("a home below a file, and one that can't be written, are refused with the folder and the way out", async () => {
  const file = join(temporaryFolder(), "file");
  writeFileSync(file, "");
  const below = openStore(join(file, "home"));
  await expect(below).rejects.toMatchObject({ code: "store.unwritable", facts: { home: join(file, "home") } });
  await expect(below).rejects.toThrow("CANALOG_HOME");
});

test("a file that is no database is refused and not touched", async () => {
  const home = temporaryFolder();
  writeFileSync(databaseFile(home), "something else ".repeat(100));
  const before = hashOfFolder(home);
  await expect(openStore(home)).rejects.toMatchObject({ code: "store.corrupt", facts: { home } });
  expect(hashOfFolder(home)).toBe(before);
});

test("a damaged database is refused as damaged, or its faults are found", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  await store.createCase("case-1", newCase(), recording);
  await store.close();
  const bytes = readFileSync(databaseFile(home));
  bytes.fill(0x5a, 4_096, bytes.length - 4_096);
  writeFileSync(databaseFile(home), bytes);
  const opened = await openStore(home).catch((error: unknown) => error);
  if (opened instanceof Error) expect(opened).toMatchObject({ code: "store.corrupt" });
  else {
    const { store: damaged } = opened as Awaited<ReturnType<typeof openStore>>;
    expect((await damaged.verify()).map(({ what }) => what)).toContain("schema");
    await expect(damaged.readCase("case-1")).rejects.toMatchObject({ code: "store.corrupt" });
    await damaged.close().catch(() => undefined);
  }
});

/** The version that this program writes. */
const known = tablesSteps.at(-1)?.version ?? 0;

test("a record of a newer program is refused with both versions, and the folder stays as it was to the byte", async () => {
  const home = temporaryFolder();
  const newer = [...tablesSteps, { version: 7, up: async () => undefined }];
  const { store } = await openStore(home, { steps: newer });
  await store.close();
  const before = hashOfFolder(home);
  const refused = openStore(home);
  await expect(refused).rejects.toMatchObject({ code: "store.newerVersion", facts: { version: 7, known } });
  await expect(refused).rejects.toThrow(new RegExp(`version 7.*knows ${known}`));
  expect(hashOfFolder(home)).toBe(before);
});

test("tables are turned into a newer form in place, and a copy from before is kept and opens", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  const made = await store.createCase("case-1", newCase(), recording);
  await store.close();
  const steps = [
    ...tablesSteps,
    {
      version: known + 1,
      up: (async (db) =>
        db.schema.createTable("more").addColumn("a", "text").execute()) as (typeof tablesSteps)[0]["up"],
    },
  ];
  const turned = await openStore(home, { steps });
  expect(await turned.store.readCase("case-1")).toEqual(made);
  expect(turned.migratedCopy).toBe(join(home, `canalog-before-version-${known + 1}-was-${known}.sqlite`));
  await turned.store.close();
  expect((await openStore(home, { steps })).migratedCopy).toBeUndefined();
  const old = join(temporaryFolder(), "old");
  mkdirSync(old);
  writeFileSync(databaseFile(old), readFileSync(turned.migratedCopy ?? ""));
  const opened = await openStore(old);
  expect(await opened.store.readCase("case-1")).toEqual(made);
  await opened.store.close();
});

test("a step that fails leaves the tables and their version as they were", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  const made = await store.createCase("case-1", newCase(), recording);
  await store.close();
  const failing = [...tablesSteps, { version: known + 1, up: async () => Promise.reject(new Error("a bug")) }];
  await expect(openStore(home, { steps: failing })).rejects.toThrow("a bug");
  const again = await openStore(home);
  expect(await again.store.readCase("case-1")).toEqual(made);
  await again.store.close();
});

const failing = (code: string, message = "it failed"): Error => Object.assign(new Error(message), { code });
test.each([
  ["ENOSPC", "store.full"],
  ["EDQUOT", "store.full"],
  ["SQLITE_FULL", "store.full"],
  ["EACCES", "store.unwritable"],
  ["ENOTDIR", "store.unwritable"],
  ["EROFS", "store.unwritable"],
  ["SQLITE_CANTOPEN", "store.unwritable"],
  ["SQLITE_READONLY_DIRECTORY", "store.unwritable"],
  ["SQLITE_IOERR_WRITE", "store.unwritable"],
  ["SQLITE_CORRUPT_INDEX", "store.corrupt"],
  ["SQLITE_NOTADB", "store.corrupt"],
])("the driver's %s is said as %s", (code, refusal) => {
  expect(refusalOfDisk(failing(code), "/data/teeth")).toMatchObject({
    code: refusal,
    message: expect.stringContaining("/data/teeth"),
  });
});

test("what the disk has no part in stays what it was", () => {
  const bug = new TypeError("a bug");
  expect(refusalOfDisk(bug, "/data/teeth")).toBe(bug);
  expect(refusalOfDisk("text", "/data/teeth")).toBe("text");
});
