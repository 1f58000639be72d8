import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inAirMg } from "./air-state.ts";
import { run } from "./course-for-tests.ts";
import { type Evaporation, liquidMg } from "./liquid.ts";
import type { RoomAir } from "./room-modes.ts";
import { wholeArea } from "./vapour-course.ts";

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
