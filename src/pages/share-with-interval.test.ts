import { describe, expect, it } from "vitest";
import { caseId, ledgerEntryId } from "../core/ids.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { ledgerReader } from "./ledger-reader.ts";
import { shareWithInterval } from "./share-with-interval.ts";

const entryWith = (output: unknown): LedgerEntry => ({
  ...{ id: ledgerEntryId("e".repeat(64)), caseId: caseId("case-1"), subject: "s", topic: "fracture", topicVersion: 1 },
  ...{ input: {}, inputPaths: [], output, at: "2026-01-02T09:00:00Z" },
});
const printed = (share: number, low: number, high: number): string =>
  shareWithInterval(ledgerReader([entryWith({ share, interval: { low, high } })]), "s", {
    ...{ share: "share", interval: "interval" },
  })
    .map(({ text }) => text)
    .join("");

describe("a share in print", () => {
  it("has two decimals, with its interval", () => {
    expect(printed(0.8, 0.714, 0.869)).toBe("0.80 (0.71 to 0.87)");
  });

  it("is not rounded to certainty, and is certain where it is", () => {
    expect(printed(0.002, 0.0004, 0.0071)).toBe("<0.01 (<0.01 to 0.01)");
    expect(printed(0.9912, 0.951, 0.9991)).toBe("0.99 (0.95 to >0.99)");
    expect(printed(0, 0, 1)).toBe("0.00 (0.00 to 1.00)");
  });

  it("is a dash where it is not there", () => {
    const read = ledgerReader([entryWith({})]);
    expect(shareWithInterval(read, "s", { share: "share", interval: "interval" })).toEqual([{ text: "–" }]);
  });
});
