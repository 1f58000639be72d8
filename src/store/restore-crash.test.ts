import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { newCase, recording } from "../../test/samples/gestures.ts";
import { hashOfFolder, temporaryFolder } from "../../test/samples/home.ts";
import { buildProgram } from "../../test/soak/kill-writer.ts";
import { backup, restore } from "./backup.ts";
import { ownHolder } from "./lock.ts";
import { openStore } from "./open-store.ts";
import { finishRestore, writeRestoreNote } from "./restore-note.ts";

let restorer: string;
beforeAll(async () => {
  restorer = await buildProgram("restorer");
});
afterAll(() => rmSync(restorer, { force: true }));

/** A home with two cases, and a backup from when it had one. */
async function homeAndBackup(): Promise<{ home: string; file: string }> {
  const home = join(temporaryFolder(), "home");
  const file = join(dirname(home), "teeth.zip");
  const { store } = await openStore(home);
  await store.createCase("case-1", newCase(), recording);
  await backup(home, file);
  await store.createCase("case-2", newCase(), recording);
  await store.close();
  return { home, file };
}

async function casesOf(home: string) {
  const { store, recovered } = await openStore(home);
  const cases = (await store.cases()).map(({ caseId }) => caseId).sort();
  const faults = await store.verify();
  await store.close();
  return { cases, recovered, faults };
}
const beside = (home: string) => readdirSync(dirname(home)).filter((name) => name.startsWith("home."));

describe("a restore that is killed", () => {
  it.each([
    ["noted", ["case-1", "case-2"], /before it changed anything: it was given up/],
    ["movedAside", ["case-1"], /it was finished\. What was there before is now .*home\.before-restore-/],
    ["inPlace", ["case-1"], /had just been finished\. What was there before is now .*home\.before-restore-/],
  ])(
    "after %s leaves a whole record, and the next start says which and where the other is",
    async (step, cases, says) => {
      const { home, file } = await homeAndBackup();
      const before = hashOfFolder(home);
      const { signal } = spawnSync(process.execPath, [restorer, file, home, step], { stdio: "inherit" });
      expect(signal).toBe("SIGKILL");
      expect(beside(home)).toContain("home.restore-under-way");
      const found = await casesOf(home);
      expect(found).toMatchObject({ cases, faults: [] });
      expect(found.recovered).toEqual([expect.stringMatching(says)]);
      const aside = beside(home);
      expect(aside.every((name) => name.startsWith("home.before-restore-"))).toBe(true);
      expect(aside).toHaveLength(step === "noted" ? 0 : 1);
      // What was moved aside is there, byte for byte, and opens.
      if (aside[0] !== undefined) expect(hashOfFolder(join(dirname(home), aside[0]))).toBe(before);
      expect((await casesOf(home)).recovered).toEqual([]);
    },
  );

  it("is finished by the next restore as well", async () => {
    const { home, file } = await homeAndBackup();
    spawnSync(process.execPath, [restorer, file, home, "movedAside"], { stdio: "inherit" });
    expect(existsSync(home)).toBe(false);
    await expect(restore(file, home)).rejects.toMatchObject({ code: "input.impossible" });
    expect((await casesOf(home)).cases).toEqual(["case-1"]);
  });
});

describe("finishRestore", () => {
  const note = { staging: "", by: ownHolder() };

  it("does nothing where no restore was under way, or its note was cut short", () => {
    const home = join(temporaryFolder(), "home");
    expect(finishRestore(home)).toEqual([]);
    writeFileSync(`${home}.restore-under-way`, '{"by":');
    expect(finishRestore(home)).toEqual([]);
    expect(existsSync(home)).toBe(false);
  });

  it("puts the earlier record back where the restored one is gone", async () => {
    const home = join(temporaryFolder(), "home");
    const aside = `${home}.before-restore-now`;
    mkdirSync(aside);
    writeFileSync(join(aside, "kept"), "1");
    await writeRestoreNote(home, { ...note, staging: `${home}.restoring-gone`, aside });
    expect(finishRestore(home)).toEqual([expect.stringContaining("put back")]);
    expect(readdirSync(home)).toEqual(["kept"]);
    expect(readdirSync(dirname(home)).map((name) => basename(name))).toEqual(["home"]);
  });

  it("waits for a restore that still goes on in another process", async () => {
    const home = join(temporaryFolder(), "home");
    const { mark: _none, ...here } = ownHolder();
    // The process that runs the tests' own parent is alive for as long as they run.
    await writeRestoreNote(home, { by: { ...here, pid: process.ppid }, staging: `${home}.restoring-x` });
    expect(() => finishRestore(home)).toThrow(expect.objectContaining({ code: "server.alreadyRunning" }));
  });
});
