import { describe, expect, it } from "vitest";
import { caseId, ledgerEntryId } from "../core/ids.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { missedCanalRungs, missedCanalTold } from "./missed-canal-told.ts";

const level = 0.95;
const step = (evidence: number, kind: string, likelihoodRatio: number | "unbounded", posterior: number) => ({
  ...{ evidence, kind, result: "notSeen", sensitivity: 0.276, specificity: 0.958, likelihoodRatio, posterior },
});
const output = {
  prior: { mean: 0.75, interval: { low: 0.4, high: 0.94, level }, n: 4183, N: 5650 },
  posterior: { mean: 0.12, interval: { low: 0.03, high: 0.4, level } },
  steps: [step(0, "straightFilm", 0.756, 0.69), step(2, "cbct", 0.0043, 0.12)],
  nextBestLook: [{ kind: "dye", harm: 1, says: "Stain it.", missing: ["sensitivity", "specificity"] }],
};
const evidence = ["straightFilm", "dye", "cbct"].map((kind) => ({ kind, result: "notSeen" }));
const entry = (over: Partial<LedgerEntry> = {}): LedgerEntry => ({
  ...{
    id: ledgerEntryId("e"),
    caseId: caseId("c"),
    subject: "missedCanal of search-a",
    topic: "missedCanal",
    topicVersion: 1,
  },
  ...{ input: { evidence }, inputPaths: [], output, at: "2026-01-02T10:00:00Z" },
  ...over,
});

describe("missedCanalRungs", () => {
  it("goes from what was counted to each look, with its ratio and the accuracy it was taken with", () => {
    expect(missedCanalRungs(entry()).map(({ label, says }) => [label, says])).toEqual([
      ["Before any look", "4183 of 5650, all series"],
      ["Straight film: not seen", "LR 0.76 (sens. 0.28, spec. 0.958)"],
      ["Dye: not seen", "its accuracy is not given"],
      ["CBCT: not seen", "LR 0.0043 (sens. 0.28, spec. 0.958)"],
    ]);
  });

  it("has the interval at the first and at the last that counts, and no chance where a look does not count", () => {
    const chances = missedCanalRungs(entry()).map(({ chance }) => chance && [chance.mean, chance.interval?.low]);
    expect(chances).toEqual([[0.75, 0.4], [0.69, undefined], undefined, [0.12, 0.03]]);
  });

  it("names the population that was asked for, and a ratio without bound as such", () => {
    const steps = [step(0, "straightFilm", "unbounded", 1)];
    const rungs = missedCanalRungs(entry({ input: { evidence, population: "China" }, output: { ...output, steps } }));
    expect(rungs.slice(0, 2).map(({ says }) => says)).toEqual([
      "4183 of 5650, China",
      "LR without bound (sens. 0.28, spec. 0.958)",
    ]);
  });

  it("has nothing for an entry that refused or is not there", () => {
    const { output: _output, ...refused } = entry();
    expect([missedCanalRungs(undefined), missedCanalRungs({ ...refused, refused: ["why"] })]).toEqual([[], []]);
    expect(missedCanalTold(undefined)).toBeUndefined();
  });
});
