import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { sampleFilmBytes, sampleParts } from "../../test/sample-case.ts";
import { builtThread, threadFolder } from "../../test/samples/built-thread.ts";
import { recording } from "../../test/samples/gestures.ts";
import { deriveLedger } from "../ledger/derive-ledger.ts";
import type { Part } from "../record/parts.ts";
import { openStore } from "../store/open-store.ts";
import type { CaseView } from "./api.ts";
import { ledgerBy } from "./ledger-by.ts";
import { sumsHere } from "./sums/sums.ts";
import { sumsAside } from "./sums/sums-aside.ts";

const folder = threadFolder();
const goes = join(folder, "goes");
let one: SampleBench;

/** The thread's own program, which does no sum as long as a file is away: as slow as can be. */
beforeAll(async () => {
  await builtThread("src/server/sums/sum-worker.ts", folder);
  writeFileSync(
    join(folder, "hold.mjs"),
    `import { existsSync } from "node:fs";
    import { parentPort } from "node:worker_threads";
    const nap = new Int32Array(new SharedArrayBuffer(4));
    parentPort.on("message", () => { while (!existsSync(${JSON.stringify(goes)})) Atomics.wait(nap, 0, 0, 5); });`,
  );
  writeFileSync(join(folder, "slow.mjs"), `import "./hold.mjs";\nimport "./sum-worker.mjs";`);
  one = await sampleBench(sumsAside(join(folder, "slow.mjs")));
});
afterAll(async () => {
  go();
  await one.close();
  await one.bench.sums.close();
});
const go = () => writeFileSync(goes, "");
const hold = () => rmSync(goes, { force: true });
beforeEach(go);

const post = (url: string, payload: object = {}) => one.ask({ method: "POST", url, payload });
const [about, roots] = sampleParts();
const put = ({ kind, id, body }: Part, baseRevision = 0) => ({ op: "put" as const, id, kind, baseRevision, body });
const gesture = (operations: readonly object[]) => ({ words: "Drawn", operations });

async function newCase(): Promise<string> {
  return (await post("/api/cases", { case: about?.body })).json<CaseView>().caseId;
}

/** The ledger worked out in place from what stands. */
async function inPlace(caseId: string) {
  const { parts } = await one.bench.store.readCase(caseId);
  const settings = await one.bench.store.settings();
  const at = expect.any(String) as unknown as string;
  return deriveLedger({ caseId, parts, settings, at, known: () => undefined });
}

describe("a gesture whose sums take long", () => {
  it("lets other requests be answered before it is", async () => {
    const caseId = await newCase();
    hold();
    const order: string[] = [];
    const slow = post(`/api/cases/${caseId}/gestures`, gesture([put(roots as Part)])).then((reply) => {
      order.push("gesture");
      return reply;
    });
    for (const url of ["/api/cases", `/api/cases/${caseId}`, "/api/settings"]) {
      expect((await one.ask({ url })).statusCode).toBe(200);
      order.push("read");
    }
    expect((await one.bench.store.readCase(caseId)).sequence).toBe(1);
    go();
    expect((await slow).statusCode).toBe(200);
    expect(order).toEqual(["read", "read", "read", "gesture"]);
    expect(await one.bench.store.ledger(caseId)).toEqual(await inPlace(caseId));
  });

  it("asks for no sum where it brings back what stood before", async () => {
    const caseId = await newCase();
    await post(`/api/cases/${caseId}/gestures`, gesture([put(roots as Part)]));
    hold();
    const undone = post(`/api/cases/${caseId}/undo`, { sequence: 2 });
    expect((await undone).json<CaseView>().parts.map(({ kind }) => kind)).toEqual(["case"]);
  });

  it("is judged when its turn comes: of two on one part the second is a conflict", async () => {
    const caseId = await newCase();
    hold();
    const both = [1, 2].map(() => post(`/api/cases/${caseId}/gestures`, gesture([put(roots as Part)])));
    await one.ask({ url: "/api/cases" });
    go();
    expect((await Promise.all(both)).map(({ statusCode }) => statusCode)).toEqual([200, 409]);
    expect((await one.bench.store.changes(caseId)).length).toBe(2);
  });

  it("is recorded on what another program recorded meanwhile, with its ledger", async () => {
    const caseId = await newCase();
    hold();
    const slow = post(`/api/cases/${caseId}/gestures`, gesture([put(roots as Part)]));
    await one.ask({ url: "/api/cases" });
    const { store: beside } = await openStore(one.home, { hold: "beside" });
    const other = { ...(about as Part), body: { ...about?.body, tooth: "36" } } as Part;
    const deriving = { ...recording, deriveLedger: ledgerBy(sumsHere.do)() };
    await beside.record(caseId, gesture([put(other, 1)]) as never, deriving);
    await beside.close();
    go();
    expect((await slow).statusCode).toBe(200);
    expect((await one.bench.store.changes(caseId)).length).toBe(3);
    expect(await one.bench.store.ledger(caseId)).toEqual(await inPlace(caseId));
    expect(await one.bench.store.verify()).toEqual([]);
  });

  it("is worked out with the settings that stand when it is recorded", async () => {
    const caseId = await newCase();
    const hash = await one.bench.store.keepFilm(sampleFilmBytes());
    const parts = sampleParts().slice(1);
    const kept = parts.map((one) => (one.kind === "film" ? { ...one, body: { ...one.body, hash } } : one) as Part);
    hold();
    const slow = post(`/api/cases/${caseId}/gestures`, gesture(kept.map((one) => put(one))));
    const settings = await one.bench.store.settings();
    const payload = { ...settings, who: "A. Resident", stopShortMm: 1 };
    expect((await one.ask({ method: "PUT", url: "/api/settings", payload })).statusCode).toBe(200);
    go();
    expect((await slow).statusCode).toBe(200);
    const entry = (await one.bench.store.ledger(caseId)).find(({ topic }) => topic === "workingLength");
    expect(entry?.input).toMatchObject({ stopShortMm: 1 });
    expect(await one.bench.store.ledger(caseId)).toEqual(await inPlace(caseId));
  });
});
