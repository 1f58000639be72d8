import { describe, expect, it } from "vitest";
import { caseId, ledgerEntryId } from "../../../../core/ids.ts";
import type { InputPath, LedgerEntry } from "../../../../record/ledger-entry.ts";
import { faultsAtPlaces } from "./faults-at-places.ts";

const refusedEntry = (inputPaths: readonly InputPath[], ...refused: string[]): LedgerEntry => ({
  id: ledgerEntryId("0".repeat(64)),
  caseId: caseId("case-a"),
  ...{ subject: "diagnosis of findings-1", topic: "diagnosis", topicVersion: 1, input: {}, inputPaths, refused },
  at: "2026-11-29T10:00:00Z",
});

describe("what the ledger refused, at its place", () => {
  const says = "12 stands beside a reply of none";

  it("is found under the input that holds it", () => {
    const entry = refusedEntry(
      [{ input: "teeth", record: "findings-1/teeth" }],
      `teeth[1].cold.lingersSeconds: ${says}`,
    );
    expect(faultsAtPlaces([entry], "findings-1")).toEqual([{ path: "teeth.1.cold.lingersSeconds", says }]);
  });

  it("goes by the closest input where one lies inside another", () => {
    const paths = [
      { input: "teeth", record: "findings-1/teeth" },
      { input: "teeth[0].cold", record: "findings-1/teeth/2/cold" },
    ];
    const entry = refusedEntry(paths, `teeth[0].cold.lingersSeconds: ${says}`);
    expect(faultsAtPlaces([entry], "findings-1")).toEqual([{ path: "teeth.2.cold.lingersSeconds", says }]);
  });

  it("is the place itself where the input is refused as a whole", () => {
    const entry = refusedEntry([{ input: "tooth", record: "findings-1/teeth/0/tooth" }], "tooth: is none");
    expect(faultsAtPlaces([entry], "findings-1")).toEqual([{ path: "teeth.0.tooth", says: "is none" }]);
  });

  it("is left out where it came from another part, from nowhere, or has no path", () => {
    const paths = [{ input: "teeth", record: "findings-1/teeth" }];
    const entry = refusedEntry(paths, "teethed[0]: is none", "no path at all", "teeth[0]: is none");
    expect(faultsAtPlaces([entry], "findings-2")).toEqual([]);
    expect(faultsAtPlaces([entry], "findings-1")).toEqual([{ path: "teeth.0", says: "is none" }]);
  });
});
