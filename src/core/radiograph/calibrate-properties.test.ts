import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import type { calibrateInput } from "./calibrate-input.ts";
import { calibrateTopic } from "./calibrate-topic.ts";

const calibrate = (input: z.input<typeof calibrateInput>) => answer(calibrateTopic, input);

describe("calibrate, whatever the lengths", () => {
  const pixels = fc.double({ min: 80, max: 1500, noNaN: true });
  const lengths = fc.array(fc.tuple(fc.double({ min: 5, max: 40, noNaN: true }), pixels), {
    minLength: 1,
    maxLength: 5,
  });
  const knownOf = (list: readonly [number, number][], turn = 0) =>
    list.map(([lengthMm, run]) => ({
      lengthMm,
      from: [10, 20] as [number, number],
      to: [10 + run * Math.cos(turn), 20 + run * Math.sin(turn)] as [number, number],
    }));

  it("mm per px doubles with the lengths, share of error and chi-square stay", () => {
    fc.assert(
      fc.property(lengths, (list) => {
        const one = calibrate({ known: knownOf(list) });
        const two = calibrate({ known: knownOf(list.map(([length, run]) => [2 * length, run])) });
        expect(two.mmPerPx.column / one.mmPerPx.column).toBeCloseTo(2, 9);
        expect((two.relativeSigma ?? 0) / (one.relativeSigma ?? 1)).toBeCloseTo(1, 9);
        expect(two.disagreement?.p ?? 1).toBeCloseTo(one.disagreement?.p ?? 1, 6);
      }),
    );
  });

  it("turning the film, swapping the ends and the order change nothing", () => {
    fc.assert(
      fc.property(lengths, fc.double({ min: 0, max: 6.28, noNaN: true }), (list, turn) => {
        const one = calibrate({ known: knownOf(list) });
        const swapped = knownOf(list, turn).map((known) => ({ ...known, from: known.to, to: known.from }));
        const other = calibrate({ known: swapped.reverse() });
        expect(other.mmPerPx.row / one.mmPerPx.column).toBeCloseTo(1, 9);
        expect((other.relativeSigma ?? 0) / (one.relativeSigma ?? 1)).toBeCloseTo(1, 6);
      }),
    );
  });

  it("lies between the scales of the single lengths, with an interval around it", () => {
    fc.assert(
      fc.property(lengths, (list) => {
        const { mmPerPx, interval } = calibrate({ known: knownOf(list) });
        const singles = list.map(([length, run]) => length / run);
        expect(mmPerPx.column).toBeGreaterThanOrEqual(Math.min(...singles) * (1 - 1e-12));
        expect(mmPerPx.column).toBeLessThanOrEqual(Math.max(...singles) * (1 + 1e-12));
        if (interval === undefined) return;
        expect(interval.low).toBeLessThan(mmPerPx.column);
        expect(interval.high).toBeGreaterThan(mmPerPx.column);
      }),
    );
  });

  it.each([
    ["one long", [[20, 400]]],
    ["one short", [[2, 10.5]]],
    [
      "three",
      [
        [20, 400],
        [10, 200],
        [5, 100],
      ],
    ],
  ] as [string, [number, number][]][])(
    "the stated spread and interval hold when clicked again and again: %s",
    (_, list) => {
      const { normal } = seededRandom(31);
      const trials = 4_000;
      const known = () =>
        list.map(([lengthMm, run]) => ({
          lengthMm,
          from: [normal(), normal()] as [number, number],
          to: [run + normal(), normal()] as [number, number],
        }));
      const truth = (list[0]?.[0] ?? 0) / (list[0]?.[1] ?? 1);
      const runs = Array.from({ length: trials }, () => calibrate({ known: known() }));
      const covered = runs.filter(
        ({ interval }) => interval !== undefined && interval.low <= truth && truth <= interval.high,
      );
      // 95 % of 4000 within four standard errors (0.34 % each); the short bar's clicks are not quite first-order.
      expect(covered.length / trials).toBeGreaterThan(0.936);
      expect(covered.length / trials).toBeLessThan(0.97);
      const offs = runs.map(({ mmPerPx }) => truth / mmPerPx.column - 1);
      const spread = Math.sqrt(offs.reduce((sum, off) => sum + off ** 2, 0) / trials);
      const stated =
        calibrate({ known: list.map(([lengthMm, run]) => ({ lengthMm, from: [0, 0], to: [run, 0] })) }).relativeSigma ??
        0;
      expect(spread / stated).toBeGreaterThan(0.95);
      expect(spread / stated).toBeLessThan(1.05);
    },
  );

  it("calls lengths that agree a disagreement once in twenty, and a foreshortened one nearly always", () => {
    const { normal } = seededRandom(5);
    const trials = 4_000;
    const shareNamed = (shortened: number): number => {
      const runs = Array.from({ length: trials }, () =>
        calibrate({
          known: [400, 300, 200 * shortened].map((run, index) => ({
            lengthMm: [20, 15, 10][index] ?? 0,
            from: [normal(), normal()],
            to: [run + normal(), normal()],
          })),
        }),
      );
      return runs.filter(({ foreshortening }) => foreshortening !== undefined).length / trials;
    };
    // 5 % within four standard errors of 0.34 %.
    expect(shareNamed(1)).toBeGreaterThan(0.036);
    expect(shareNamed(1)).toBeLessThan(0.064);
    // 5 % shorter is 10 px of 200, 6.6 standard deviations.
    expect(shareNamed(0.95)).toBeGreaterThan(0.98);
  });

  it("answers or refuses every input that is well formed, and never breaks", () => {
    const within = (low: number, high: number) =>
      fc.oneof(fc.constantFrom(low, high), fc.double({ min: low, max: high, noNaN: true }));
    const place = fc.tuple(within(-100_000, 100_000), within(-100_000, 100_000));
    const known = fc.record(
      {
        kind: fc.constantFrom("length", "sphere"),
        lengthMm: within(0.01, 500),
        from: place,
        to: place,
        sigmaPx: within(0.001, 100),
      },
      { requiredKeys: ["lengthMm", "from", "to"] },
    );
    const spacing = fc.tuple(within(0.0001, 5), within(0.0001, 5));
    const input = fc.record(
      {
        known: fc.array(known, { maxLength: 4 }),
        detectorSpacingMm: spacing,
        magnification: within(1, 3),
        pixelSpacingMm: spacing,
        calibrationType: fc.constantFrom("fiducial", "geometry"),
        geometry: fc.record({ sourceToToothMm: within(1, 5_000), toothToDetectorMm: within(0, 1_000) }),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(input, (raw) => {
        try {
          expect(answer(calibrateTopic, raw).mmPerPx.column).toBeGreaterThan(0);
        } catch (thrown) {
          expect(thrown).toMatchObject({ code: expect.stringMatching(/^(calibration\.missing|input\.impossible)$/) });
        }
      }),
      { numRuns: 2_000 },
    );
  });
});
