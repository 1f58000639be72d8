import { writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { sampleParts } from "../../../test/sample-case.ts";
import { builtThread, threadFolder } from "../../../test/samples/built-thread.ts";
import { topicNamed } from "../../core/topics.ts";
import { deriveLedger, deriveLedgerBy } from "../../ledger/derive-ledger.ts";
import type { Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { sumsAside } from "./sums-aside.ts";

const folder = threadFolder();
let program: string;
beforeAll(async () => {
  program = await builtThread("src/server/sums/sum-worker.ts", folder);
});

const tooth = topicNamed("tooth");
const about = { caseId: "case-sample", at: "2026-01-01T00:00:00Z" };
const usual = { workMs: 60_000, heapMb: 512 };

/** The sample with the middle of its course drawn elsewhere. */
const drawn = (to: number): Part[] =>
  sampleParts().map((one) => {
    if (one.kind !== "mark" || one.body.shape !== "trace") return one;
    const points = one.body.points.map(([u, v], at): [number, number] => [u + to * Math.sin(at / 20), v]);
    return { ...one, body: { ...one.body, points } };
  });

describe("sums done in a thread aside", () => {
  it("give the same entries as sums done in place, whatever was known before", async () => {
    const sums = sumsAside(program);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: -9, max: 9 }), fc.integer({ min: 0, max: 5 }), async (to, stopShortMm) => {
        const before = deriveLedger({ ...about, parts: drawn(0), settings: firstSettings, known: () => undefined });
        const source = { ...about, parts: drawn(to), settings: { ...firstSettings, stopShortMm } };
        const kept = new Map(before.map((entry) => [entry.id as string, entry]));
        const aside = await deriveLedgerBy(sums.do, { ...source, known: (id) => kept.get(id) });
        expect(aside).toEqual(deriveLedger({ ...source, known: () => undefined }));
      }),
      { numRuns: 4 },
    );
    await sums.close();
  });

  it("say what broke in the program, and go on", async () => {
    const sums = sumsAside(program);
    await expect(sums.do({ topic: { ...tooth, name: "unheard" }, inputs: [{}] })).rejects.toThrow("unheard");
    const [outcome] = await sums.do({ topic: tooth, inputs: [{}] });
    expect(outcome).toHaveProperty("refused");
    await sums.close();
  });

  it("are given up where the thread ends over them, and done by a fresh thread next", async () => {
    const script = join(folder, "ends-once.mjs");
    writeFileSync(
      script,
      `import { parentPort, threadId } from "node:worker_threads";
      parentPort.on("message", ({ inputs: [first] }) => {
        if (first === "end") process.exit(1);
        parentPort.postMessage({ is: "done", outcomes: [{ output: threadId }] });
      });`,
    );
    const sums = sumsAside(script, usual);
    const ask = (first: string) => sums.do({ topic: tooth, inputs: [first] });
    const warm = await ask("go");
    expect(await ask("go")).toEqual(warm);
    await expect(ask("end")).rejects.toThrow("aside");
    expect(await ask("go")).not.toEqual(warm);
    await sums.close();
  });
});
