import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type At, bentCourse, bentLengthMm, refusalOf } from "../radiograph/drawn-measures/bent-course-for-tests.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import { bendTopic } from "./bend-topic.ts";

const of = (input: object) => answer(bendTopic, input);
const bound = (input: object, name: string) => of(input).bounds.find((one) => one.name === name);

/** The usual test canal: 60 degrees on 5 mm, its middle 5 mm from the tip; 16 mm long. */
const arcMm = (5 * Math.PI) / 3;
const usual = { radiusMm: 5, turnDeg: 60, startMm: 16 - 5 - arcMm / 2, lengthMm: 16 };
/** The bent canal as a hand would mark it. */
const marked = bentCourse.filter((_, at) => at % 8 === 0);
const red6 = { size: 25, taper: 0.06 };
/** An arc over the whole canal, so that every place of the instrument lies on it. */
const allOf = (radiusMm: number) => ({ radiusMm, turnDeg: 3, startMm: 0, lengthMm: (radiusMm * Math.PI) / 60 });

describe("the strain of a bent instrument", () => {
  // Plane geometry, worked by hand: D/(2R), D/(2R-D), D/(2R+D) at x mm from the tip.
  it.each([
    [25, 0.06, 3, 5, 0.043, 0.044932079, 0.041227229],
    [25, 0.02, 3, 5, 0.031, 0.031991744, 0.030067895],
    [30, 0.09, 3, 5, 0.057, 0.060445387, 0.053926206],
    [30, 0.09, 3, 10, 0.0285, 0.57 / 19.43, 0.57 / 20.57],
    [30, 0.09, 3.32, 5, 0.05988, 0.063693997, 0.056496962],
    [25, 0.08, 5, 5, 0.065, 0.069518717, 0.061032864],
    [20, 0.04, 5, 2, 0.1, 0.111111111, 0.090909091],
  ])("size %d taper %d at %d mm on %d mm is known by each convention (C1)", (size, taper, atMm, radiusMm, ...known) => {
    // The arc's coronal end lies where the strain is asked for; straight before it.
    const course = { radiusMm, turnDeg: ((0.5 / radiusMm) * 180) / Math.PI, startMm: 10, lengthMm: 12 };
    for (const [index, convention] of (["neutral", "outer", "inner"] as const).entries()) {
      const tipDepthMm = 10 + atMm;
      const input = { instrument: { size, taper }, course: { ...course, lengthMm: 20 }, tipDepthMm, convention };
      expect(of(input)).toMatchObject({
        peakStrain: expect.closeTo(known[index] ?? 0, 8),
        fromTipMm: expect.closeTo(atMm, 9),
        fromOrificeMm: expect.closeTo(10, 9),
        radiusMm: expect.closeTo(radiusMm, 9),
      });
    }
  });

  it("is neutral where no convention is asked for (C1)", () => {
    const input = { instrument: red6, course: usual, tipDepthMm: 16 };
    const asked = of({ ...input, convention: "neutral" });
    expect(of(input)).toEqual(asked);
    expect(of({ ...input, convention: "inner" }).basis.assumptions.join()).toContain("inner side");
  });

  it("has its place from the reference point where the course begins there, and from nowhere else (C2)", () => {
    const asked = { instrument: red6, course: { ...usual, radiusMm: 2, turnDeg: 30 }, tipDepthMm: 16 };
    const [orifice, cusp] = [of(asked), of({ ...asked, courseStarts: "referencePoint" })];
    expect(of({ ...asked, courseStarts: "orifice" })).toEqual(orifice);
    expect(cusp.fromReferenceMm).toBeCloseTo(usual.startMm, 9);
    expect([cusp.fromOrificeMm, orifice.fromReferenceMm]).toEqual([undefined, undefined]);
    expect(cusp.notComputed).toContainEqual({ name: "fromOrificeMm", why: expect.stringMatching(/reference point/) });
    expect([cusp.peakStrain, cusp.fromTipMm]).toEqual([orifice.peakStrain, orifice.fromTipMm]);
    expect(cusp.cautions[0]).toMatch(/10 %.* mm from the reference point\.$/);
    expect(orifice.cautions[0]).toMatch(/10 %.* mm from the orifice\.$/);
    const straight = { ...asked, course: { ...usual, turnDeg: 0 }, courseStarts: "referencePoint" };
    expect(of(straight).notComputed.filter(({ name }) => name === "fromOrificeMm")).toHaveLength(1);
  });

  it("of a tapered instrument is largest at the arc's coronal end, of a parallel one anywhere on it (C3)", () => {
    const coronalEndMm = 5 + arcMm / 2;
    const found = of({ instrument: red6, course: usual, tipDepthMm: 16 });
    expect(found.fromTipMm).toBeCloseTo(coronalEndMm, 9);
    expect(found.peakStrain).toBeCloseTo((0.25 + 0.06 * coronalEndMm) / 10, 9);
    const parallel = of({ instrument: { size: 25, taper: 0 }, course: usual, tipDepthMm: 16 });
    expect(parallel.peakStrain).toBeCloseTo(0.025, 9);
    expect(parallel.fromTipMm).toBeGreaterThanOrEqual(5 - arcMm / 2 - 1e-9);
    expect(parallel.fromTipMm).toBeLessThanOrEqual(coronalEndMm + 1e-9);
  });

  it("is told along the seated part, from the tip to the orifice (C3)", () => {
    const { profile } = of({ instrument: red6, course: usual, tipDepthMm: 16 });
    expect([profile[0]?.fromTipMm, profile.at(-1)?.fromTipMm]).toEqual([0, 16]);
    const at = (mm: number) => profile.find(({ fromTipMm }) => Math.abs(fromTipMm - mm) < 1e-9)?.strain;
    expect([at(2), at(5), at(8)]).toEqual([0, expect.closeTo(0.055, 9), 0]);
  });

  it("grows with a cap, a profile and the depth as the geometry says (C3)", () => {
    const cap = { ...red6, maxDiameterMm: 0.5 };
    expect(of({ instrument: cap, course: usual, tipDepthMm: 16 }).peakStrain).toBeCloseTo(0.05, 9);
    const profile = [
      { atMm: 0, diameterMm: 0.25 },
      { atMm: 5, diameterMm: 0.8 },
      { atMm: 16, diameterMm: 0.25 },
    ];
    expect(of({ instrument: { profile }, course: usual, tipDepthMm: 16 })).toMatchObject({
      peakStrain: expect.closeTo(0.08, 9),
      fromTipMm: expect.closeTo(5, 9),
    });
    // With its tip where the arc begins nothing of it is bent.
    const short = of({ instrument: red6, course: usual, tipDepthMm: 8 });
    expect(short).toMatchObject({ peakStrain: 0, overTenPercent: false });
    expect(short.notComputed.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["fromTipMm", "fromOrificeMm", "radiusMm"]),
    );
  });

  it("beyond the working part is that of a shaft as thick as its end, and says so (C2)", () => {
    const course = { radiusMm: 8, turnDeg: 10, startMm: 1, lengthMm: 20 };
    const found = of({ instrument: { size: 25, taper: 0.02, lengthMm: 25 }, course, tipDepthMm: 20 });
    expect(found.peakStrain).toBeCloseTo(0.57 / 16, 9);
    expect(found.basis.assumptions.join()).toContain("Beyond 16 mm");
  });

  it("scales: twice the instrument in a canal of twice the size is strained as much (property)", () => {
    const sizes = fc.record({
      tipMm: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
      taper: fc.double({ min: 0, max: 0.04, noNaN: true }),
      radiusMm: fc.double({ min: 3, max: 8, noNaN: true }),
    });
    fc.assert(
      fc.property(sizes, ({ tipMm, taper, radiusMm }) => {
        const course = { radiusMm, turnDeg: 40, startMm: 4, lengthMm: 12 };
        const once = of({ instrument: { tipMm, taper, workingMm: 12 }, course, tipDepthMm: 11 });
        const twice = of({
          instrument: { tipMm: 2 * tipMm, taper, workingMm: 24 },
          course: { radiusMm: 2 * radiusMm, turnDeg: 40, startMm: 8, lengthMm: 24 },
          tipDepthMm: 22,
        });
        expect(twice.peakStrain).toBeCloseTo(once.peakStrain, 9);
        expect(once.peakStrain).toBeCloseTo(Math.max(...once.profile.map(({ strain }) => strain)), 9);
      }),
      { numRuns: 40 },
    );
  });

  it("over 10 % is said with its place; at 10 % it is not (C4)", () => {
    const over = of({ instrument: { size: 40, taper: 0.06 }, course: allOf(3), tipDepthMm: allOf(3).lengthMm });
    // (0.4 + 0.06 * 0.157) / 6 = 6.8 %: not over. A radius of 2 mm makes 10.2 %.
    expect(over.overTenPercent).toBe(false);
    const tight = of({ instrument: { size: 40, taper: 0.06 }, course: allOf(2), tipDepthMm: allOf(2).lengthMm });
    expect(tight.overTenPercent).toBe(true);
    expect(tight.cautions[0]).toContain("beyond a strain of 10 %");
    const exactly = of({ instrument: { size: 40, taper: 0 }, course: allOf(2), tipDepthMm: allOf(2).lengthMm });
    expect(exactly.peakStrain).toBeCloseTo(0.1, 9);
    expect(exactly.overTenPercent).toBe(false);
  });

  it("in a straight canal is 0, with a reason for what is absent (C3)", () => {
    const points = Array.from({ length: 12 }, (_, index) => [0, index]);
    const found = of({ instrument: red6, course: { points }, tipDepthMm: 10 });
    expect(found.peakStrain).toBe(0);
    expect(found.fromTipMm).toBeUndefined();
    expect(of({ instrument: red6, course: { ...usual, turnDeg: 0 }, tipDepthMm: 16 }).peakStrain).toBe(0);
  });
});

describe("the strain in a traced canal", () => {
  const inSpace = marked.map(([x, y]) => [x, y, 0]);

  // The traced canal: 10 mm straight, then 60 degrees on 5 mm to its end; its arc ends 5.236 mm from the tip. Points
  // without noise: the family holds them to 1e-4.
  it("is that of the family that fits it (C2, C3)", () => {
    const found = of({ instrument: red6, course: { points: marked }, tipDepthMm: 15.23 });
    const coronalEndMm = 15.23 - 10;
    expect(found.peakStrain).toBeCloseTo((0.25 + 0.06 * coronalEndMm) / 10, 4);
    expect(found.fromTipMm).toBeCloseTo(coronalEndMm, 2);
    expect(found.turnDeg).toBeCloseTo(60, 1);
    expect(found.basis.assumptions[0]).toContain("straight-arc through the points");
  });

  it("has intervals that hold the truth of noisy points, and of the tolerance (C6)", () => {
    const { normal } = seededRandom(5);
    const sigmaMm = 0.05;
    const points = bentCourse
      .filter((_, at) => at % 4 === 0)
      .map(([x, y]): At => [x + sigmaMm * normal(), y + sigmaMm * normal()]);
    const { intervals, ...found } = of({ instrument: red6, course: { points, sigmaMm }, tipDepthMm: 15 });
    const truth = (0.25 + 0.06 * 5) / 10;
    expect(intervals.peakStrain?.low).toBeLessThan(truth);
    expect(intervals.peakStrain?.high).toBeGreaterThan(truth);
    expect(intervals.fromTipMm?.low).toBeLessThan(found.fromTipMm ?? 0);
    expect(intervals.fromTipMm?.high).toBeGreaterThan(found.fromTipMm ?? 0);
    // An arc without an error: 0.02 mm of tolerance on either side over 2R.
    const arc = of({ instrument: red6, course: usual, tipDepthMm: 16 });
    expect((arc.intervals.peakStrain?.high ?? 0) - arc.peakStrain).toBeCloseTo(0.002, 9);
    expect(arc.peakStrain - (arc.intervals.peakStrain?.low ?? 0)).toBeCloseTo(0.002, 9);
    expect(arc.notComputed.map(({ name }) => name)).toEqual(["intervals.fromTipMm"]);
  });

  it("where no family fits is the spline's, without an interval (C2, C6)", () => {
    // A spiral that tightens all along, from a radius of 60 to one of 3 mm, is no arc and no pair of arcs.
    let [x, y, turned] = [0, 0, 0];
    const points = Array.from({ length: 161 }, (_, at) => {
      const here = [x, y];
      turned += 0.1 / (60 - (57 * at) / 160) + 0.06 * Math.sin(at / 8) ** 3;
      x += 0.1 * Math.sin(turned);
      y += 0.1 * Math.cos(turned);
      return here;
    });
    const found = of({ instrument: red6, course: { points }, tipDepthMm: 15 });
    expect(found.basis.assumptions[0]).toContain("the smoothing spline");
    expect(found.intervals).toEqual({});
    expect(found.notComputed.map(({ name }) => name)).toEqual(["intervals.peakStrain", "intervals.fromTipMm"]);
    expect(found.bounds.map((one) => one.bound)).toEqual(["none", "none", "none"]);
  });

  it("known in space reads as measured, but for clearance (C5)", () => {
    const input = { instrument: red6, course: { points: inSpace }, tipDepthMm: 15 };
    expect(of(input).bounds.map((one) => one.bound)).toEqual(["asMeasured", "asMeasured", "upper"]);
    expect(bound({ ...input, clearance: "some" }, "peakStrain")?.bound).toBe("upper");
    expect(bound({ ...input, clearance: "none" }, "peakStrain")?.bound).toBe("asMeasured");
  });
});

describe("what one film bounds", () => {
  const gentle = { radiusMm: 12, turnDeg: 25, startMm: 6, lengthMm: 14 };
  const input = { instrument: red6, course: gentle, tipDepthMm: 14, clearance: "none" };
  const one = (view: object, rest: object = {}) =>
    of({ ...input, ...rest, view: { films: "one", ...view } }).bounds.map((named) => named.bound);

  it("is turn and strain from below, radius from above: long axis parallel, turn below 35 degrees (C5)", () => {
    expect(one({ longAxis: "parallel", turnAtMostDeg: 30 })).toEqual(["lower", "upper", "lower"]);
  });

  it("is the turn alone where the true turn may pass 35 degrees (C5)", () => {
    expect(one({ longAxis: "parallel" })).toEqual(["lower", "none", "none"]);
    expect(one({ longAxis: "parallel", turnAtMostDeg: 40 })).toEqual(["lower", "none", "none"]);
    const sharp = { course: { ...gentle, radiusMm: 6, turnDeg: 40 } };
    expect(one({ longAxis: "parallel", turnAtMostDeg: 45 }, sharp)).toEqual(["lower", "none", "none"]);
  });

  it("is nothing where the long axis may be foreshortened, or clearance pulls the other way (C5)", () => {
    expect(one({ turnAtMostDeg: 30 })).toEqual(["none", "none", "none"]);
    expect(one({ longAxis: "notKnown" })).toEqual(["none", "none", "none"]);
    const loose = one({ longAxis: "parallel", turnAtMostDeg: 30 }, { clearance: "some" });
    expect(loose).toEqual(["lower", "upper", "none"]);
    expect(one({ longAxis: "parallel", turnAtMostDeg: 30 }, { clearance: "notKnown" })).toEqual(loose);
  });

  // The curve's plane is turned by g about the long axis; the film drops what points to it. Brute force over g.
  it("holds on the projection of a turned arc, and fails past the limit (C5, brute force)", () => {
    const seen = (turnDeg: number, g: number) => {
      const t = (turnDeg * Math.PI) / 180;
      const at = (angle: number) => ({ x: 5 * (1 - Math.cos(angle)) * Math.cos(g), y: 5 * Math.sin(angle) });
      const [a, b, c] = [at(t - 2e-4), at(t - 1e-4), at(t)];
      const area = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
      const sides = [
        Math.hypot(b.x - a.x, b.y - a.y),
        Math.hypot(c.x - b.x, c.y - b.y),
        Math.hypot(c.x - a.x, c.y - a.y),
      ];
      const curvature = Math.abs(2 * area) / sides.reduce((product, side) => product * side, 1);
      return { turn: (Math.atan2(c.x - b.x, c.y - b.y) * 180) / Math.PI, ratio: curvature * 5 };
    };
    const turned = Array.from({ length: 80 }, (_, index) => (index * Math.PI) / 180);
    for (const g of turned) {
      expect(seen(35, g).ratio).toBeLessThan(1.001);
      expect(seen(60, g).turn).toBeLessThan(60.01);
    }
    expect(Math.max(...turned.map((g) => seen(60, g).ratio))).toBeCloseTo(1.78, 2);
  });

  it("is asked of points of a plane unless they are known in their own (C5)", () => {
    const traced = { instrument: red6, course: { points: marked }, tipDepthMm: 15 };
    expect(bound(traced, "turnDeg")?.bound).toBe("none");
    expect(bound({ ...traced, view: { films: "space" } }, "turnDeg")?.bound).toBe("asMeasured");
  });
});

describe("what can't be", () => {
  const input = { instrument: red6, course: usual, tipDepthMm: 16 };

  it("says of a depth beyond a course from the reference point what may be wrong with its beginning", () => {
    const why = (courseStarts: "orifice" | "referencePoint") => () =>
      bendTopic.compute(bendTopic.input.parse({ ...input, tipDepthMm: 19, courseStarts }));
    expect(why("referencePoint")).toThrow(
      /16.00 mm long from the reference point; if its course begins at the orifice, say so$/,
    );
    expect(why("orifice")).toThrow(/16.00 mm long$/);
  });

  it.each([
    ["a tip beyond the canal", { ...input, tipDepthMm: 16.5 }, "input.impossible", "tipDepthMm"],
    [
      "a tip beyond the traced canal",
      { ...input, course: { points: marked }, tipDepthMm: 15.3 },
      "input.impossible",
      "tipDepthMm",
    ],
    [
      "a tip beyond the instrument",
      { ...input, instrument: { ...red6, workingMm: 12, lengthMm: 15 } },
      "input.impossible",
      "tipDepthMm",
    ],
    [
      "an arc beyond its canal",
      { ...input, course: { ...usual, lengthMm: 12 } },
      "input.impossible",
      "course.lengthMm",
    ],
    [
      "an instrument over 2 mm",
      { ...input, instrument: { size: 25, taper: 0.2 } },
      "input.impossible",
      "instrument.taper",
    ],
    [
      "three points",
      {
        ...input,
        course: {
          points: [
            [0, 0],
            [0, 1],
            [0, 2],
          ],
        },
      },
      "trace.tooFewPoints",
      "course.points",
    ],
    [
      "points of plane and space",
      {
        ...input,
        course: {
          points: [
            [0, 0],
            [0, 1, 0],
            [0, 2],
            [0, 3],
          ],
        },
      },
      "input.impossible",
      "course.points[1]",
    ],
    [
      "an outer radius inside the instrument",
      { ...input, course: { ...allOf(0.1), lengthMm: 16 }, instrument: { size: 30, taper: 0 }, convention: "outer" },
      "input.impossible",
      "convention",
    ],
    [
      "one film of space",
      { ...input, course: { points: marked.map(([x, y]) => [x, y, 0]) }, tipDepthMm: 15, view: { films: "one" } },
      "input.impossible",
      "view.films",
    ],
    [
      "a turn at most below the turn seen",
      { ...input, view: { films: "one", longAxis: "parallel", turnAtMostDeg: 20 } },
      "input.impossible",
      "view.turnAtMostDeg",
    ],
    ["a depth of 0", { ...input, tipDepthMm: 0 }, "input.invalid", "tipDepthMm"],
    ["a radius of 0", { ...input, course: { ...usual, radiusMm: 0 } }, "input.invalid", "course.radiusMm"],
  ])("%s is refused at its place", (_, given, code, path) => {
    expect(refusalOf(bendTopic, given)).toMatchObject({ code, faults: [{ path }] });
  });

  it("but a depth or an arc that passes the end by rounding is taken", () => {
    expect(of({ ...input, tipDepthMm: 16.005 }).fromOrificeMm).toBeCloseTo(usual.startMm, 9);
    const rounded = { ...usual, startMm: 10.77, lengthMm: 16 };
    expect(of({ ...input, course: rounded }).peakStrain).toBeGreaterThan(0);
    expect(bentLengthMm).toBeCloseTo(15.236, 3);
  });
});
