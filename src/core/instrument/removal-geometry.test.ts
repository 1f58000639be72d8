import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../radiograph/drawn-measures/bent-course-for-tests.ts";
import { answer } from "../topic.ts";
import { removalTopic } from "./removal-topic.ts";

const of = (input: object) => answer(removalTopic, { draws: 200, ...input });
const missing = (input: object) => of(input).notComputed.map(({ name }) => name);

/** An arc from the orifice on: 30 degrees of radius 20 mm are 10.47 mm, 0.681 mm off their chord. */
const arc = { radiusMm: 20, turnDeg: 30, startMm: 0, lengthMm: 14 };
const depth = (20 * Math.PI) / 6;
const sagitta = 20 * (1 - Math.cos(Math.PI / 12));
const seen = { fragment: { headDepthMm: depth }, course: arc };
const straight = { radiusMm: 20, turnDeg: 0, startMm: 0, lengthMm: 15 };

describe("sight line", () => {
  it("cuts the inner wall by its distance, the furcation's unless another is named (C1, C2)", () => {
    const { sightLine } = of(seen);
    expect(sightLine?.maxOffsetMm).toBeCloseTo(sagitta, 4);
    expect(sightLine?.side).toBe("furcation");
    expect(sightLine?.dentineToCutMm).toBeCloseTo(sagitta, 4);
    expect(sightLine?.atMm).toBeCloseTo(depth / 2, 6);
    expect(sightLine?.wallLeftMm).toBeUndefined();
    expect(sightLine?.path.verdict).toBe("wall not known");
    const mesial = of({ ...seen, innerSide: "mesial", walls: [{ side: "mesial", mm: 2 }] }).sightLine;
    expect(mesial?.sides.map(({ side }) => side)).toEqual(["furcation", "mesial"]);
    expect(mesial?.side).toBe("mesial");
    // Which side faces the furcation is not said: the line may lie towards it.
    expect(mesial?.sides[0]?.dentineToCutMm).toBeCloseTo(sagitta, 4);
  });

  // A line as wide as the head in a canal as wide as 0.6 mm: (0.5 - 0.6) / 2 less.
  it("is as wide as the head, and the canal takes up its width (C3)", () => {
    const wide = { ...seen, fragment: { headDepthMm: depth, headDiameterMm: 0.5 }, canalDiameterMm: 0.6 };
    expect(of(wide).sightLine?.dentineToCutMm).toBeCloseTo(sagitta - 0.05, 4);
    // Where one of both is not known, neither has a width: never less dentine to cut than there may be.
    const ray = { ...seen, canalDiameterMm: 0.6 };
    expect(of(ray).sightLine?.dentineToCutMm).toBeCloseTo(sagitta, 4);
    const head = { ...seen, fragment: { headDepthMm: depth, headDiameterMm: 0.5 } };
    expect(of(head).sightLine?.dentineToCutMm).toBeCloseTo(sagitta, 4);
  });

  it("leaves the wall less what it cuts, where least is left (C3)", () => {
    const walls = [
      { side: "mesial", mm: 1.4 },
      { side: "furcation", mm: 1.1 },
      { side: "buccal", mm: 2 },
    ];
    const { sightLine } = of({ ...seen, walls });
    expect(sightLine?.wallLeftMm).toBeCloseTo(1.1 - sagitta, 4);
    expect(sightLine?.sides.map(({ side }) => side)).toEqual(["furcation", "mesial", "buccal"]);
    // Nothing is cut on the outer side and across: those walls stay.
    expect(sightLine?.sides.map(({ wallLeftMm }) => wallLeftMm)).toEqual(
      [1.1 - sagitta, 1.4, 2].map((mm) => expect.closeTo(mm, 4)),
    );
    expect(sightLine?.sides.map(({ grade }) => grade)).toEqual(["thin", "recommended", "recommended"]);
  });

  it("takes walls along straight lines between the places where they are known (C3)", () => {
    // The wall thins to the middle of the arc: 0.9 mm there, where the line lies farthest off.
    const thinnestAlong = [
      { atMm: 0, side: "furcation", mm: 3 },
      { atMm: depth / 2, side: "furcation", mm: 0.9 },
      { atMm: depth, side: "furcation", mm: 3 },
    ];
    const { sightLine } = of({ ...seen, thinnestAlong });
    expect(sightLine?.wallLeftMm).toBeCloseTo(0.9 - sagitta, 4);
    expect(sightLine?.atMm).toBeCloseTo(depth / 2, 6);
    // One station holds all along.
    const one = of({ ...seen, thinnestAlong: [{ atMm: 2, side: "furcation", mm: 0.9 }] });
    expect(one.sightLine?.wallLeftMm).toBeCloseTo(0.9 - sagitta, 4);
  });

  it("leaves more by as much as the walls are thicker (C3)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        (mm, more) => {
          const [thin, thick] = [mm, mm + more].map(
            (wall) => of({ ...seen, walls: [{ side: "furcation", mm: wall }] }).sightLine?.wallLeftMm ?? 0,
          );
          expect((thick ?? 0) - (thin ?? 0)).toBeCloseTo(more, 9);
        },
      ),
      { numRuns: 15 },
    );
  });

  it("of a shifted orifice takes less of the furcation and some of the other wall (C2)", () => {
    const walls = [
      { side: "furcation", mm: 1.1 },
      { side: "mesial", mm: 1.4 },
    ];
    const [fixed, shifted] = [0, 0.6].map((orificeShiftMm) => of({ ...seen, walls, orificeShiftMm }).sightLine);
    const cut = (line: typeof fixed, side: string) => line?.sides.find((one) => one.side === side)?.dentineToCutMm ?? 0;
    expect(cut(shifted, "furcation")).toBeLessThan(cut(fixed, "furcation") - 0.2);
    expect(cut(fixed, "mesial")).toBeCloseTo(0, 9);
    expect(cut(shifted, "mesial")).toBeCloseTo(0.6, 2);
    // Of the shifts that were tried none leaves more than the one that is told.
    const told = fixed?.shiftThatLeavesMost;
    const tried = [0, 0.3, 0.6, 0.9, 1.2, 1.5].map(
      (orificeShiftMm) => of({ ...seen, walls, orificeShiftMm }).sightLine?.wallLeftMm ?? 0,
    );
    expect(Math.max(...tried)).toBeLessThanOrEqual((told?.wallLeftMm ?? 0) + 1e-9);
    const again = of({ ...seen, walls, orificeShiftMm: told?.orificeShiftMm ?? 0 }).sightLine;
    expect(again?.wallLeftMm).toBeCloseTo(told?.wallLeftMm ?? 0, 9);
  });

  it("is refused below the person's limit, and by no other limit (C4)", () => {
    const walls = [{ side: "furcation", mm: 1 }];
    const leaves = 1 - sagitta;
    const verdict = (wallLeftMm?: number) =>
      of({ ...seen, walls, ...(wallLeftMm === undefined ? {} : { limits: { wallLeftMm } }) }).sightLine?.path;
    expect(verdict(leaves + 0.1)).toMatchObject({ verdict: "refused", says: expect.stringContaining("0.10 mm below") });
    expect(verdict(leaves - 0.1)).toMatchObject({ verdict: "above the limit" });
    expect(verdict()?.verdict).toBe("no limit set");
    const through = of({ ...seen, walls: [{ side: "furcation", mm: 0.5 }] }).sightLine;
    expect(through?.sides[0]?.grade).toBe("through");
    expect(through?.path.says).toContain(`passes through the root's surface by ${(sagitta - 0.5).toFixed(2)} mm`);
  });

  it("of a straight canal cuts nothing", () => {
    const { sightLine } = of({ ...seen, course: straight, walls: [{ side: "buccal", mm: 1 }] });
    expect(sightLine?.maxOffsetMm).toBe(0);
    expect(sightLine?.sides.map(({ side, dentineToCutMm }) => [side, dentineToCutMm])).toEqual([
      ["furcation", 0],
      ["buccal", 0],
    ]);
  });

  it("takes both faces of an inner wall that is buccal, and the furcation across it (C2)", () => {
    const walls = (["furcation", "mesial", "buccal", "lingual"] as const).map((side) => ({ side, mm: 2 }));
    const { sightLine } = of({ ...seen, walls, innerSide: "buccal", orificeShiftMm: 0.4 });
    const cut = Object.fromEntries(sightLine?.sides.map(({ side, dentineToCutMm }) => [side, dentineToCutMm]) ?? []);
    expect(cut.buccal).toBeGreaterThan(0.3);
    expect(cut.lingual).toBeCloseTo(0.4, 2);
    expect([cut.mesial, cut.furcation]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  });

  it("is not computed without course or depth; a course that ends at the head says the depth", () => {
    expect(missing({ fragment: { headDepthMm: 5 } })).toContain("sightLine");
    expect(missing({ fragment: {}, course: arc })).toContain("sightLine");
    const toHead = { ...arc, lengthMm: depth + 1e-9 };
    const found = of({ fragment: {}, course: toHead, courseEnds: "head" });
    expect(found.sightLine?.maxOffsetMm).toBeCloseTo(sagitta, 4);
    expect(found.place).toEqual({ readFromCourse: [] });
  });
});

/** Head 0.44 mm, clearance 0.15 mm, canal 0.5 mm: a platform of 0.74 mm takes 0.12 mm on each side. */
const platformed = {
  fragment: { headDiameterMm: 0.44 },
  canalDiameterMm: 0.5,
  clearanceMm: 0.15,
  wallsConfirmed: true,
  walls: [
    { side: "distal", mm: 1.3 },
    { side: "furcation", mm: 0.9 },
  ],
};

describe("platform", () => {
  it("is the head and twice the clearance; what is left is the thinnest wall less half of what it widens (C5)", () => {
    const { platform } = of(platformed);
    expect(platform?.widthMm).toBeCloseTo(0.74, 9);
    expect(platform).toMatchObject({ wallLeftMm: expect.closeTo(0.78, 9), side: "furcation", grade: "thin" });
    expect(platform?.sides.map(({ side }) => side)).toEqual(["furcation", "distal"]);
    expect(of({ ...platformed, offCentreMm: 0.3 }).platform?.wallLeftMm).toBeCloseTo(0.48, 9);
  });

  it("narrower than the canal takes nothing, unless it lies off the middle by more than its room (C5)", () => {
    const narrow = { ...platformed, canalDiameterMm: 1 };
    expect(of(narrow).platform?.wallLeftMm).toBe(0.9);
    expect(of({ ...narrow, offCentreMm: 0.1 }).platform?.wallLeftMm).toBe(0.9);
    expect(of({ ...narrow, offCentreMm: 0.2 }).platform?.wallLeftMm).toBeCloseTo(0.9 - 0.07, 9);
  });

  // Lim and Stock 1987, 0.3 mm; Caputo and Standlee 1976, 1 mm: both from memory.
  it.each([
    [0.12, "through"],
    [0.41, "critical"],
    [0.43, "thin"],
    [0.42, "thin"],
    [1.11, "thin"],
    [1.12, "recommended"],
  ])("before which a wall of %d mm stood is %s (C5)", (mm, grade) => {
    expect(of({ ...platformed, walls: [{ side: "furcation", mm }] }).platform?.grade).toBe(grade);
  });

  it("stands beside each limit with its mark, the person's as well (C5)", () => {
    const { platform } = of({ ...platformed, limits: { wallLeftMm: 0.8 } });
    expect(platform?.limits).toEqual([
      { source: "lim-stock-1987", limitMm: 0.3, mark: "memory", stands: "above" },
      { source: "caputo-standlee-1976", limitMm: 1, mark: "memory", stands: "below" },
      { source: "own", limitMm: 0.8, mark: "own", stands: "below" },
    ]);
  });

  // Moment of inertia of a ring, pi (Do^4 - Di^4) / 64: from 0.5 to 1 mm in 3 mm it falls by 1.2 %.
  it("takes little of the ring's moment of inertia, which stands beside the wall (C6)", () => {
    const { platform } = of({ ...platformed, clearanceMm: 0.28, walls: [{ side: "furcation", mm: 1.25 }] });
    expect(platform?.ring?.outerMm).toBeCloseTo(3, 9);
    expect(platform?.ring?.before).toBeCloseTo((Math.PI * (81 - 0.0625)) / 64, 9);
    expect(platform?.ring?.lostShare).toBeCloseTo(0.0116, 4);
    expect(of({ ...platformed, canalDiameterMm: 1 }).platform?.ring?.lostShare).toBe(0);
  });

  it("is not computed without head or clearance, its wall not without canal or wall (C18)", () => {
    expect(missing({ ...platformed, clearanceMm: undefined })).toContain("platform");
    expect(missing({ ...platformed, fragment: {} })).toContain("platform");
    const bare = { fragment: { headDiameterMm: 0.44 }, clearanceMm: 0.15 };
    expect(of(bare).platform).toMatchObject({ widthMm: 0.74, sides: [] });
    expect(missing(bare)).toContain("platform.wallLeftMm");
    expect(missing({ ...bare, canalDiameterMm: 0.5 })).toContain("platform.wallLeftMm");
  });
});

describe("where the head lies", () => {
  const bent = { radiusMm: 10, turnDeg: 40, startMm: 6, lengthMm: 18 };
  const place = (headDepthMm: number, more = {}) => of({ fragment: { headDepthMm }, course: bent, ...more }).place;

  it.each([
    [5.9, "coronal", "before"],
    [6.1, "middle", "before"],
    [9, "middle", "in"],
    [12.1, "apical", "in"],
    [17, "apical", "beyond"],
  ])("%d mm deep is read from the course: %s third, %s its bend (C7)", (depthMm, third, bend) => {
    expect(place(depthMm)).toEqual({ third, bend, readFromCourse: ["third", "bend"] });
  });

  it("is taken as given where it is given; a canal that hardly turns has no bend (C7)", () => {
    expect(place(17, { third: "middle", bend: "in" })).toEqual({ third: "middle", bend: "in", readFromCourse: [] });
    expect(place(9, { course: { ...bent, turnDeg: 4 } }).bend).toBe("none");
    expect(of({ fragment: {} }).place).toEqual({ readFromCourse: [] });
  });
});

describe("what can't be is refused", () => {
  const pathsOf = (input: object) => refusalOf(removalTopic, input).faults.map(({ path }) => path);

  it.each([
    ["a head beyond the course", { ...seen, fragment: { headDepthMm: 14.02 } }, "fragment.headDepthMm"],
    ["a fragment longer than the course", { ...seen, fragment: { lengthMm: 14.02 } }, "fragment.lengthMm"],
    [
      "a wall beyond the course",
      { ...seen, thinnestAlong: [{ atMm: 14.5, side: "mesial", mm: 1 }] },
      "thinnestAlong[0].atMm",
    ],
    ["a head wider than the canal", { ...platformed, fragment: { headDiameterMm: 0.52 } }, "fragment.headDiameterMm"],
    [
      "a platform wider than the root",
      { ...platformed, clearanceMm: 0.9, walls: [{ side: "mesial", mm: 0.8 }] },
      "clearanceMm",
    ],
    ["a platform outside the root", { ...platformed, offCentreMm: 1.4 }, "offCentreMm"],
    [
      "a wall thinner than the canal at the head",
      { ...platformed, wallsConfirmed: false, walls: [{ side: "mesial", mm: 0.49 }] },
      "walls[0].mm",
    ],
    [
      "a wall thinner than the canal along the way",
      { fragment: {}, canalDiameterMm: 0.5, thinnestAlong: [{ atMm: 5, side: "furcation", mm: 0.3 }] },
      "thinnestAlong[0].mm",
    ],
    [
      "a side given twice",
      {
        fragment: {},
        walls: [
          { side: "mesial", mm: 1 },
          { side: "mesial", mm: 2 },
        ],
      },
      "walls[1].side",
    ],
    ["an arc beyond its canal", { fragment: {}, course: { ...arc, turnDeg: 90 } }, "course.lengthMm"],
  ])("%s (input.impossible)", (_, input, path) => {
    expect(refusalOf(removalTopic, input).code).toBe("input.impossible");
    expect(pathsOf(input)).toEqual([path]);
  });

  it("but a wall as thick as the canal, and a thinner one that a person stands by, are weighed", () => {
    const walled = (mm: number, more = {}) => of({ ...platformed, walls: [{ side: "mesial", mm }], ...more }).platform;
    expect(walled(0.5, { wallsConfirmed: undefined })?.wallLeftMm).toBeCloseTo(0.38, 9);
    expect(walled(0.4, { wallsConfirmed: true })?.wallLeftMm).toBeCloseTo(0.28, 9);
  });

  it("with every fault at once", () => {
    const twice = { ...seen, fragment: { headDepthMm: 20, lengthMm: 30 } };
    expect(pathsOf(twice)).toEqual(["fragment.headDepthMm", "fragment.lengthMm"]);
  });

  it.each([
    ["a wall of nothing", { fragment: {}, walls: [{ side: "mesial", mm: 0 }] }, "walls[0].mm"],
    ["a negative wall", { fragment: {}, walls: [{ side: "mesial", mm: -0.4 }] }, "walls[0].mm"],
    ["a negative depth", { fragment: { headDepthMm: -1 } }, "fragment.headDepthMm"],
    ["a negative clearance", { fragment: {}, clearanceMm: -0.1 }, "clearanceMm"],
    ["an unknown side", { fragment: {}, innerSide: "left" }, "innerSide"],
    ["too few draws", { fragment: {}, draws: 10 }, "draws"],
  ])("%s (input.invalid)", (_, input, path) => {
    expect(refusalOf(removalTopic, input).code).toBe("input.invalid");
    expect(pathsOf(input)).toEqual([path]);
  });

  it("a course of three points (trace.tooFewPoints)", () => {
    const input = {
      fragment: {},
      course: {
        points: [
          [0, 0],
          [0, 1],
          [0, 2],
        ],
      },
    };
    expect(refusalOf(removalTopic, input).code).toBe("trace.tooFewPoints");
    expect(pathsOf(input)).toEqual(["course.points"]);
  });

  it("but not a head as wide as the canal, nor one at its very end", () => {
    expect(of({ ...platformed, fragment: { headDiameterMm: 0.5 } }).platform?.widthMm).toBeCloseTo(0.8, 9);
    expect(of({ ...seen, fragment: { headDepthMm: 14 } }).sightLine?.maxOffsetMm).toBeGreaterThan(0);
  });
});
