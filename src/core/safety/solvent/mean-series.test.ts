import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answer } from "../../topic.ts";
import { solventTopic } from "../solvent-topic.ts";
import { meanSeries } from "./mean-series.ts";
import { gasUnits } from "./molar-volume.ts";
import { roomLook } from "./room-look.ts";
import type { RoomAir } from "./room-modes.ts";
import { thinned } from "./thinned.ts";

/** Area under a curve by Simpson's rule, in stretches that widen after each place where its law changes. */
function areaBySteps(valueAt: (t: number) => number, from: number, to: number, changes: readonly number[]): number {
  const after = [0, 0.003, 0.01, 0.03, 0.1, 0.3, 1, 3, 10, 30, 100, 300];
  const places = [from, to, ...changes.flatMap((at) => after.map((one) => at + one))];
  const inside = [...new Set(places.filter((at) => at >= from && at <= to))].sort((a, b) => a - b);
  return inside.slice(1).reduce((sum, end, index) => {
    const start = inside[index] ?? end;
    const h = (end - start) / 40;
    // Just inside both ends: a dose that comes at once belongs to the stretch after it.
    const at = (n: number) => valueAt(Math.min(Math.max(start + n * h, start + 1e-12), end - 1e-12));
    const inner = Array.from({ length: 39 }, (_, n) => at(n + 1) * (n % 2 === 0 ? 4 : 2));
    return sum + (h / 3) * (at(0) + at(40) + inner.reduce((all, one) => all + one, 0));
  }, 0);
}

const known = {
  solvent: "chloroform",
  doses: [{ atMin: 0, volumeMl: 0.1 }],
  evaporation: { kind: "firstOrder", ratePerMin: 0.2 },
  room: { volumeM3: 30, airChangesPerHour: 10 },
};
const of = (input: object) => answer(solventTopic, input);
const seriesOf = (input: object, zone: "far" | "near", over: number) =>
  of(input)[zone]?.means.find(({ averagingMin }) => averagingMin === over)?.series ?? [];

describe("running means over a visit (C8)", () => {
  // One drop in a mixed room: C(t) = (a M / V) / (a - k) (exp(-k t) - exp(-a t)), 147.88 mg, a 0.2, k 1/6 a minute.
  it.each([15, 60, 480])("of the known drop over %d min are those of its closed form, step by step", (over) => {
    const [a, k, mg] = [0.2, 1 / 6, 147.88];
    const levelAt = (t: number) => (t < 0 ? 0 : ((a * mg) / 30 / (a - k)) * (Math.exp(-k * t) - Math.exp(-a * t)));
    const series = seriesOf(known, "far", over);
    expect(series.length).toBeGreaterThan(10);
    for (const { tMin, mgM3, ppm } of series.filter(({ tMin: t }) => t > 0.05)) {
      const mean = areaBySteps(levelAt, Math.max(0, tMin - over), tMin, [0]) / over;
      expect(mgM3 / mean).toBeCloseTo(1, 4);
      expect((ppm * 119.378) / 24.45 / mgM3).toBeCloseTo(1, 4);
    }
  });

  it("in two zones are the momentary values added up step by step, whatever room, rate and doses (property)", () => {
    const anyRoom = fc.record({
      farM3: fc.double({ min: 10, max: 80, noNaN: true }),
      outflowM3Min: fc.constantFrom(0, 1, 8),
      near: fc.record({
        volumeM3: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
        exchangeM3Min: fc.double({ min: 0.5, max: 5, noNaN: true }),
      }),
    }) satisfies fc.Arbitrary<RoomAir>;
    const anyDoses = fc
      .array(fc.record({ atMin: fc.integer({ min: 0, max: 50 }), mg: fc.double({ min: 1, max: 300, noNaN: true }) }), {
        minLength: 1,
        maxLength: 3,
      })
      .map((doses) => doses.toSorted((x, y) => x.atMin - y.atMin));
    fc.assert(
      fc.property(anyRoom, anyDoses, fc.constantFrom(0.05, 0.3, 2), (air, doses, ratePerMin) => {
        const law = { air, evaporation: { kind: "firstOrder" as const, ratePerMin }, saturationMgM3: 1e12 };
        const look = roomLook(law, doses);
        // Far from the doses a mean is a difference of nearly equal areas: of these a billionth is rounding.
        const all = doses.reduce((sum, { mg }) => sum + mg, 0);
        const times = [7, 31.5, 64, 120, 400];
        for (const zone of ["far", "near"] as const) {
          const reading = look.reading[zone];
          const asked = { zone, looks: [look], times, units: gasUnits(119.378, 24.45), otherMgM3: 0 };
          for (const { averagingMin, series } of meanSeries(asked))
            for (const { tMin, mgM3 } of series) {
              const levelAt = (t: number) => reading?.levelAt(t) ?? 0;
              const area = areaBySteps(levelAt, tMin - averagingMin, tMin, reading?.edges ?? []);
              expect(Math.abs(mgM3 - area / averagingMin)).toBeLessThan(1e-5 * (area / averagingMin) + 1e-9 * all);
            }
        }
      }),
      { numRuns: 25 },
    );
  });

  it.each([
    ["one drop", known],
    [
      "six drops beside the mouth, at a range of rates",
      { ...known, doses: [5, 15, 25, 35, 45, 55].map(dose), nearField },
    ],
    ["a closed room", { ...known, room: { volumeM3: 30, airChangesPerHour: 0 } }],
    ["a day with other cases", { ...known, otherCases: [{ ppm: 0.4, minutes: 120 }] }],
  ])("of %s are highest where the worst mean is, and never above it", (_name, { evaporation: _rate, ...input }) => {
    const output = of(input);
    for (const zone of [output.far, output.near ?? output.far])
      for (const [over, worst] of [
        [15, zone.mean15],
        [60, zone.mean60],
        [480, zone.mean480],
      ] as const) {
        const series = zone.means.find(({ averagingMin }) => averagingMin === over)?.series ?? [];
        const highest = Math.max(...series.map(({ mgM3 }) => mgM3));
        expect(highest).toBeLessThanOrEqual(worst.mgM3 * (1 + 1e-6));
        expect(highest).toBeGreaterThan(worst.mgM3 * 0.98);
        for (const { ppm, lowPpm = 0, highPpm = 0 } of series) {
          expect(lowPpm).toBeLessThanOrEqual(ppm);
          expect(highPpm).toBeGreaterThanOrEqual(ppm);
        }
      }
  });

  it("start at nothing, go on in time, and have no band at one rate", () => {
    const { far } = of(known);
    for (const { series } of far.means) {
      const times = series.map(({ tMin }) => tMin);
      expect(times).toEqual([...new Set(times)].sort((a, b) => a - b));
      expect(series[0]).toEqual({ tMin: 0, mgM3: 0, ppm: 0 });
    }
  });
});

describe("points that straight lines need", () => {
  it("tell all others to 2 %, the highest kept (property)", () => {
    const anyCurve = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(anyCurve, fc.integer({ min: 1, max: 9 }), (values, step) => {
        const times = values.map((_, index) => index * step);
        const stay = thinned(times, [values]);
        expect(Math.max(...stay.map((at) => values[at] ?? 0))).toBe(Math.max(...values));
        for (const [index, value] of values.entries()) {
          const from = stay.findLast((at) => at <= index) ?? 0;
          const to = stay.find((at) => at >= index) ?? 0;
          const share = to > from ? (index - from) / (to - from) : 0;
          const line = (values[from] ?? 0) + share * ((values[to] ?? 0) - (values[from] ?? 0));
          expect(Math.abs(line - value)).toBeLessThanOrEqual(0.02 * value + 1e-4 * Math.max(...values) + 1e-12);
        }
      }),
    );
  });

  it("leave two of a line, and keep an entry of six drops in two zones under 60 kB", () => {
    const times = Array.from({ length: 50 }, (_, at) => at);
    expect(thinned(times, [times.map((at) => 2 * at)])).toEqual([0, 49]);
    const { evaporation: _rate, ...ranged } = known;
    const six = of({ ...ranged, doses: [5, 15, 25, 35, 45, 55].map(dose), nearField });
    expect(JSON.stringify(six).length).toBeLessThan(60_000);
  });
});

const nearField = { radiusM: 0.5, airSpeedMPerMin: 3.6 };
function dose(atMin: number) {
  return { atMin, volumeMl: 0.1 };
}
