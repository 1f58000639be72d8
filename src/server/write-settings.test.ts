import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { sampleFilmBytes, sampleParts } from "../../test/sample-case.ts";
import { sumsDone } from "../ledger/sums-done.ts";
import { firstSettings } from "../record/settings.ts";
import { ledgerBy } from "./ledger-by.ts";
import { followSettings, followSums, writeSettings } from "./write-settings.ts";

let one: SampleBench;
beforeEach(async () => {
  one = await sampleBench();
  const hash = await one.bench.store.keepFilm(sampleFilmBytes());
  for (const caseId of ["case-1", "case-2"]) {
    const operations = sampleParts().map(({ id, kind, body }) => ({
      ...{ op: "put" as const, id, kind, baseRevision: 0 },
      body: kind === "film" ? { ...body, hash } : body,
    }));
    const recording = { who: "A. Resident", at: one.bench.now(), deriveLedger: one.bench.deriveLedger() };
    await one.bench.store.createCase(caseId, { words: "All", operations }, recording);
  }
});
afterEach(() => one.close());

const next = { ...firstSettings, stopShortMm: 1 };
async function stopsShort(caseId: string): Promise<unknown> {
  const entry = (await one.bench.store.ledger(caseId)).find(({ topic }) => topic === "workingLength");
  return Reflect.get(Object(entry?.input), "stopShortMm");
}
const all = () => Promise.all(["case-1", "case-2"].map(stopsShort));

describe("settings that sums rest on", () => {
  it("are followed by every case, and none is behind then", async () => {
    const heard: number[] = [];
    await writeSettings(one.bench, next, (done) => heard.push(done));
    expect(await all()).toEqual([1, 1]);
    expect(heard).toEqual([1, 2]);
    expect(await one.bench.store.ledgersBehind()).toBeUndefined();
  });

  it("are followed to the end by the next start where the first was cut short", async () => {
    const end = new AbortController();
    const cut = { ...one.bench, ending: end.signal };
    await writeSettings(cut, next, () => end.abort());
    expect((await all()).toSorted()).toEqual([0.5, 1]);
    expect(await one.bench.store.ledgersBehind()).toBeDefined();
    expect(await one.bench.store.verify()).toEqual([]);
    await followSettings(one.bench);
    expect(await all()).toEqual([1, 1]);
    expect(await one.bench.store.ledgersBehind()).toBeUndefined();
  });

  it("are behind still where they changed again before the first were followed", async () => {
    const { store } = one.bench;
    const deriveLedger = ledgerBy(one.bench.sums.do);
    let again: Promise<void> | undefined;
    const changing = { store, ending: one.bench.ending, deriveLedger };
    await writeSettings(changing, next, () => {
      again ??= store.writeSettings(firstSettings).then(() => store.writeSettings(next));
    });
    await again;
    expect(await store.ledgersBehind()).toBeDefined();
    await followSettings(changing);
    expect(await store.ledgersBehind()).toBeUndefined();
    expect(await all()).toEqual([1, 1]);
  });

  it("stay as they are where a name or a notation is set: no case is touched", async () => {
    const heard: number[] = [];
    await writeSettings(one.bench, { ...firstSettings, who: "B. Writer" }, (done) => heard.push(done));
    expect(heard).toEqual([]);
    expect(await one.bench.store.ledgersBehind()).toBeUndefined();
  });

  it("are followed by the others where a case goes meanwhile", async () => {
    const { store } = one.bench;
    const recording = { who: "A. Resident", at: one.bench.now() };
    const listed = await store.cases();
    await store.removeCase(listed[0]?.caseId ?? "", recording);
    await writeSettings({ ...one.bench, store: { ...storeOf(), cases: async () => listed } }, next);
    expect(await stopsShort(listed[1]?.caseId ?? "")).toBe(1);
    expect(await store.ledgersBehind()).toBeUndefined();
  });
});

describe("sums that came with a program", () => {
  /** As an older program did it: a ledger without the sums of visits. */
  const older = (): ReturnType<typeof one.bench.deriveLedger> => {
    const derive = one.bench.deriveLedger();
    return (state, ground) => derive(state, ground).filter(({ topic }) => topic !== "irrigation");
  };
  const holdsIrrigation = async (caseId: string) =>
    (await one.bench.store.ledger(caseId)).some(({ topic }) => topic === "irrigation");
  const both = () => Promise.all(["case-1", "case-2"].map(holdsIrrigation));
  beforeEach(async () => {
    for (const caseId of ["case-1", "case-2"]) await one.bench.store.refreshLedger(caseId, older());
  });

  it("come into every stored case without a gesture, and only once", async () => {
    expect(await both()).toEqual([false, false]);
    await followSums(one.bench, sumsDone());
    expect(await both()).toEqual([true, true]);
    expect(await one.bench.store.ledgerSums()).toBe(sumsDone());
    expect(await one.bench.store.verify()).toEqual([]);
    await one.bench.store.refreshLedger("case-1", older());
    await followSums(one.bench, sumsDone());
    expect(await both()).toEqual([false, true]);
    await followSums(one.bench, `${sumsDone()}, another 1`);
    expect(await both()).toEqual([true, true]);
  });

  it("are not taken for done where a start was cut short", async () => {
    await followSums({ ...one.bench, ending: AbortSignal.abort() }, sumsDone());
    expect(await one.bench.store.ledgerSums()).toBeUndefined();
    await followSums(one.bench, sumsDone());
    expect(await both()).toEqual([true, true]);
  });
});

/** The store's own methods, so that one can be exchanged. */
const storeOf = () => {
  const { store } = one.bench;
  return Object.fromEntries(
    Object.keys(store).map((name) => [name, Reflect.get(store, name)]),
  ) as unknown as typeof store;
};
