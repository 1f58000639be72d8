import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, describe, expect, it } from "vitest";
import { folderHash } from "../../test/sample-bench.ts";
import { addressThroughDoor } from "./door-key.ts";
import { type Serving, serve } from "./serve.ts";

const folder = mkdtempSync(join(tmpdir(), "canalog-serve-"));
const running: Serving[] = [];
afterAll(() => rmSync(folder, { recursive: true, force: true }));
afterEach(async () => {
  for (const one of running.splice(0)) await one.close();
});

/** A folder with what a start needs to be shipped, and no demo. */
function emptyShipped(): string {
  const shipped = join(folder, "shipped");
  mkdirSync(join(shipped, "dist", "web"), { recursive: true });
  writeFileSync(join(shipped, "package.json"), '{"version":"9.9.9"}');
  return shipped;
}

async function start(home: string, port: number): Promise<Serving> {
  const serving = await serve({ shipped: emptyShipped(), env: { CANALOG_HOME: home }, port, say: () => undefined });
  running.push(serving);
  return serving;
}

describe("a start", () => {
  it("takes the next port where the wanted one is in use", async () => {
    const other = createServer().listen(0, "127.0.0.1");
    await new Promise((resolve) => other.once("listening", resolve));
    const address = other.address();
    const taken = typeof address === "object" && address !== null ? address.port : 0;
    const { port } = await start(join(folder, "one"), taken);
    expect(port).toBeGreaterThan(taken);
    other.close();
  });

  it("on a folder where another runs says so, and gives a fresh address of that one", async () => {
    const home = join(folder, "two");
    const first = await start(home, 0);
    await expect(start(home, 0)).rejects.toMatchObject({ code: "server.alreadyRunning", facts: { port: first.port } });
    const fresh = await addressThroughDoor(home, first.port);
    const reply = await fetch(fresh ?? "", { redirect: "manual" });
    expect(reply.headers.get("set-cookie")).toContain("canalog_session=");
  });

  it("leaves no key and no lock behind when it ends, and its first code is good for one opening", async () => {
    const home = join(folder, "three");
    const serving = await start(home, 0);
    const open = async () => (await fetch(serving.address, { redirect: "manual" })).headers.has("set-cookie");
    expect([await open(), await open()]).toEqual([true, false]);
    await serving.close();
    running.pop();
    expect(readdirSync(home).filter((name) => /\.(key|lock)$/.test(name))).toEqual([]);
  });

  it("on a folder that can't be made names it and leaves everything as it was", async () => {
    const file = join(folder, "a-file");
    writeFileSync(file, "not a folder");
    const before = folderHash(folder);
    await expect(start(join(file, "home"), 0)).rejects.toMatchObject({
      code: "store.unwritable",
      message: expect.stringContaining(file),
    });
    expect(folderHash(folder)).toBe(before);
  });
});
