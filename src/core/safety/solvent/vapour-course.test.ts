import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inAirMg } from "./air-state.ts";
import { courseReading } from "./course-reading.ts";
import type { VapourLaw } from "./free-piece.ts";
import type { Evaporation } from "./liquid.ts";
import { liquidMg } from "./liquid.ts";
import { type RoomAir, roomAir, roomModes } from "./room-modes.ts";
import { type EvaporatingDose, vapourCourse, wholeArea } from "./vapour-course.ts";
import { zoneFigures } from "./zone-figures.ts";

const boundless = 1e12;
const mixed = (farM3: number, outflowM3Min: number): RoomAir => ({ farM3, outflowM3Min });

/** What a course of these doses gives, zone by zone. */
function run(
  air: RoomAir,
  evaporation: Evaporation,
  doses: EvaporatingDose[],
  given: { sat?: number; end?: number } = {},
) {
  const law: VapourLaw = { air, evaporation, saturationMgM3: given.sat ?? boundless };
  const course = vapourCourse(law, doses, given.end ?? (doses.at(-1)?.atMin ?? 0) + 480);
  const far = courseReading(course, "far");
  const near = courseReading(course, "near");
  return { course, far, near, ofFar: zoneFigures(course, "far", far), ofNear: zoneFigures(course, "near", near) };
}

/** A source of so many mg/min for so many minutes. */
const source = (mgPerMin: number, overMin: number): [Evaporation, EvaporatingDose[]] => [
  { kind: "constant", ratePerMin: 1 / overMin },
  [{ atMin: 0, mg: mgPerMin * overMin }],
];

describe("a mixed room", () => {
  // CDC, MMWR 1994;43(RR-13), table S3-1; minutes that remove 90, 99 and 99.9 %, rounded there.
  it.each([
    [2, [69, 138, 207]],
    [4, [35, 69, 104]],
    [6, [23, 46, 69]],
    [8, [17, 35, 52]],
    [10, [14, 28, 41]],
    [12, [12, 23, 35]],
    [15, [9, 18, 28]],
    [20, [7, 14, 21]],
    [50, [3, 6, 8]],
  ])("with %d air changes an hour is cleared in the published minutes (C4)", (airChangesPerHour, minutes) => {
    const { far } = run(roomAir({ volumeM3: 40, airChangesPerHour }), { kind: "instant" }, [{ atMin: 0, mg: 40 }]);
    for (const [at, share] of [0.9, 0.99, 0.999].entries()) {
      const printed = minutes[at] ?? 0;
      expect(far.levelAt(printed - 0.5)).toBeGreaterThanOrEqual(1 - share);
      expect(far.levelAt(printed + 0.5)).toBeLessThanOrEqual(1 - share);
    }
  });

  // Published: V 500 m3, Q 1000 m3/h, 140 mg/h, decay 0.4/h; steady 0.117 mg/m3, 0.067 at 0.36 h. The decay of 0.4/h clears as
  // 200 m3/h of air would.
  it("with a steady source comes to the published level and passes the published one (C4)", () => {
    const { far } = run(mixed(500, 1200 / 60), ...source(140 / 60, 4800), { end: 4800 });
    expect(far.levelAt(4700)).toBeCloseTo(0.116667, 6);
    expect(far.levelAt(0.36 * 60)).toBeCloseTo(0.067, 3);
    expect(far.levelAt(21.35)).toBeCloseTo(0.067, 4);
  });

  // Benzene at 1 g/min in 108 m3 with 10 m3/min: 100 mg/m3, 95 % of it after V / Q ln 20 = 32.354 min.
  it("of a course problem comes to 100 mg/m3 (C4)", () => {
    const { far } = run(mixed(108, 10), ...source(1000, 2000), { end: 2000 });
    expect(far.levelAt(1900)).toBeCloseTo(100, 9);
    expect(far.levelAt(32.354)).toBeCloseTo(95, 3);
  });

  // Hewett and Ganser, J Occup Environ Hyg 2017;14:49-57: G 100 mg/min for 15 min, Q 20 m3/min, V 100 m3, over 60 min.
  it("with a source of 15 minutes has the known peak and mean (C4, C8)", () => {
    const { far, ofFar } = run(mixed(100, 20), ...source(100, 15));
    expect(far.levelAt(15)).toBeCloseTo(4.7510647, 7);
    expect(far.levelAt(60)).toBeCloseTo(0.00058633, 8);
    expect(ofFar.peak).toBeCloseTo(4.7510647, 7);
    expect(ofFar.peakAtMin).toBeCloseTo(15, 9);
    expect(far.areaUntil(60) / 60).toBeCloseTo(1.2499511, 7);
    expect(ofFar.mean60).toBeCloseTo(1.2499511, 6);
  });

  // The spill model named by Abattan and others, J Occup Environ Hyg 2023;20:95-108; 147.88 mg, 0.2/min, 5 m3/min, 30 m3.
  it("with a drop that evaporates by a share of its rest follows the spill model (C4, C8)", () => {
    const { course, far, ofFar } = run(mixed(30, 5), { kind: "firstOrder", ratePerMin: 0.2 }, [
      { atMin: 0, mg: 147.88 },
    ]);
    const known = [0.82076, 1.97327, 1.58351, 0.12597, 0.00116];
    for (const [at, minutes] of [1, 5, 10, 30, 60].entries())
      expect(far.levelAt(minutes)).toBeCloseTo(known[at] ?? 0, 5);
    expect(ofFar.peak).toBeCloseTo(1.980989, 6);
    expect(ofFar.peakAtMin).toBeCloseTo(5.46965, 5);
    expect(wholeArea(course, "far")).toBeCloseTo(29.576, 6);
    expect(ofFar.mean480).toBeCloseTo(0.061617, 6);
  });

  // C = (M / V) a t e^(-a t) where a = Q / V: the peak M / (V e) at 1 / a.
  it("takes a drop that evaporates as fast as the room is cleared (C6)", () => {
    const { far, ofFar } = run(mixed(30, 6), { kind: "firstOrder", ratePerMin: 0.2 }, [{ atMin: 0, mg: 300 }]);
    expect(ofFar.peak).toBeCloseTo(10 / Math.E, 9);
    expect(ofFar.peakAtMin).toBeCloseTo(5, 6);
    expect(far.levelAt(12)).toBeCloseTo(10 * 0.2 * 12 * Math.exp(-2.4), 9);
    // Beside it, to the last digits that the plain formula keeps.
    const beside = run(mixed(30, 6), { kind: "firstOrder", ratePerMin: 0.2 + 1e-9 }, [{ atMin: 0, mg: 300 }]);
    expect(beside.ofFar.mean60).toBeCloseTo(ofFar.mean60, 8);
  });

  it("that is closed keeps all of it (C6)", () => {
    const { far, ofFar } = run(mixed(50, 0), { kind: "firstOrder", ratePerMin: 0.1 }, [{ atMin: 10, mg: 100 }]);
    expect(far.levelAt(20)).toBeCloseTo(2 * (1 - Math.exp(-1)), 12);
    expect(ofFar.peak).toBeCloseTo(2, 9);
    // The mean of 2 (1 - e^(-t / 10)) over the last 60 of 480 min is 2 to 18 digits, over 480 it is 2 (1 - 10 / 480).
    expect(ofFar.mean60).toBeCloseTo(2, 9);
    expect(ofFar.mean480).toBeCloseTo(2 * (1 - 10 / 480), 9);
    const built = run(mixed(50, 0), ...source(5, 20));
    expect(built.far.levelAt(8)).toBeCloseTo(0.8, 12);
    expect(built.far.areaUntil(8)).toBeCloseTo(3.2, 12);
  });
});

describe("a room with a near field", () => {
  // Data set of Monteiro, Banerjee and Ramachandran, J Stat Softw 2011;43(2): b 5, Q 13.8, G 351.5, V_N pi/1000, V_F 3.8.
  it("follows the published data set, stiff as it is (C5, C6)", () => {
    const air: RoomAir = { farM3: 3.8, outflowM3Min: 13.8, near: { volumeM3: Math.PI / 1000, exchangeM3Min: 5 } };
    const { far, near } = run(air, ...source(351.5, 600), { end: 600 });
    expect(roomModes(air).map(({ ratePerMin }) => ratePerMin)).toEqual([
      expect.closeTo(1592.8682, 4),
      expect.closeTo(3.628572, 6),
    ]);
    expect([near.levelAt(0.1), far.levelAt(0.1)]).toEqual([expect.closeTo(77.97015, 5), expect.closeTo(7.710734, 6)]);
    expect([near.levelAt(1), far.levelAt(1)]).toEqual([expect.closeTo(95.09156, 5), expect.closeTo(24.79311, 5)]);
    expect([near.levelAt(4), far.levelAt(4)]).toEqual([expect.closeTo(95.771, 5), expect.closeTo(25.471, 5)]);
    // Steady: G / Q + G / b beside G / Q.
    expect(near.levelAt(500)).toBeCloseTo(95.771014, 6);
    expect(far.levelAt(500)).toBeCloseTo(25.471014, 6);
  });

  // The parameters of Hewett and Ganser 2017 with b 5 and a near field of 8 in 100 m3.
  it("with a source of 15 minutes has the known levels and means (C5, C8)", () => {
    const air: RoomAir = { farM3: 92, outflowM3Min: 20, near: { volumeM3: 8, exchangeM3Min: 5 } };
    const { far, near } = run(air, ...source(100, 15));
    expect(near.levelAt(15)).toBeCloseTo(24.448951, 6);
    expect(far.levelAt(15)).toBeCloseTo(4.619518, 6);
    expect(near.areaUntil(60) / 60).toBeCloseTo(6.249863, 6);
    expect(far.areaUntil(60) / 60).toBeCloseTo(1.249905, 6);
  });

  // 0.1 ml of chloroform beside the mouth; solved with a stiff stepper elsewhere: area 81.877851, peak 9.9114 at 0.43 min.
  it("has the known areas and peaks of a drop (C5, C8)", () => {
    const air = roomAir({ volumeM3: 30, airChangesPerHour: 10 }, { radiusM: 0.5, airSpeedMPerMin: 3.6 });
    expect(air.near?.exchangeM3Min).toBeCloseTo(2.827433, 6);
    const { course, ofNear, ofFar } = run(air, { kind: "firstOrder", ratePerMin: 0.2 }, [{ atMin: 0, mg: 147.88 }]);
    expect(wholeArea(course, "near")).toBeCloseTo(81.877851, 6);
    expect(wholeArea(course, "far")).toBeCloseTo(29.576, 6);
    expect(ofNear.peak).toBeCloseTo(9.9114, 4);
    expect(ofNear.peakAtMin).toBeCloseTo(0.43, 2);
    expect(ofFar.peak).toBeCloseTo(1.98056, 5);
    expect(ofFar.peakAtMin).toBeCloseTo(5.56, 2);
  });

  // beta by radius and speed: 0.3 m at 0.1 m/s 1.696, 0.5 m at 0.05 m/s 2.356, 1 m at 0.3 m/s 56.549 m3/min.
  it.each([
    [0.3, 6, 1.696],
    [0.5, 3, 2.356],
    [1, 18, 56.549],
  ])("of %d m trades air by half its surface at %d m/min (C5)", (radiusM, airSpeedMPerMin, known) => {
    const { near, farM3 } = roomAir({ volumeM3: 40, airChangesPerHour: 6 }, { radiusM, airSpeedMPerMin });
    expect(near?.exchangeM3Min).toBeCloseTo(known, 3);
    expect((near?.volumeM3 ?? 0) + farM3).toBeCloseTo(40, 12);
  });
});

/** Arbitrary rooms, ways of evaporating and doses; rooms may be closed. */
const anyAir = fc.oneof(
  fc.record({ farM3: fc.double({ min: 5, max: 200, noNaN: true }), outflowM3Min: fc.constantFrom(0, 0.5, 5, 40) }),
  fc.record({
    farM3: fc.double({ min: 5, max: 200, noNaN: true }),
    outflowM3Min: fc.constantFrom(0, 1, 10),
    near: fc.record({
      volumeM3: fc.double({ min: 0.001, max: 4, noNaN: true }),
      exchangeM3Min: fc.double({ min: 0.1, max: 20, noNaN: true }),
    }),
  }),
);
const anyEvaporation: fc.Arbitrary<Evaporation> = fc.oneof(
  fc.constant<Evaporation>({ kind: "instant" }),
  fc.record({
    kind: fc.constantFrom("constant" as const, "firstOrder" as const),
    ratePerMin: fc.constantFrom(0.0318, 0.05, 0.2, 0.5, 3),
  }),
);
const anyDoses = fc
  .array(fc.record({ atMin: fc.integer({ min: 0, max: 60 }), mg: fc.double({ min: 0.1, max: 5000, noNaN: true }) }), {
    minLength: 1,
    maxLength: 5,
  })
  .map((doses) => doses.sort((x, y) => x.atMin - y.atMin));
const anySaturation = fc.constantFrom(1e12, 2000, 300, 20);

describe("any course", () => {
  it("keeps its mass to a billionth, saturated or not (C3, property)", () => {
    fc.assert(
      fc.property(anyAir, anyEvaporation, anyDoses, anySaturation, (air, evaporation, doses, sat) => {
        const { course } = run(air, evaporation, doses, { sat });
        const all = doses.reduce((sum, { mg }) => sum + mg, 0);
        const ventilated = air.outflowM3Min * wholeArea(course, "far");
        const found = ventilated + inAirMg(air, course.end) + liquidMg(course.end.liquid);
        expect(Math.abs(found - all) / all).toBeLessThan(1e-9);
      }),
      { numRuns: 150 },
    );
  });

  it("never passes saturation, never falls below nothing (C7, property)", () => {
    fc.assert(
      fc.property(anyAir, anyEvaporation, anyDoses, anySaturation, (air, evaporation, doses, sat) => {
        const { ofFar, ofNear, far, near, course } = run(air, evaporation, doses, { sat });
        expect(Math.max(ofFar.peak, ofNear.peak)).toBeLessThanOrEqual(sat * (1 + 1e-9));
        for (const piece of course.pieces)
          for (const share of [0, 0.3, 1]) {
            const at = piece.startMin + share * piece.lengthMin;
            expect(Math.min(far.levelAt(at), near.levelAt(at))).toBeGreaterThanOrEqual(-1e-9);
          }
      }),
      { numRuns: 100 },
    );
  });

  it("has the worst mean that no window on a fine grid passes (C8, property)", () => {
    fc.assert(
      fc.property(anyAir, anyEvaporation, anyDoses, anySaturation, (air, evaporation, doses, sat) => {
        const { ofFar, ofNear, far, near, course } = run(air, evaporation, doses, { sat });
        for (const [reading, figures] of [
          [far, ofFar],
          [near, ofNear],
        ] as const) {
          for (let step = 0; step <= 400; step += 1) {
            const start = course.startMin - 60 + (step / 400) * 180;
            for (const [over, mean] of [
              [15, figures.mean15],
              [60, figures.mean60],
            ] as const) {
              const end = Math.min(start + over, course.end.atMin);
              const here = (reading.areaUntil(end) - reading.areaUntil(start)) / over;
              expect(here).toBeLessThanOrEqual(mean * (1 + 1e-9) + 1e-12);
            }
            expect(reading.levelAt(Math.max(course.startMin, start))).toBeLessThanOrEqual(
              figures.peak * (1 + 1e-9) + 1e-12,
            );
          }
          expect(figures.mean15).toBeLessThanOrEqual(figures.peak * (1 + 1e-9));
          expect(figures.mean60).toBeLessThanOrEqual(figures.mean15 * (1 + 1e-9));
          expect(figures.mean480).toBeLessThanOrEqual(figures.mean60 * (1 + 1e-9));
        }
      }),
      { numRuns: 30 },
    );
  });

  it("has the area M / Q far and M (1 / Q + 1 / b) near, whatever the release (C5, property)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 20, noNaN: true }),
        fc.double({ min: 0.5, max: 10, noNaN: true }),
        anyEvaporation,
        anyDoses,
        (outflowM3Min, exchangeM3Min, evaporation, doses) => {
          const air: RoomAir = { farM3: 30, outflowM3Min, near: { volumeM3: 0.25, exchangeM3Min } };
          const all = doses.reduce((sum, { mg }) => sum + mg, 0);
          const { course } = run(air, evaporation, doses, { end: 3000 });
          expect(wholeArea(course, "far") / (all / outflowM3Min)).toBeCloseTo(1, 9);
          expect(wholeArea(course, "near") / (all * (1 / outflowM3Min + 1 / exchangeM3Min))).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 100 },
    );
  });

  it("of twice the doses is twice as high, of two sets of doses their sum (C5, property)", () => {
    fc.assert(
      fc.property(anyAir, anyEvaporation, anyDoses, anyDoses, (air, evaporation, some, others) => {
        const both = [...some, ...others].sort((x, y) => x.atMin - y.atMin);
        const twice = some.map(({ atMin, mg }) => ({ atMin, mg: 2 * mg }));
        const [one, other, sum, double] = [some, others, both, twice].map((doses) =>
          run(air, evaporation, doses, { end: 600 }),
        );
        for (const zone of ["far", "near"] as const)
          for (const at of [61, 62.5, 90, 300]) {
            const alone = one?.[zone].levelAt(at) ?? 0;
            const scale = 1 / Math.max(1, alone);
            expect((double?.[zone].levelAt(at) ?? 0) * scale).toBeCloseTo(2 * alone * scale, 8);
            const added = alone + (other?.[zone].levelAt(at) ?? 0);
            expect((sum?.[zone].levelAt(at) ?? 0) / Math.max(1, added)).toBeCloseTo(added / Math.max(1, added), 8);
          }
      }),
      { numRuns: 100 },
    );
  });
});

/**
 * The same room by small steps and nothing of the above: a diagonally implicit stepper of order 2 that no stiffness troubles,
 * whose result for half the step cancels its leading error.
 */
function stepped(
  air: RoomAir,
  evaporation: Evaporation & { ratePerMin: number },
  doses: EvaporatingDose[],
  untilMin: number,
) {
  const coarse = walk(air, evaporation, doses, { untilMin, step: 1 / 256 });
  const fine = walk(air, evaporation, doses, { untilMin, step: 1 / 512 });
  return { near: (4 * fine.near - coarse.near) / 3, far: (4 * fine.far - coarse.far) / 3 };
}

function walk(
  air: RoomAir,
  { kind, ratePerMin }: Evaporation & { ratePerMin: number },
  doses: EvaporatingDose[],
  { untilMin, step }: { untilMin: number; step: number },
) {
  const near = air.near ?? { volumeM3: 1, exchangeM3Min: 1 };
  const gamma = 1 - Math.SQRT1_2;
  let [liquid, cNear, cFar] = [0, 0, 0];
  const rates = (l: number, n: number, f: number, constant: number) => {
    const source = kind === "firstOrder" ? ratePerMin * l : constant;
    const trade = near.exchangeM3Min * (f - n);
    return [
      kind === "firstOrder" ? -ratePerMin * l : 0,
      (source + trade) / near.volumeM3,
      (-trade - air.outflowM3Min * f) / air.farM3,
    ];
  };
  const h = gamma * step;
  /** Solves y = base + h rates(y). */
  const implicit = (base: number[], constant: number) => {
    const [bl = 0, bn = 0, bf = 0] = base;
    const l = kind === "firstOrder" ? bl / (1 + h * ratePerMin) : bl;
    const g = kind === "firstOrder" ? ratePerMin * l : constant;
    const a = 1 + (h * near.exchangeM3Min) / near.volumeM3;
    const b = (h * near.exchangeM3Min) / near.volumeM3;
    const c = (h * near.exchangeM3Min) / air.farM3;
    const d = 1 + (h * (near.exchangeM3Min + air.outflowM3Min)) / air.farM3;
    const right = bn + (h * g) / near.volumeM3;
    const n = (right * d + b * bf) / (a * d - b * c);
    return [l, n, (bf + c * n) / d];
  };
  for (let at = 0; at < untilMin; at += step) {
    for (const dose of doses) if (dose.atMin === at && kind === "firstOrder") liquid += dose.mg;
    const running = doses.filter(({ atMin }) => atMin <= at && at < atMin + 1 / ratePerMin);
    const constant = kind === "constant" ? running.reduce((sum, { mg }) => sum + mg * ratePerMin, 0) : 0;
    const y = [liquid, cNear, cFar];
    const first = implicit(y, constant);
    const k1 = rates(first[0] ?? 0, first[1] ?? 0, first[2] ?? 0, constant);
    const second = implicit(
      y.map((value, index) => value + step * (1 - gamma) * (k1[index] ?? 0)),
      constant,
    );
    [liquid = 0, cNear = 0, cFar = 0] = second;
  }
  return { near: cNear, far: cFar };
}

describe("two zones solved exactly and by small steps", () => {
  const rooms: [string, RoomAir][] = [
    ["a surgery", roomAir({ volumeM3: 31.2, airChangesPerHour: 6 }, { radiusM: 0.5, airSpeedMPerMin: 3.6 })],
    ["a closed room", roomAir({ volumeM3: 25, airChangesPerHour: 0 }, { radiusM: 0.3, airSpeedMPerMin: 6 })],
    ["a stiff one", { farM3: 3.8, outflowM3Min: 13.8, near: { volumeM3: 0.01, exchangeM3Min: 5 } }],
  ];
  const ways: (Evaporation & { ratePerMin: number })[] = [
    { kind: "firstOrder", ratePerMin: 0.25 },
    { kind: "firstOrder", ratePerMin: 2 },
    { kind: "constant", ratePerMin: 0.125 },
  ];
  const doses = [
    { atMin: 0, mg: 150 },
    { atMin: 5, mg: 300 },
    { atMin: 12, mg: 75 },
  ];
  it.each(rooms.flatMap(([name, air]) => ways.map((way) => [name, way.kind, way.ratePerMin, { air, way }] as const)))(
    "agree in %s, %s at %d a minute (C6)",
    (_name, _kind, _rate, { air, way }) => {
      const { near, far } = run(air, way, doses);
      for (const at of [3, 8, 20, 40]) {
        const known = stepped(air, way, doses, at);
        expect(near.levelAt(at) / known.near).toBeCloseTo(1, 5);
        expect(far.levelAt(at) / known.far).toBeCloseTo(1, 5);
      }
    },
  );
});

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
