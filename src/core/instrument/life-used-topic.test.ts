import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bentCourse, refusalOf } from "../radiograph/drawn-measures/bent-course-for-tests.ts";
import { answer } from "../topic.ts";
import { lifeUsedTopic } from "./life-used-topic.ts";

const of = (input: object) => answer(lifeUsedTopic, input);

const red6 = { size: 25, taper: 0.06 };
const parallel = { size: 25, taper: 0 };
/** 60 degrees on 5 mm, its middle 5 mm from the end: the reference canal, by its own numbers. */
const reference = { radiusMm: 5, turnDeg: 60, startMm: 11 - (5 * Math.PI) / 6, lengthMm: 16 };
const minute = { rpm: 300, seconds: 60, tipDepthMm: 16, course: reference };
const slope = (c: number) => ({ strong: c, weak: c });
/** One arc that bends an instrument where it lies. */
const arc = (radiusMm: number, startMm = 8) => ({ radiusMm, turnDeg: 30, startMm, lengthMm: 16 });

describe("turns", () => {
  it("are rpm times seconds over 60 (C1)", () => {
    const { turns } = of({ instrument: red6, uses: [{ ...minute, rpm: 250, seconds: 90 }] });
    expect(turns).toEqual({ net: 375, swept: 375 });
  });

  // 150 degrees forward and 30 back, 5 times a second, for a minute: 300 pairs of 120 and of 180 degrees.
  it("of reciprocation are what is left and what is swept, both by name (C1)", () => {
    const { rpm: _, ...rest } = minute;
    const use = { ...rest, reciprocation: { forwardDeg: 150, backDeg: 30, frequencyHz: 5 } };
    const found = of({ instrument: red6, uses: [use] });
    expect(found.turns).toEqual({ net: expect.closeTo(100, 9), swept: expect.closeTo(150, 9) });
    expect(found.basis.assumptions.join()).toContain("Reciprocation wears by all of its swept turning");
    // It wears as much as 150 turns in one direction do; limits count the 100.
    const turning = of({ instrument: red6, uses: [{ ...minute, rpm: 150 }] });
    expect(found.equivalentTurns.high).toBeCloseTo(turning.equivalentTurns.high, 6);
    expect(of({ instrument: red6, uses: [use], limits: { turns: 100.5 } }).discard).toBe(false);
    expect(of({ instrument: red6, uses: [{ ...minute, rpm: 150 }], limits: { turns: 100.5 } }).discard).toBe(true);
    const back = { ...use, reciprocation: { forwardDeg: 30, backDeg: 150, frequencyHz: 5 } };
    expect(of({ instrument: red6, uses: [back] }).turns.net).toBeCloseTo(100, 9);
  });
});

describe("equivalent reference turns", () => {
  it("of a minute in the reference canal are its turns, and the ratio is 1 (C3, C5)", () => {
    const found = of({ instrument: red6, uses: [minute] });
    expect(found.referenceStrain).toBeCloseTo((0.25 + 0.06 * (5 + (5 * Math.PI) / 6)) / 10, 9);
    expect(found.equivalentTurns).toEqual({ low: expect.closeTo(300, 6), high: expect.closeTo(300, 6) });
    expect(found.ratioToReference).toEqual({ low: expect.closeTo(1, 9), high: expect.closeTo(1, 9) });
    expect(found.worstSection?.fromTipMm).toBeCloseTo(5 + (5 * Math.PI) / 6, 9);
  });

  // Cheung and Darvell 2007, slopes -0.40 (seen) to -0.56 (memory): lives on 5 and 2 mm differ by 2.5 ^ (1 / |c|).
  it.each([
    [-0.4, 9.882117688],
    [-0.5, 6.25],
    [-0.56, 5.135788829],
  ])("at a slope of %d rise with a radius of 2 mm instead of 5 by %d (C3)", (c, known) => {
    const of2 = (radiusMm: number) =>
      of({
        instrument: parallel,
        uses: [{ ...minute, course: arc(radiusMm) }],
        slope: slope(c),
        referenceStrain: 0.04,
      });
    expect(of2(2).equivalentTurns.high / of2(5).equivalentTurns.high).toBeCloseTo(known, 6);
  });

  // 0.43 against 0.31 mm at one radius: 0.52 of the life at c = -0.5, so 1 / 0.52 of the wear.
  it("rise with the diameter by the same power (C3)", () => {
    const at3mm = (taper: number) => {
      const course = { radiusMm: 5, turnDeg: 30, startMm: 13, lengthMm: 16 };
      const input = { instrument: { size: 25, taper }, uses: [{ ...minute, course }], slope: slope(-0.5) };
      return of({ ...input, referenceStrain: 0.04 }).equivalentTurns.high;
    };
    expect(at3mm(0.02) / at3mm(0.06)).toBeCloseTo(0.52, 2);
  });

  it("are a band over the slopes, published or given (C3)", () => {
    // A strain of 2.5 % against a reference of 5 %: a half to the power of 1.786 and of 2.5.
    const input = { instrument: parallel, uses: [{ ...minute, course: arc(5) }], referenceStrain: 0.05 };
    expect(of(input).equivalentTurns).toEqual({
      low: expect.closeTo(300 * 0.5 ** 2.5, 6),
      high: expect.closeTo(300 * 0.5 ** (1 / 0.56), 6),
    });
    const given = of({ ...input, slope: { strong: -0.5, weak: -0.25 } });
    expect(given.equivalentTurns).toEqual({ low: expect.closeTo(300 / 16, 6), high: expect.closeTo(300 / 4, 6) });
    expect(given.basis.assumptions.join()).toContain("-0.5 and -0.25 (as given)");
  });

  it("fall to the lowest inside the range of slopes where a strain lies on either side of the reference (C3)", () => {
    // Turns of 2 e0 and of e0 / 4 in one section: f(m) = 0.01 * 2^m + 0.25^m, its minimum at 2^m = 200^(1/3): m = 2.548.
    const uses = [
      { ...minute, rpm: 3, course: arc(2.5) },
      { ...minute, rpm: 300, course: arc(20, 5) },
    ];
    const found = of({ instrument: parallel, uses, referenceStrain: 0.025, slope: { strong: -0.5, weak: -0.25 } });
    const f = (m: number) => 3 * 2 ** m + 300 * 0.25 ** m;
    const m = Math.log2(200 ** (1 / 3));
    expect(m).toBeGreaterThan(2);
    expect(m).toBeLessThan(4);
    expect(f(m)).toBeLessThan(Math.min(f(2), f(4)));
    expect(found.equivalentTurns.low / f(m)).toBeCloseTo(1, 2);
    expect(found.equivalentTurns.high).toBeCloseTo(f(4), 6);
  });

  it("add, section by section: two half minutes are one minute, in any order (C3, property)", () => {
    const use = fc.record({
      rpm: fc.integer({ min: 50, max: 600 }),
      seconds: fc.integer({ min: 1, max: 90 }),
      tipDepthMm: fc.integer({ min: 9, max: 16 }),
      course: fc.constantFrom(arc(4), arc(7), reference),
    });
    fc.assert(
      fc.property(fc.array(use, { minLength: 1, maxLength: 4 }), (uses) => {
        const whole = of({ instrument: red6, uses }).equivalentTurns;
        const halves = uses.flatMap((one) => [
          { ...one, seconds: one.seconds / 2 },
          { ...one, seconds: one.seconds / 2 },
        ]);
        const again = of({ instrument: red6, uses: halves.reverse() }).equivalentTurns;
        expect(again.low).toBeCloseTo(whole.low, 6);
        expect(again.high).toBeCloseTo(whole.high, 6);
      }),
      { numRuns: 15 },
    );
  });

  it("of two canals are largest where both bend the instrument, not where either bends it most (C4)", () => {
    // Bends 6 to 4 mm and 5 to 3 mm from the tip: both between 5 and 4.
    const bend = (startMm: number) => ({ radiusMm: 5, turnDeg: (2 / 5) * (180 / Math.PI), startMm, lengthMm: 16 });
    const uses = [
      { ...minute, course: bend(10) },
      { ...minute, course: bend(11) },
    ];
    const found = of({ instrument: red6, uses, referenceStrain: 0.05, slope: slope(-0.5) });
    expect(found.worstSection?.fromTipMm).toBeCloseTo(5, 9);
    // 0.25 + 0.06 * 5 = 0.55 mm on 5 mm is 5.5 %: 2 * 300 * 1.1^2.
    expect(found.equivalentTurns.high).toBeCloseTo(600 * 1.1 ** 2, 6);
    expect(found.uses.map(({ share }) => share.high)).toEqual([expect.closeTo(0.5, 9), expect.closeTo(0.5, 9)]);
    expect(found.uses[0]?.peakStrain).toBeCloseTo(0.061, 9);
    const at = (mm: number) => found.profile.find(({ fromTipMm }) => Math.abs(fromTipMm - mm) < 1e-9)?.high;
    expect([at(0), at(2.5)]).toEqual([0, 0]);
    expect(at(4.5)).toBeCloseTo(600 * (0.52 / 0.5) ** 2, 6);
  });

  it("count the share of turns at that depth (C2)", () => {
    const input = { instrument: red6, uses: [{ ...minute, engagedFraction: 0.25 }] };
    const found = of(input);
    expect(found.turns.net).toBe(300);
    expect(found.equivalentTurns.high).toBeCloseTo(75, 6);
    expect(found.ratioToReference.high).toBeCloseTo(0.25, 9);
    expect(found.cautions.join()).not.toContain("every turn counts");
    expect(of({ instrument: red6, uses: [minute] }).cautions.join()).toContain("every turn counts");
    const idle = of({ instrument: red6, uses: [{ ...minute, engagedFraction: 0 }] });
    expect(idle).toMatchObject({ equivalentTurns: { low: 0, high: 0 }, ratioToReference: { low: 0, high: 0 } });
    expect(idle.notComputed).toEqual([{ name: "worstSection", why: "no use bent the instrument" }]);
    expect(idle.uses[0]?.share).toEqual({ low: 0, high: 0 });
  });

  it("do not depend on speed but for its turns (C6)", () => {
    const slow = of({ instrument: red6, uses: [{ ...minute, rpm: 150, seconds: 120 }] });
    const fast = of({ instrument: red6, uses: [{ ...minute, rpm: 300, seconds: 60 }] });
    expect(slow.equivalentTurns).toEqual(fast.equivalentTurns);
    // The reference minute turns as fast as the uses did.
    expect(slow.ratioToReference.high).toBeCloseTo(2 * fast.ratioToReference.high, 9);
    expect(slow.cautions.join()).toContain("not agreed");
  });

  it("take a traced canal as it is fitted, alike ones once (C2)", () => {
    const points = bentCourse.filter((_, at) => at % 8 === 0);
    const use = { rpm: 300, seconds: 30, tipDepthMm: 15.2, course: { points } };
    const found = of({ instrument: red6, uses: [use, use] });
    expect(found.worstSection?.fromTipMm).toBeCloseTo(5.2, 1);
    expect(found.uses.map(({ peakStrain }) => peakStrain)).toEqual(Array(2).fill(expect.closeTo(0.0562, 3)));
  });
});

describe("what is shown", () => {
  it("is never a count that the instrument will last (C6)", () => {
    const found = of({ instrument: red6, uses: [minute] });
    expect(Object.keys(found).join()).not.toMatch(/cycle|left|remaining|toFailure/i);
    expect(found.basis.assumptions.join()).toContain("It does not tell how many turns are left");
    expect(found.cautions[0]).toContain("a factor of about 123");
  });

  it.each([
    [{}, []],
    [{ uses: 2, turns: 600, equivalentTurns: 600.001 }, []],
    [{ uses: 1 }, ["uses"]],
    [{ turns: 599 }, ["turns"]],
    [{ equivalentTurns: 599 }, ["equivalentTurns"]],
    [{ uses: 0, turns: 0, equivalentTurns: 0 }, ["uses", "turns", "equivalentTurns"]],
  ])("with limits %j is over %j (C7)", (limits, over) => {
    const found = of({ instrument: red6, uses: [minute, minute], limits });
    expect(found.over.map(({ name }) => name)).toEqual(over);
    expect(found.discard).toBe(over.length > 0);
  });
});

describe("what can't be", () => {
  const input = { instrument: red6, uses: [minute, minute] };
  const { rpm: _, ...still } = minute;
  const reciprocation = { forwardDeg: 150, backDeg: 30, frequencyHz: 5 };
  it.each([
    ["a use without a movement", { ...input, uses: [minute, still] }, "input.impossible", "uses[1].rpm"],
    ["a use with two", { ...input, uses: [{ ...minute, reciprocation }] }, "input.impossible", "uses[0].reciprocation"],
    [
      "slopes in the wrong order",
      { ...input, slope: { strong: -0.4, weak: -0.56 } },
      "input.impossible",
      "slope.strong",
    ],
    [
      "a tip beyond the canal",
      { ...input, uses: [minute, { ...minute, tipDepthMm: 17 }] },
      "input.impossible",
      "uses[1].tipDepthMm",
    ],
    [
      "a tip beyond the instrument",
      { ...input, instrument: { ...red6, workingMm: 12, lengthMm: 15 } },
      "input.impossible",
      "uses[0].tipDepthMm",
    ],
    ["an instrument that can't be", { ...input, instrument: { size: 25 } }, "input.impossible", "instrument.taper"],
    [
      "a course of one point",
      { ...input, uses: [{ ...minute, course: { points: [[0, 0]] } }] },
      "trace.tooFewPoints",
      "uses[0].course.points",
    ],
    ["no use", { ...input, uses: [] }, "input.invalid", "uses"],
    [
      "a share above 1",
      { ...input, uses: [{ ...minute, engagedFraction: 1.5 }] },
      "input.invalid",
      "uses[0].engagedFraction",
    ],
    ["no time", { ...input, uses: [{ ...minute, seconds: 0 }] }, "input.invalid", "uses[0].seconds"],
  ])("%s is refused at its place", (_name, given, code, path) => {
    expect(refusalOf(lifeUsedTopic, given)).toMatchObject({ code, faults: [{ path }] });
  });

  it("is told whole", () => {
    const given = { ...input, uses: [still, { ...minute, reciprocation }], slope: { strong: -0.4, weak: -0.56 } };
    expect(refusalOf(lifeUsedTopic, given).faults.map(({ path }) => path)).toEqual([
      "uses[0].rpm",
      "uses[1].reciprocation",
      "slope.strong",
    ]);
  });
});
