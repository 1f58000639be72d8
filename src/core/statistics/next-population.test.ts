import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { expectedRange } from "./expected-range.ts";
import { type CountedSeries, nextPopulation, shareOfNext } from "./next-population.ts";
import { seededRandom } from "./seeded-random.ts";

interface Answer {
  n: number[];
  N: number[];
  centre: number;
  standardError: number;
  spread: number;
  low: number;
  high: number;
}
const file = new URL("../../../test/reference/next-population/answers.json", import.meta.url);
const answers: Record<string, Answer> = JSON.parse(readFileSync(file, "utf8")).sets;
const seriesOf = ({ n, N }: Answer): CountedSeries[] => n.map((one, at) => ({ n: one, N: N[at] ?? 0 }));
const logit = (share: number) => Math.log(share / (1 - share));

describe("expectedRange", () => {
  // Tippett 1925, the printed table of mean ranges (memory), to its digits; scipy 1.17.1 gives the same by quadrature.
  it.each([
    [2, 1.12838],
    [10, 3.07751],
    [20, 3.73495],
    [50, 4.49815],
    [100, 5.01519],
  ])("of %d normal numbers is %d", (count, range) => {
    expect(expectedRange(count)).toBeCloseTo(range, 5);
  });

  it("is what drawn numbers show", () => {
    const random = seededRandom(21);
    const draws = 4_000;
    let sum = 0;
    for (let draw = 0; draw < draws; draw++) {
      const numbers = Array.from({ length: 21 }, random.normal);
      sum += Math.max(...numbers) - Math.min(...numbers);
    }
    // The range of 21 has a standard deviation of 0.73, so a mean of 4000 one of 0.012.
    expect(Math.abs(sum / draws - expectedRange(21))).toBeLessThan(0.05);
  });
});

describe("nextPopulation", () => {
  // metafor stops where its own steps get small: seven digits are its word.
  it.each(Object.entries(answers))("of the set '%s' is as metafor has it", (_, answer) => {
    const next = nextPopulation(seriesOf(answer));
    expect(next.centreLogit).toBeCloseTo(answer.centre, 6);
    expect(next.standardErrorLogit).toBeCloseTo(answer.standardError, 6);
    expect(next.spreadLogit).toBeCloseTo(answer.spread, 6);
    expect(next.spreadFrom).toBe("series");
    expect(logit(shareOfNext(next, 0.025))).toBeCloseTo(answer.low, 5);
    expect(logit(shareOfNext(next, 0.975))).toBeCloseTo(answer.high, 5);
  });

  it("has no spread where the series differ by less than chance", () => {
    const next = nextPopulation([
      { n: 50, N: 100 },
      { n: 51, N: 100 },
    ]);
    expect(next.spreadLogit).toBe(0);
    expect(next.standardErrorLogit).toBeCloseTo(Math.sqrt(1 / (100 * 0.25 + 100 * 0.51 * 0.49)), 9);
  });

  it("mirrors when the shares are turned round, and does not care for the order", () => {
    const series = seriesOf(answers.wide ?? { n: [], N: [], centre: 0, standardError: 0, spread: 0, low: 0, high: 0 });
    const next = nextPopulation(series);
    const turned = nextPopulation(series.map(({ n, N }) => ({ n: N - n, N })).reverse());
    expect(turned.centreLogit).toBeCloseTo(-next.centreLogit, 9);
    expect(turned.spreadLogit).toBeCloseTo(next.spreadLogit, 9);
    expect(shareOfNext(turned, 0.1)).toBeCloseTo(1 - shareOfNext(next, 0.9), 9);
  });

  it("takes the spread from a published range, of the series with the most regions", () => {
    const few = { n: 883, N: 12_608, regions: 15, lowest: 0.05, highest: 0.09 };
    const many = { n: 3875, N: 5250, regions: 21, lowest: 0.48, highest: 0.976 };
    const next = nextPopulation([few, many, { n: 511, N: 1000 }]);
    // (logit .976 - logit .48) / 3.77834 = 1.00195; one region of 250 at .738 varies by 1/(250 * .738 * .262) = 0.02069.
    expect(next).toMatchObject({ spreadFrom: "range", freedom: 20 });
    expect(next.spreadLogit).toBeCloseTo(Math.sqrt(1.00195 ** 2 - 0.02069), 3);
  });

  it("weighs a count over m regions as m regions of that share", () => {
    const range = { lowest: 0.2, highest: 0.8, regions: 10 };
    const together = nextPopulation([
      { n: 500, N: 1000, ...range },
      { n: 30, N: 200, regions: 4 },
    ]);
    const apart = nextPopulation([
      { n: 500, N: 1000, ...range },
      ...Array.from({ length: 4 }, () => ({ n: 7.5, N: 50 })),
    ]);
    expect(together.centreLogit).toBeCloseTo(apart.centreLogit, 12);
    expect(together.standardErrorLogit).toBeCloseTo(apart.standardErrorLogit, 12);
  });

  it("needs no second series where one tells its range; a range of its own counting leaves no spread", () => {
    const alone = nextPopulation([{ n: 3875, N: 5250, regions: 21, lowest: 0.48, highest: 0.976 }]);
    expect(alone.centreLogit).toBeCloseTo(logit(3875 / 5250), 12);
    expect(nextPopulation([{ n: 500, N: 1000, regions: 10, lowest: 0.47, highest: 0.53 }]).spreadLogit).toBe(0);
  });

  it("its interval holds the share of a new population as often as it says", () => {
    const random = seededRandom(7);
    const draw = () => {
      const share = 1 / (1 + Math.exp(-(0.4 + 0.8 * random.normal())));
      const N = 300;
      let n = 0;
      for (let one = 0; one < N; one++) if (random.uniform() < share) n += 1;
      return { n, N, share };
    };
    const runs = 400;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const next = nextPopulation(Array.from({ length: 8 }, draw));
      const { share } = draw();
      if (share > shareOfNext(next, 0.1) && share < shareOfNext(next, 0.9)) held += 1;
    }
    // 80 % of 400 is 320, with a standard deviation of 8; this way of counting holds 78 to 82 %.
    expect(held).toBeGreaterThan(320 - 32);
    expect(held).toBeLessThan(320 + 32);
  });
});
