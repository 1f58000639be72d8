import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { temporaryFolder } from "../../test/samples/home.ts";
import { lockHome, refuseWhileServed } from "./lock.ts";
import { openStore } from "./open-store.ts";

const lockOf = (home: string): string => join(home, "canalog.lock");

test("one process holds a home; the second is told who and where", () => {
  const home = temporaryFolder();
  const lock = lockHome(home);
  lock.servesAt(4711);
  const refusal = expect.objectContaining({
    code: "server.alreadyRunning",
    facts: expect.objectContaining({ pid: process.pid, port: 4711 }),
  });
  expect(() => lockHome(home)).toThrow(refusal);
  expect(() => refuseWhileServed(home)).toThrow(refusal);
  lock.release();
  expect(existsSync(lockOf(home))).toBe(false);
  refuseWhileServed(home);
  lockHome(home, 4712).release();
});

test("the hold of a process that has ended is taken over, and it is said", async () => {
  const home = temporaryFolder();
  const child = spawn(process.execPath, ["-e", ""]);
  await once(child, "exit");
  writeFileSync(lockOf(home), JSON.stringify({ pid: child.pid, startedAt: "2026-03-01T09:30:00Z" }));
  const { store, recovered } = await openStore(home);
  expect(recovered).toEqual([expect.stringContaining(`process ${child.pid}`)]);
  expect(JSON.parse(readFileSync(lockOf(home), "utf8"))).toMatchObject({ pid: process.pid });
  await store.close();
});

test.runIf(process.platform === "linux")(
  "a living process of the same number that is not the holder does not hold",
  () => {
    const home = temporaryFolder();
    writeFileSync(
      lockOf(home),
      JSON.stringify({ pid: process.pid, startedAt: "2026-03-01T09:30:00Z", mark: "another boot 1" }),
    );
    expect(lockHome(home).takenOver).toContain(`process ${process.pid}`);
  },
);

test("a lock cut short while it was written is taken once it is old, and respected while it is young", () => {
  const home = temporaryFolder();
  writeFileSync(lockOf(home), '{"pi');
  expect(() => lockHome(home)).toThrow();
  utimesSync(lockOf(home), new Date(0), new Date(0));
  expect(lockHome(home).takenOver).toBeUndefined();
});

test("a store beside another one works without a hold", async () => {
  const home = temporaryFolder();
  const { store } = await openStore(home);
  const beside = await openStore(home, { hold: "beside" });
  expect(beside.lock).toBeUndefined();
  expect(await beside.store.verify()).toEqual([]);
  await expect(openStore(home)).rejects.toMatchObject({ code: "server.alreadyRunning" });
  await beside.store.close();
  await store.close();
  expect(existsSync(lockOf(home))).toBe(false);
});
