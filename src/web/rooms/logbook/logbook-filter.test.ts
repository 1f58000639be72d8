import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { everyCase, filteredRows, type LogbookRow, logbookSummary, recallState, sortedRows } from "./logbook-filter.ts";

const molar = { twoDigit: "26", universal: "14", quadrant: "upper left 6", type: "molar", arch: "upper" };
const row = (more: object): LogbookRow =>
  ({
    ...{ caseId: "a", pseudonym: "P-1", tooth: "26", treatment: "retreatment", pulpal: null, apical: null },
    ...{ mishaps: 0, fillingEndMm: null, demo: false, nextOn: null, recall: "none", presentedOn: "2025-01-01" },
    toothView: { ...molar, name: "upper left first molar" },
    ...more,
  }) as unknown as LogbookRow;
const rows = [
  row({ pseudonym: "P-1", mishaps: 1, demo: true, fillingEndMm: 0.5, recall: "overdue", nextOn: "2025-01-01" }),
  row({ pseudonym: "P-2", treatment: "surgery", fillingEndMm: -1, recall: "due", nextOn: "2026-02-01" }),
  row({ pseudonym: "L-3", tooth: "35", toothView: { ...molar, type: "premolar", arch: "lower", name: "lower" } }),
];
const names = (found: readonly LogbookRow[]) => found.map(({ pseudonym }) => pseudonym);

describe("the logbook's filter", () => {
  it("lets everything through when nothing is chosen", () => {
    expect(filteredRows(rows, everyCase)).toEqual(rows);
  });

  it.each([
    [{ text: "p-2" }, ["P-2"]],
    [{ text: "first molar" }, ["P-1", "P-2"]],
    [{ text: " 35 " }, ["L-3"]],
    [{ type: "premolar" }, ["L-3"]],
    [{ arch: "upper" }, ["P-1", "P-2"]],
    [{ treatment: "surgery" }, ["P-2"]],
    [{ mishap: "yes" }, ["P-1"]],
    [{ mishap: "no" }, ["P-2", "L-3"]],
    [{ recall: "due" }, ["P-1", "P-2"]],
    [{ recall: "overdue" }, ["P-1"]],
    [{ recall: "none" }, ["L-3"]],
    [{ origin: "own" }, ["P-2", "L-3"]],
    [{ origin: "own", mishap: "yes" }, []],
  ] as const)("narrows by %j", (chosen, found) => {
    expect(names(filteredRows(rows, { ...everyCase, ...chosen }))).toEqual(found);
  });

  it("finds by a diagnosis", () => {
    const necrotic = row({ pseudonym: "N", pulpal: "pulpNecrosis", apical: "chronicApicalAbscess" });
    expect(names(filteredRows([...rows, necrotic], { ...everyCase, pulpal: "pulpNecrosis" }))).toEqual(["N"]);
    expect(names(filteredRows([...rows, necrotic], { ...everyCase, apical: "normalApicalTissues" }))).toEqual([]);
  });
});

describe("the logbook's order", () => {
  it("puts what has no value last, whichever way", () => {
    expect(names(sortedRows(rows, { by: "filling", down: false }))).toEqual(["P-2", "P-1", "L-3"]);
    expect(names(sortedRows(rows, { by: "filling", down: true }))).toEqual(["P-1", "P-2", "L-3"]);
  });

  it("loses no row and adds none", () => {
    const keys = [
      "tooth",
      "pseudonym",
      "treatment",
      "diagnosis",
      "presentedOn",
      "filling",
      "mishaps",
      "nextOn",
    ] as const;
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.boolean(), fc.shuffledSubarray(rows), (by, down, some) => {
        expect(names(sortedRows(some, { by, down })).sort()).toEqual(names(some).sort());
      }),
    );
  });
});

describe("the logbook's summary", () => {
  it("counts fillings within 0 to 2 mm, both ends included", () => {
    const ends = [0, 2, 2.1, -0.1, null].map((fillingEndMm) => row({ fillingEndMm }));
    expect(logbookSummary(ends)).toMatchObject({ cases: 5, filled: 4, within: 2 });
  });

  it.each([
    [null, "none"],
    ["2025-12-31", "overdue"],
    ["2026-01-01", "due"],
    ["2026-03-03", "due"],
    ["2026-03-04", "later"],
  ])("a next day of %s is %s", (nextOn, state) => {
    expect(recallState({ nextOn }, "2026-01-01")).toBe(state);
  });
});
