import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sampleParts } from "../../../test/sample-case.ts";
import { firstSettings } from "../../record/settings.ts";
import { pastLedgersAside, pastLedgersHere } from "./past-ledgers.ts";

const folder = resolve(`node_modules/.cache/past-ledger-worker-${process.pid}`);

/** The thread's program as the build makes it. */
async function built(): Promise<string> {
  const output = { entryFileNames: "past-ledger-worker.mjs" };
  const ssr = resolve("src/server/past/past-ledger-worker.ts");
  await build({
    configFile: false,
    logLevel: "silent",
    build: { ssr, outDir: folder, emptyOutDir: false, rolldownOptions: { output } },
  });
  return join(folder, "past-ledger-worker.mjs");
}

let program: string;
beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  program = await built();
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const about = { caseId: "case-sample", settings: firstSettings, at: "2026-01-01T00:00:00Z" };
const past = { ...about, parts: sampleParts(), kept: [] };

describe("a past ledger worked out aside", () => {
  it("is the one worked out here", async () => {
    expect(await pastLedgersAside(program)(past)).toEqual(await pastLedgersHere(past));
  });

  it("says what broke where its thread does, or ends without an answer", async () => {
    const script = (name: string, text: string) => {
      writeFileSync(join(folder, name), text);
      return pastLedgersAside(join(folder, name))(past);
    };
    await expect(script("broken.mjs", 'throw new Error("out of hand");')).rejects.toThrow("out of hand");
    await expect(script("ended.mjs", "")).rejects.toThrow("ended without an answer");
  });
});
