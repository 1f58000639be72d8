import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../test/sample-case.ts";
import type { BodyOf } from "../record/parts.ts";
import { firstSettings } from "../record/settings.ts";
import { canalsEntry, canalsRead, isAbout, isReasonOpen, unusualRootCount } from "./canals-read.ts";
import { deriveLedger } from "./derive-ledger.ts";

type Roots = BodyOf<"anatomy">["roots"];
const ledgerOf = (roots: Roots) =>
  deriveLedger({
    caseId: "case-sample",
    parts: [
      ...sampleParts().filter(({ kind }) => kind === "case"),
      part("anatomy", "anatomy-1", { roots, foundBy: [] }),
    ],
    settings: firstSettings,
    at: "2024-10-01T10:00:00Z",
    known: () => undefined,
  });
const three: Roots = [
  { name: "MB", levels: [2, 1] },
  { name: "DB", levels: [1] },
  { name: "P", levels: [1] },
];

describe("an entry about roots and canals", () => {
  it("is read as it stands, and says whether it is about the roots as they are now", () => {
    const entry = canalsEntry(ledgerOf(three));
    expect(canalsRead(entry)).toMatchObject({
      roots: [{ name: "MB", sequence: "2-1", vertucci: "II" }, { name: "DB" }, { name: "P" }],
      canalCount: 4,
      foramenCount: 3,
    });
    expect(isAbout(entry, structuredClone(three))).toBe(true);
    expect(isAbout(entry, [...three].reverse())).toBe(false);
    expect(isAbout(undefined, three)).toBe(false);
    expect(unusualRootCount(canalsRead(entry))).toBeUndefined();
  });

  it("says what is unusual in the number of roots", () => {
    const read = canalsRead(canalsEntry(ledgerOf([{ name: "R", levels: [1] }])));
    expect(unusualRootCount(read)).toContain("1 root is unusual for the upper");
  });

  it("leaves a question open until a reason stands beside an unusual number", () => {
    const lone: Roots = [{ name: "R", levels: [1] }];
    const standing = (unusualBecause?: string) => [
      part("anatomy", "anatomy-1", {
        roots: lone,
        foundBy: [],
        ...(unusualBecause === undefined ? {} : { unusualBecause }),
      }),
    ];
    expect(isReasonOpen(ledgerOf(lone), standing())).toBe(true);
    expect(isReasonOpen(ledgerOf(lone), standing("all roots fused, seen in the volume"))).toBe(false);
    expect(isReasonOpen(ledgerOf(three), standing())).toBe(false);
    expect(isReasonOpen([], [])).toBe(false);
  });

  it("that refused can't be read", () => {
    const twice = ledgerOf([
      { name: "MB", levels: [1] },
      { name: "MB", levels: [1] },
    ]);
    expect(canalsRead(canalsEntry(twice))).toBeUndefined();
    expect(canalsEntry(twice)?.refused).toEqual(["roots[1].name: MB is already the name of another root"]);
  });
});
