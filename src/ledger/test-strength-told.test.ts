import { describe, expect, it } from "vitest";
import { caseId, ledgerEntryId } from "../core/ids.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { testStrengthRungs, testStrengthTold } from "./test-strength-told.ts";

const level = 0.95;
const output = {
  prior: { mean: 0.4, interval: { low: 0.37, high: 0.43, level } },
  posterior: { mean: 0.83, interval: { low: 0.75, high: 0.9, level } },
  steps: [
    {
      ...{ test: "cold", result: "positive", likelihoodRatioPositive: 8.25, likelihoodRatioNegative: 0.15 },
      intervals: { likelihoodRatioPositive: { low: 4.04, high: 17.3, level } },
      posterior: { mean: 0.85, interval: { low: 0.76, high: 0.92, level } },
    },
    {
      ...{ test: "percussion", result: "negative", likelihoodRatioNegative: 0.9, intervals: {} },
      posterior: { mean: 0.83 },
    },
    { test: "custom", name: "Anaesthetic test", result: "positive", intervals: {}, posterior: { mean: 1 } },
  ],
};
const input = {
  priorCounts: { events: 428, n: 1000 },
  results: [
    { test: "cold", result: "positive" },
    { test: "palpation", result: "positive" },
    { test: "percussion", result: "negative" },
    { test: "custom", name: "Anaesthetic test", result: "positive" },
  ],
};
const entry = (over: Partial<LedgerEntry> = {}): LedgerEntry => ({
  ...{
    id: ledgerEntryId("e"),
    caseId: caseId("c"),
    subject: "testStrength of findings-a",
    topic: "testStrength",
    topicVersion: 1,
  },
  ...{ input, inputPaths: [], output, at: "2026-01-02T10:00:00Z" },
  ...over,
});

describe("testStrengthRungs", () => {
  it("goes from what was known to each test with the ratio of the result it had", () => {
    expect(testStrengthRungs(entry()).map(({ label, says }) => [label, says])).toEqual([
      ["Before the tests", "428 of 1000 teeth like it"],
      ["Cold: no reply", "LR+ 8.3 (4–17)"],
      ["Palpation: painful", "its accuracy is not given"],
      ["Percussion: no pain", "LR− 0.9"],
      ["Anaesthetic test: positive", "LR+ without bound"],
    ]);
  });

  it("gives each its chance, and none to a test that was not reckoned in", () => {
    expect(testStrengthRungs(entry()).map(({ chance }) => chance?.mean)).toEqual([0.4, 0.85, undefined, 0.83, 1]);
  });

  it("has nothing for an entry that refused or is not there", () => {
    const { output: _output, ...refused } = entry();
    expect([testStrengthRungs(undefined), testStrengthRungs({ ...refused, refused: ["why"] })]).toEqual([[], []]);
    expect(testStrengthTold(undefined)).toBeUndefined();
  });

  it("says that a share was given where no counts were", () => {
    expect(testStrengthRungs(entry({ input: { ...input, priorCounts: undefined } }))[0]?.says).toBe("as it was given");
  });
});
