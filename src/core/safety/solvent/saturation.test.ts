import { describe, expect, it } from "vitest";
import { inAirMg } from "./air-state.ts";
import { mixed, run, source } from "./course-for-tests.ts";
import { type Evaporation, liquidMg } from "./liquid.ts";
import type { RoomAir } from "./room-modes.ts";
import { wholeArea } from "./vapour-course.ts";

describe("saturation", () => {
  it("fills a closed room and leaves the rest (C7)", () => {
    const kinds: Evaporation[] = [
      { kind: "instant" },
      { kind: "constant", ratePerMin: 0.1 },
      { kind: "firstOrder", ratePerMin: 0.1 },
    ];
    for (const kind of kinds) {
      const { course, ofFar } = run(mixed(10, 0), kind, [{ atMin: 0, mg: 500 }], { sat: 20 });
      expect(ofFar.peak).toBeCloseTo(20, 9);
      expect(inAirMg(mixed(10, 0), course.end)).toBeCloseTo(200, 9);
      expect(liquidMg(course.end.liquid)).toBeCloseTo(300, 9);
      expect(course.saturated).toBe(true);
    }
  });

  // 500 mg at once into 10 m3 that hold 20 mg/m3: 200 fill it, 300 follow at Q sat = 20 mg/min, that is until 15 min.
  it("of an aired room holds until the rest has followed (C7)", () => {
    const { far } = run(mixed(10, 1), { kind: "instant" }, [{ atMin: 0, mg: 500 }], { sat: 20 });
    expect([far.levelAt(1), far.levelAt(14.99)]).toEqual([expect.closeTo(20, 9), expect.closeTo(20, 9)]);
    expect(far.levelAt(25)).toBeCloseTo(20 * Math.exp(-1), 9);
  });

  // A source of 50 mg/min for 10 min: 20 (1 - e^(-t / 10)) 2.5 reaches 20 at t = 10 ln (5 / 3) = 5.108; from then on 20 mg/min leave.
  it("stretches a constant evaporation until its dose is gone (C7)", () => {
    const { far, course } = run(mixed(10, 1), ...source(50, 10), { sat: 20 });
    const full = 10 * Math.log(5 / 3);
    expect(course.pieces[1]?.startMin).toBeCloseTo(full, 9);
    const gone = full + (500 - 50 * full) / 20;
    expect(far.levelAt(gone)).toBeCloseTo(20, 9);
    expect(far.levelAt(gone + 10)).toBeCloseTo(20 * Math.exp(-1), 9);
  });

  // First order: the rest is below Q sat / a = 200 mg when the liquid gives less than leaves.
  it("ends for first order where the liquid gives less than leaves (C7)", () => {
    const { course, far } = run(mixed(10, 1), { kind: "firstOrder", ratePerMin: 0.1 }, [{ atMin: 0, mg: 900 }], {
      sat: 20,
    });
    const [, full, free] = course.pieces;
    expect(full?.held.far).toBe(20);
    const released = (full?.released(full.lengthMin) ?? 0) + (course.pieces[0]?.released(full?.startMin ?? 0) ?? 0);
    expect(900 - released).toBeCloseTo(200, 6);
    expect(far.levelAt((free?.startMin ?? 0) + 5)).toBeLessThan(20);
  });

  it("of two doses side by side lets both go by their rates (C7)", () => {
    const doses = [
      { atMin: 0, mg: 400 },
      { atMin: 2, mg: 200 },
    ];
    const { course } = run(mixed(10, 1), { kind: "constant", ratePerMin: 0.1 }, doses, { sat: 20 });
    expect(course.saturated).toBe(true);
    expect(liquidMg(course.end.liquid)).toBe(0);
    // 40 and then 60 mg/min in the air, 20 out: all of it leaves in the end.
    expect(wholeArea(course, "far")).toBeCloseTo(600, 6);
  });

  // The near field is full, the far one fills through it: b (sat - C_F) leave the near one.
  it("of a near field holds while the far one fills (C7)", () => {
    const air: RoomAir = { farM3: 20, outflowM3Min: 0, near: { volumeM3: 0.1, exchangeM3Min: 2 } };
    const { near, far, course } = run(air, { kind: "instant" }, [{ atMin: 0, mg: 500 }], { sat: 20 });
    expect(near.levelAt(5)).toBeCloseTo(20, 9);
    expect(far.levelAt(5)).toBeCloseTo(20 * (1 - Math.exp(-0.5)), 9);
    expect(inAirMg(air, course.end)).toBeCloseTo(20 * 20.1, 6);
    expect(liquidMg(course.end.liquid)).toBeCloseTo(500 - 20 * 20.1, 6);
  });
});
