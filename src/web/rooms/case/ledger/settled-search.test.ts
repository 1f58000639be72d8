import { describe, expect, it } from "vitest";
import type { Part } from "../../../../record/parts.ts";
import { ledgerTitle, settledFirst } from "./settled-search.ts";

const search = (id: string, foundAs?: string): Part =>
  ({ id, kind: "search", revision: 1, body: { feature: "secondMesiobuccal", looks: [], foundAs } }) as unknown as Part;
const chance = { topic: "missedCanal", subject: "missedCanal of search-1" };
const lines = [
  { at: "posterior.mean", name: "Chance that it is there", value: "63 %", interval: "40\u201382" },
  { at: "prior.mean", name: "Before any look", value: "69 %" },
];

describe("a search in the ledger", () => {
  it("speaks by the canal that it came to, with the chance behind it", () => {
    const parts = [search("search-2", "RE"), search("search-1", "MB2")];
    expect(ledgerTitle(chance, parts)).toBe("Second mesiobuccal canal: found as");
    expect(settledFirst(lines, chance, parts)).toEqual([
      { at: "foundAs", name: "Found as", value: "MB2" },
      { at: "posterior.mean", name: "Chance by the series and the looks", value: "63 %", interval: "40\u201382" },
      { at: "prior.mean", name: "Before any look", value: "69 %" },
    ]);
  });

  it("speaks by the chance while its own canal is not found", () => {
    const parts = [search("search-1"), search("search-2", "RE")];
    expect(ledgerTitle(chance, parts)).toBe("Second mesiobuccal canal: chance that it is there");
    expect(settledFirst(lines, chance, parts)).toEqual(lines);
  });

  it("leaves entries of other topics as they are", () => {
    const other = { ...chance, topic: "canals" };
    const parts = [search("search-1", "MB2")];
    expect(ledgerTitle(other, parts)).toMatch(/roots and canals$/);
    expect(settledFirst(lines, other, parts)).toEqual(lines);
  });
});
