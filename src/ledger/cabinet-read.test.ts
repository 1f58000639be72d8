import { describe, expect, it } from "vitest";
import { cabinetBodies } from "../../test/samples/cabinet.ts";
import { visitWithFiles } from "../../test/samples/visit-with-files.ts";
import { caseId, ledgerEntryId } from "../core/ids.ts";
import type { CabinetItem, CabinetItemOf } from "../record/cabinet/cabinet-item.ts";
import { type FileUseOfCase, fileUsesOf } from "../record/file-uses.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf, Part } from "../record/parts.ts";
import { type FileTally, fileTallies, lifeOfFile, shownInstruments } from "./cabinet-read.ts";

type Limits = CabinetItemOf<"instrument">["body"]["limits"];
type Used = BodyOf<"visit">["instruments"][number];

const { instrument, file } = cabinetBodies;
const cabinet = (limits: Limits = {}, about: Partial<CabinetItemOf<"file">["body"]> = {}): CabinetItem[] => [
  { id: "shaper", kind: "instrument", revision: 1, body: { ...instrument, limits } },
  { id: "file-1", kind: "file", revision: 1, body: { ...file, ...about } },
];
const geometry = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" } as const;
const counted = { file: { id: "file-1", label: "S1" } };
const row = (more: Partial<Used>): Used => ({ ...geometry, ...counted, ...more });

/** The uses of one visit a day. */
function usesOf(id: string, visits: Readonly<Record<string, readonly Used[]>>, demo = false): FileUseOfCase[] {
  const parts = Object.entries(visits).map(([on, rows]) => ({
    ...{ id: `visit-${on}`, kind: "visit", revision: 1 },
    body: visitWithFiles(on, [...rows]),
  }));
  return fileUsesOf(parts as unknown as Part[]).map((use) => ({ ...use, caseId: id, demo }));
}

const life = (of: string, low: number, high: number, about = "file-1"): LedgerEntry => ({
  ...{ id: ledgerEntryId(of), caseId: caseId(of), subject: lifeOfFile(about), topic: "lifeUsed", topicVersion: 1 },
  ...{ input: {}, inputPaths: [], output: { equivalentTurns: { low, high } }, at: "2026-03-01T00:00:00Z" },
});
const tally = (items: CabinetItem[], uses: FileUseOfCase[], lives: LedgerEntry[] = []): FileTally | undefined =>
  fileTallies({ items, uses, lives })["file-1"];

/** Two cases: one of two visits with MB1 twice, one of one visit; by hand 20 s at 300 a minute are 100 turns. */
const used = [
  ...usesOf("case-1", {
    "2026-03-01": [row({ canal: "MB1", rpm: 300, seconds: 20 }), row({ canal: "MB1", rpm: 300, seconds: 10 })],
    "2026-03-09": [row({ canal: "MB1", rpm: 300, seconds: 20 }), row({}), row({})],
  }),
  ...usesOf("case-2", {
    // 150 forward and 30 back, 5 pairs a second for 12 s: 60 pairs, 120 / 360 net and 180 / 360 swept each.
    "2026-02-20": [row({ canal: "P", reciprocation: { forwardDeg: 150, backDeg: 30, frequencyHz: 5 }, seconds: 12 })],
  }),
];

describe("the tally of a counted file", () => {
  it("counts visits, canals of each visit, cases, sterilisations and turns, and says what no turn counts", () => {
    expect(tally(cabinet(), used)).toEqual({
      ...{ uses: 3, canals: 5, cases: 2, sterilisations: 1, untimed: 2 },
      ...{ turnsNet: 100 + 50 + 100 + 20, turnsSwept: 100 + 50 + 100 + 30 },
      ...{ lastUsedOn: "2026-03-09", over: [] },
    });
  });

  it("is nothing for a file that was never used or that other rows name", () => {
    const nothing = {
      uses: 0,
      canals: 0,
      cases: 0,
      sterilisations: 1,
      untimed: 0,
      turnsNet: 0,
      turnsSwept: 0,
      over: [],
    };
    expect(tally(cabinet(), [])).toEqual(nothing);
    const other = usesOf("case-1", { "2026-03-01": [row({ file: { id: "file-2", label: "S2" } })] });
    expect(tally(cabinet(), other)).toEqual(nothing);
  });

  it.each([
    ["a time of 0", { rpm: 300, seconds: 0 }],
    ["a speed of 0", { rpm: 0, seconds: 9 }],
    ["no time", { rpm: 300 }],
    ["no speed", { seconds: 9 }],
  ])("counts a row with %s as a use without turns", (_, more) => {
    const one = tally(cabinet(), usesOf("case-1", { "2026-03-01": [row({ canal: "P", ...more })] }));
    expect(one).toMatchObject({ uses: 1, canals: 1, untimed: 1, turnsNet: 0, turnsSwept: 0 });
  });

  it("counts turning to and fro where a speed stands beside it", () => {
    // 90 forward and 90 back, twice a second for 10 s: nothing is left, 20 pairs of half a turn are swept.
    const both = { rpm: 300, seconds: 10, reciprocation: { forwardDeg: 90, backDeg: 90, frequencyHz: 2 } };
    const one = tally(cabinet(), usesOf("case-1", { "2026-03-01": [row({ canal: "P", ...both })] }));
    expect(one).toMatchObject({ untimed: 0, turnsNet: 0, turnsSwept: 10 });
  });

  it("counts demo cases for the demo's files alone", () => {
    const uses = [...used, ...usesOf("demo-a", { "2026-01-07": [row({ canal: "P" })] }, true)];
    expect(tally(cabinet(), uses)).toEqual(tally(cabinet(), used));
    expect(tally(cabinet({}, { demo: true }), uses)).toMatchObject({ uses: 4, cases: 3, canals: 6 });
  });

  it("grows by what is used besides, whatever it is, and does not depend on the order", () => {
    const more = usesOf("case-3", { "2026-04-01": [row({ canal: "DB", rpm: 60, seconds: 60 })] });
    const [before, after] = [tally(cabinet(), used), tally(cabinet(), [...more, ...used])];
    expect(after).toMatchObject({ uses: 4, canals: 6, cases: 3, turnsNet: (before?.turnsNet ?? 0) + 60 });
    expect(tally(cabinet(), [...used, ...more].reverse())).toEqual(after);
  });
});

describe("equivalent turns of a counted file", () => {
  it("are at most the sum of the cases and at least the largest of them, and say how many cases are in them", () => {
    const lives = [life("case-1", 10, 30), life("case-2", 15, 20)];
    expect(tally(cabinet(), used, lives)?.equivalentTurns).toEqual({ low: 15, high: 50, cases: 2 });
    expect(tally(cabinet(), used, lives.slice(0, 1))?.equivalentTurns).toEqual({ low: 10, high: 30, cases: 1 });
  });

  it("leave out refused sums, other files and cases that do not count for the file", () => {
    const { output: _, ...refused } = life("case-2", 1, 2);
    const lives = [{ ...refused, refused: ["no course"] }, life("case-1", 1, 9, "file-2"), life("demo-a", 3, 4)];
    expect(tally(cabinet(), used, lives)).not.toHaveProperty("equivalentTurns");
  });
});

describe("the limits of a person", () => {
  it.each([
    ["uses", 3, 2, 3],
    ["canals", 5, 4, 5],
    ["sterilisations", 1, 0, 1],
    ["turns", 270, 269.5, 270],
    ["equivalentTurns", 50, 49, 50],
  ] as const)("%s: %d is within, %d is passed", (name, within, passed, found) => {
    const lives = [life("case-1", 10, 30), life("case-2", 15, 20)];
    expect(tally(cabinet({ [name]: within }), used, lives)?.over).toEqual([]);
    expect(tally(cabinet({ [name]: passed }), used, lives)?.over).toEqual([{ name, limit: passed, found }]);
  });

  it("of equivalent turns is not judged while none are known", () => {
    expect(tally(cabinet({ equivalentTurns: 0 }), used)?.over).toEqual([]);
  });

  it("are those of its instrument alone; without the instrument there are none", () => {
    const [, alone] = cabinet({ uses: 0 });
    expect(tally(alone === undefined ? [] : [alone], used)?.over).toEqual([]);
  });
});

describe("what an instrument of the cabinet measures", () => {
  const shown = (more: object) => {
    const body = { ...instrument, ...more };
    return shownInstruments([{ id: "shaper", kind: "instrument", revision: 1, body }]).shaper;
  };

  // ISO 3630-1 (memory): size 25 is 0.25 mm at the tip and red; taper .06 adds 0.06 mm each mm: 0.31 mm at 1 mm.
  it("is the topic's answer to its geometry", () => {
    const { output } = shown({}) as { output: { colour: string; profile: { atMm: number; diameterMm: number }[] } };
    expect(output.colour).toBe("red");
    expect(output.profile.find(({ atMm }) => atMm === 1)?.diameterMm).toBeCloseTo(0.31, 12);
  });

  it("follows its stations where it has some, whatever its taper", () => {
    const profile = [
      { atMm: 0, diameterMm: 0.25 },
      { atMm: 3, diameterMm: 0.49 },
      { atMm: 16, diameterMm: 1 },
    ];
    const { output } = shown({ profile }) as { output: { profile: { atMm: number; diameterMm: number }[] } };
    expect(output.profile.find(({ atMm }) => atMm === 3)?.diameterMm).toBeCloseTo(0.49, 12);
  });

  it("is a refusal in words, with its path, where the instrument can't be", () => {
    expect(shown({ taper: 0.2 })).toEqual({
      refused: [expect.stringMatching(/^taper: 0.2 gives a diameter of 3.45 mm/)],
    });
  });

  it("is nothing for files and sequences", () => {
    expect(shownInstruments(cabinet().slice(1))).toEqual({});
  });
});
