import { describe, expect, it } from "vitest";
import { part } from "../../../../test/sample-case.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { Part } from "../../../record/parts.ts";
import type { Film } from "../kernels/film-name.ts";
import { comparisonName, firstAndLast } from "./comparison.ts";
import {
  carriedToSecond,
  entryOfComparison,
  lesionName,
  outlinesOnFirst,
  readComparison,
} from "./comparison-reading.ts";

const triangle: [number, number][] = [
  [1, 1],
  [9, 1],
  [5, 8],
];
const lesion = part("mark", "mb-1", { shape: "outline", film: "film-1", what: "Lesion at MB1", points: triangle });
const parts: Part[] = [lesion];
const output = {
  transform: [
    [2, 0, 5],
    [0, 2, -1],
    [0, 0, 1],
  ],
  comparable: true,
  statement: "The films can be compared.",
  areaRatio: 0.52,
  intervals: { areaRatio: { low: 0.49, high: 0.55, level: 0.95 } },
  carried: { afterOnBefore: triangle },
  others: [{ name: "lesion at P", afterOnBefore: triangle }],
};
const entryWith = (change: object): LedgerEntry =>
  ({
    ...{ subject: "compareFilms of pair-1", topic: "compareFilms" },
    inputPaths: [{ input: "lesions.before", record: "mb-1/points" }],
    ...change,
  }) as unknown as LedgerEntry;

describe("a comparison as the ledger has it", () => {
  it("is found by its part, and read where it was computed", () => {
    const entry = entryWith({ output });
    expect(entryOfComparison([entryWith({ topic: "lesion" }), entry], "pair-1")).toBe(entry);
    expect(entryOfComparison([entry], "pair-2")).toBeUndefined();
    expect(readComparison(entry)).toMatchObject({ areaRatio: 0.52 });
    expect(readComparison(entryWith({ refused: ["not compared yet"] }))).toBeUndefined();
    expect(readComparison(undefined)).toBeUndefined();
  });

  it("gives the lesion as it was on the first film, and as it is where the second one falls on it", () => {
    expect(outlinesOnFirst(entryWith({ output }), parts)).toEqual({ before: [triangle], after: [triangle, triangle] });
    expect(outlinesOnFirst(entryWith({ refused: ["waits"] }), parts)).toEqual({ before: [], after: [] });
  });

  it("takes outlines of the first film to the second, however deep the films lie to each other", () => {
    const read = readComparison(entryWith({ output }));
    expect(read && carriedToSecond([triangle], read.transform)).toEqual([
      [
        [7, 1],
        [23, 1],
        [15, 15],
      ],
    ]);
    // The unit square to the quadrilateral (0,0), (1,0), (0,1), (2/3,2/3), worked out by hand.
    const square = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const;
    const tilted = carriedToSecond(
      [square],
      [
        [2, 0, 0],
        [0, 2, 0],
        [1, 1, 1],
      ],
    );
    expect(tilted[0]?.[1]).toEqual([1, 0]);
    expect(tilted[0]?.[2]?.[0]).toBeCloseTo(2 / 3, 12);
    expect(tilted[0]?.[2]?.[1]).toBeCloseTo(2 / 3, 12);
  });

  it("calls the lesion what a person called it", () => {
    expect(lesionName(entryWith({ output }), parts)).toBe("the lesion at MB1");
    expect(lesionName(entryWith({ output, inputPaths: [] }), parts)).toBe("the lesion");
  });
});

describe("the films of a comparison", () => {
  const film = (id: string, takenOn: string, purpose = "recall") =>
    ({ id, kind: "film", revision: 1, body: { takenOn, purpose } }) as unknown as Film;
  const films = [film("a", "2024-02-20"), film("b", "2024-09-17")];

  it("give it its name by days, also where one is gone", () => {
    expect(comparisonName({ before: "a", after: "b" }, films, "2024-02-20")).toBe("day 0 and day 210");
    expect(comparisonName({ before: "a", after: "z" }, films, "2024-02-20")).toBe("day 0 and a film taken out");
    const oneDay = [film("a", "2024-02-20", "diagnostic"), film("c", "2024-02-20", "angled")];
    expect(comparisonName({ before: "a", after: "c" }, oneDay, "2024-02-20")).toBe(
      "day 0, diagnostic and day 0, angled",
    );
  });

  it("are the first and the last to begin with, if there are two", () => {
    expect(firstAndLast(films)).toEqual({ before: "a", after: "b" });
    expect(firstAndLast(films.slice(1))).toBeUndefined();
    expect(firstAndLast([])).toBeUndefined();
  });
});
