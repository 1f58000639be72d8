import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import type { ClickErrorInput, ClickPair } from "./click-error/click-error-input.ts";
import { clickErrorTopic } from "./click-error-topic.ts";

const of = (pairs: readonly object[], rest: object = {}) => answer(clickErrorTopic, { pairs, ...rest });

function refusalOf(input: unknown): Refusal {
  try {
    answer(clickErrorTopic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
  }
  throw new Error("not refused");
}

const kinds = ["apex", "cusp", "crest"] as const;

/** An exercise of known errors: places on films, marked twice with normal errors, drift of the second, bias of both. */
function exercise(seed: number, how: { films?: number; sigma?: number; drift?: number; bias?: number } = {}) {
  const { films = 20, sigma = 0.8, drift = 0, bias = 0 } = how;
  const { normal, uniform } = seededRandom(seed);
  return Array.from({ length: films }, (_, film) => film).flatMap((film) =>
    kinds.map((name): ClickPair => {
      const truth: [number, number] = [400 * uniform(), 600 * uniform()];
      const mark = (by: number): [number, number] => [
        truth[0] + bias + by + sigma * normal(),
        truth[1] + bias + sigma * normal(),
      ];
      return { film: `film-${film}`, name, first: mark(0), second: mark(drift), truth };
    }),
  );
}

/** Numbers of a table as pairs: the first column across; nothing happens down. */
const table = (first: readonly number[], second: readonly number[]) =>
  first.map(
    (u, at): ClickPair => ({ film: `subject-${at}`, name: "flow", first: [u, 0], second: [second[at] ?? 0, 0] }),
  );

// Bland JM, Altman DG. Lancet 1986;1:307-310, Table: peak flows of 17 subjects by two meters, l/min (seen for the first
// readings of both; second readings of the large meter recalled).
const large1 = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
const large2 = [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421];
const small1 = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];

describe("the error of a click: outside values", () => {
  it("is Dahlberg's error of the large meter's duplicates, 15.3067 l/min (C1, C2)", () => {
    const { sigmaColumnPx, sigmaRowPx, sigmaPx } = of(table(large1, large2));
    expect(sigmaColumnPx).toBeCloseTo(15.3067, 4);
    expect(sigmaRowPx).toBe(0);
    // The same squares over twice as many differences.
    expect(sigmaPx).toBeCloseTo(15.3067 / Math.SQRT2, 4);
  });

  it("has the mean difference of both meters with its interval, -22.049 to 17.814 (C4)", () => {
    const { driftColumnPx, intervals } = of(table(small1, large1));
    expect(driftColumnPx).toBeCloseTo(-2.117647, 5);
    expect(intervals.driftColumnPx?.low).toBeCloseTo(-22.04884, 4);
    expect(intervals.driftColumnPx?.high).toBeCloseTo(17.81354, 4);
  });

  it("has for 10 differences of 1 px the error 1/sqrt 2 between the printed points of chi-square (C3)", () => {
    const pairs = [0, 1, 2, 3, 4].map((film) => ({ film: `${film}`, name: "apex", first: [0, 0], second: [1, -1] }));
    const { sigmaPx, intervals } = of(pairs);
    expect(sigmaPx).toBeCloseTo(Math.SQRT1_2, 12);
    // Abramowitz & Stegun 1964, table 26.8 (memory): 3.24697 and 20.4832 for 10 degrees of freedom.
    expect(intervals.sigmaPx?.low).toBeCloseTo(Math.sqrt(5 / 20.4832), 5);
    expect(intervals.sigmaPx?.high).toBeCloseTo(Math.sqrt(5 / 3.24697), 5);
  });
});

const moved = (pairs: readonly ClickPair[], map: (at: readonly [number, number]) => [number, number]): ClickPair[] =>
  pairs.map((pair) => ({
    ...pair,
    first: map(pair.first),
    second: map(pair.second),
    ...(pair.truth === undefined ? {} : { truth: map(pair.truth) }),
  }));

describe("the error of a click: properties", () => {
  const pairs = exercise(5);

  it("grows with the picture, and knows no place (C1)", () => {
    const plain = of(pairs);
    const larger = of(moved(pairs, ([u, v]) => [3 * u + 70, 3 * v - 20]));
    expect(larger.sigmaPx / plain.sigmaPx).toBeCloseTo(3, 9);
    expect((larger.missPx ?? 0) / (plain.missPx ?? 1)).toBeCloseTo(3, 9);
    expect((larger.biasRowPx ?? 0) / (plain.biasRowPx ?? 1)).toBeCloseTo(3, 6);
  });

  it("changes its directions when the picture lies on its side (C2)", () => {
    const [plain, lying] = [of(pairs), of(moved(pairs, ([u, v]) => [v, u]))];
    expect([lying.sigmaColumnPx, lying.sigmaRowPx]).toEqual([plain.sigmaRowPx, plain.sigmaColumnPx]);
    expect(lying.sigmaPx).toBeCloseTo(plain.sigmaPx, 12);
  });

  it("is the same with first and second exchanged, but that the drift goes the other way (C1, C4)", () => {
    const [plain, turned] = [of(pairs), of(pairs.map((pair) => ({ ...pair, first: pair.second, second: pair.first })))];
    expect(turned.sigmaPx).toBeCloseTo(plain.sigmaPx, 12);
    expect(turned.driftRowPx).toBeCloseTo(-plain.driftRowPx, 12);
    expect(turned.missPx).toBeCloseTo(plain.missPx ?? 0, 12);
  });

  it("joins its kinds and its directions by their squares (C2)", () => {
    const { sigmaPx, sigmaColumnPx, sigmaRowPx, byName } = of(pairs);
    expect(sigmaPx ** 2).toBeCloseTo((sigmaColumnPx ** 2 + sigmaRowPx ** 2) / 2, 12);
    const squares = byName.reduce((sum, { n, sigmaPx: one }) => sum + n * one ** 2, 0);
    expect(sigmaPx ** 2).toBeCloseTo(squares / 60, 12);
  });

  it("holds the known error in 95 % of 1 000 seeded exercises, and names a pair in few of them (C3, C6)", () => {
    const found = Array.from({ length: 1_000 }, (_, seed) => of(exercise(seed + 1)));
    const held = found.filter(
      ({ intervals: { sigmaPx } }) => (sigmaPx?.low ?? 1) <= 0.8 && 0.8 <= (sigmaPx?.high ?? 0),
    );
    const bias = found.filter(
      ({ intervals: { biasRowPx } }) => (biasRowPx?.low ?? 1) <= 0 && 0 <= (biasRowPx?.high ?? -1),
    );
    // Three standard errors of a share of 95 % in 1 000.
    expect(Math.abs(held.length / 1_000 - 0.95)).toBeLessThan(0.021);
    expect(Math.abs(bias.length / 1_000 - 0.95)).toBeLessThan(0.021);
    expect(found.filter(({ outliers }) => outliers.length > 0).length).toBeLessThan(80);
  });

  it("finds the bias and the miss that were put in (C5)", () => {
    const { biasColumnPx, biasRowPx, missPx, truths, intervals } = of(exercise(3, { bias: 2 }));
    expect(truths).toBe(60);
    expect(intervals.biasColumnPx?.low).toBeLessThan(2);
    expect(intervals.biasColumnPx?.high).toBeGreaterThan(2);
    // The mean of 60 middles errs by 0.8 / sqrt 120 = 0.073.
    expect(Math.abs((biasColumnPx ?? 0) - 2)).toBeLessThan(0.22);
    expect(Math.abs((biasRowPx ?? 0) - 2)).toBeLessThan(0.22);
    // Bias 2 and error 0.8 together: sqrt(4.64).
    expect(Math.abs((missPx ?? 0) - Math.sqrt(4.64))).toBeLessThan(0.22);
  });
});

const astray = (pairs: readonly ClickPair[], index: number, by: number): ClickPair[] =>
  pairs.map((pair, at) => (at === index ? { ...pair, second: [pair.second[0] + by, pair.second[1]] } : pair));

describe("pairs that are out of line (C6)", () => {
  it("names the one that was put there, and gives the error with and without it", () => {
    const plain = exercise(8);
    const found = of(astray(plain, 7, 40));
    expect(found.outliers).toEqual([
      { film: "film-2", name: "cusp", apartPx: expect.closeTo(40, -1), expectedPx: expect.any(Number) },
    ]);
    expect(found.without?.n).toBe(59);
    // 40 px in one of 120 differences alone: sqrt(1600 / 240) = 2.58.
    expect(found.sigmaPx).toBeGreaterThan(2.5);
    const rest = of(plain.filter((_, at) => at !== 7));
    expect(found.without?.sigmaPx).toBeCloseTo(rest.sigmaPx, 12);
    expect(found.cautions.join()).toContain(`${found.without?.sigmaPx.toFixed(2)} px without`);
  });

  it("is not moved by how far astray it lies", () => {
    const bounds = [40, 4_000].map((by) => of(astray(exercise(8), 7, by)).outliers[0]?.expectedPx);
    expect(bounds[0]).toBe(bounds[1]);
  });

  it("judges a kind of few pairs by all pairs, and a kind of ten by its own", () => {
    const still = Array.from(
      { length: 9 },
      (_, at): ClickPair => ({
        ...{ film: `film-${at}`, name: "still", first: [0, 0] },
        second: [at === 0 ? 1.5 : 0.1, 0],
      }),
    );
    const more: ClickPair = { film: "film-9", name: "still", first: [0, 0], second: [0.1, 0] };
    expect(of([...exercise(8), ...still]).outliers).toEqual([]);
    expect(of([...exercise(8), ...still, more]).outliers).toMatchObject([{ film: "film-0", name: "still" }]);
  });

  it("names none where half of the pairs are of distance 0, and none without five left", () => {
    const same = [0, 1, 2, 3, 4, 5].map(
      (at): ClickPair => ({
        ...{ film: `film-${at}`, name: "apex", first: [1, 1] },
        second: [at === 0 ? 50 : 1, 1],
      }),
    );
    expect(of(same).outliers).toEqual([]);
    const five = same.slice(0, 5).map((pair, at): ClickPair => ({ ...pair, second: [at === 0 ? 90 : 1.2, 1] }));
    expect(of(five)).toMatchObject({ outliers: [{ film: "film-0" }] });
    expect(of(five)).not.toHaveProperty("without");
  });
});

describe("what is told beside it", () => {
  const cautionsOf = (pairs: readonly ClickPair[], rest: object = {}): string => of(pairs, rest).cautions.join(" ");

  it("names made films, and only those", () => {
    expect(cautionsOf(exercise(5), { films: "made" })).toContain("The films are made");
    for (const rest of [{}, { films: "taken" }]) expect(cautionsOf(exercise(5), rest)).not.toContain("are made");
  });

  it("names a drift that was put in, and none that was not", () => {
    expect(cautionsOf(exercise(5, { drift: 1.5 }))).toContain("to one side");
    expect(cautionsOf(exercise(5))).not.toContain("to one side");
  });

  it("names kinds that differ, and few pairs", () => {
    const rough = exercise(5).map(
      (pair): ClickPair => (pair.name === "crest" ? { ...pair, second: [pair.first[0] + 6, pair.first[1] - 5] } : pair),
    );
    expect(cautionsOf(rough)).toMatch(/Kinds of place differ: (apex|cusp) 0\.\d\d px, crest 3\.91 px/);
    expect(cautionsOf(exercise(5))).not.toContain("differ");
    expect(cautionsOf(exercise(5).slice(0, 15))).toContain("Few pairs (15)");
    expect(cautionsOf(exercise(5).slice(0, 16))).not.toContain("Few pairs");
  });

  it("does not call kinds different for a pair that is out of line", () => {
    const text = cautionsOf(astray(exercise(5), 7, 40));
    expect(text).toContain("1 pair lies farther apart");
    expect(text).not.toContain("Kinds of place differ");
  });

  it("says that equal marks are no error", () => {
    const same = exercise(5).map((pair) => ({ ...pair, second: pair.first }));
    expect(of(same)).toMatchObject({ sigmaPx: 0, intervals: { sigmaPx: { low: 0, high: 0 } } });
    expect(cautionsOf(same)).toContain("no click error");
  });

  it("leaves out what no truth, few truths, or few pairs of a kind can tell, and says why", () => {
    const bare = exercise(5).map(({ truth: _truth, ...pair }) => pair);
    expect(of(bare)).not.toHaveProperty("missPx");
    expect(of(bare).notComputed).toContainEqual({ name: "missPx", why: "no true places are given" });
    const four = exercise(5).map((pair, at) => (at < 4 ? pair : { ...pair, truth: undefined }));
    expect(of(JSON.parse(JSON.stringify(four))).notComputed).toContainEqual({
      ...{ name: "biasRowPx", why: "4 true places; 5 are needed" },
    });
    const [, ...few] = exercise(5, { films: 5 });
    expect(of(few).notComputed).toEqual([{ name: "sigmaPx of apex", why: "4 pairs; 5 are needed" }]);
    expect(of(few).byName.map(({ name }) => name)).toEqual(["cusp", "crest"]);
  });

  it("tells pointer and keyboard apart, by pairs that were made with one of them alone", () => {
    const by = (at: number): Partial<ClickPair> =>
      at < 30
        ? { firstBy: "pointer", secondBy: "pointer" }
        : at < 55
          ? { firstBy: "keyboard", secondBy: "keyboard" }
          : { firstBy: "pointer", secondBy: "keyboard" };
    const pairs = exercise(5).map((pair, at): ClickPair => ({ ...pair, ...by(at) }));
    const { byTool } = of(pairs);
    expect(byTool.map(({ tool, n }) => [tool, n])).toEqual([
      ["pointer", 30],
      ["keyboard", 25],
    ]);
    expect(byTool[1]?.sigmaPx).toBeCloseTo(of(pairs.slice(30, 55)).sigmaPx, 12);
    const one = pairs.map((pair, at) => (at === 40 ? pair : { ...pair, firstBy: "pointer", secondBy: "pointer" }));
    expect(of(one).notComputed).toContainEqual({ name: "sigmaPx of keyboard", why: "1 pair; 5 are needed" });
    expect(of(exercise(5)).byTool).toEqual([]);
  });

  it("gives the zoom from least to most with its middle, where it was told", () => {
    const zooms = [1, 2, 3, 4, 8];
    const pairs = exercise(5).map((pair, at): ClickPair => (at < 5 ? { ...pair, firstZoom: zooms[at] ?? 1 } : pair));
    expect(of(pairs).zoom).toEqual({ low: 1, middle: 3, high: 8 });
    expect(of(exercise(5))).not.toHaveProperty("zoom");
  });
});

describe("what is refused", () => {
  it("is fewer than five pairs, and a place that stands twice for one film", () => {
    expect(refusalOf({ pairs: exercise(1).slice(0, 4) })).toMatchObject({
      code: "input.notDeterminable",
      faults: [{ path: "pairs", says: expect.stringContaining("4 are too few") }],
    });
    const [first, ...rest] = exercise(1);
    expect(refusalOf({ pairs: [first, ...rest, first] })).toMatchObject({
      code: "input.impossible",
      faults: [{ path: "pairs[60]" }],
    });
    expect(of(exercise(1).slice(0, 5)).n).toBe(5);
  });

  it.each<[string, (pairs: ClickErrorInput["pairs"]) => unknown]>([
    ["pairs", (pairs) => ({ pairs: Array.from({ length: 7 }, () => pairs).flat() })],
    ["pairs[0].first[0]", ([pair]) => ({ pairs: [{ ...pair, first: [100_001, 0] }] })],
    ["pairs[0].second[1]", ([pair]) => ({ pairs: [{ ...pair, second: [0, -100_001] }] })],
    ["pairs[0].truth", ([pair]) => ({ pairs: [{ ...pair, truth: [1] }] })],
    ["pairs[0].film", ([pair]) => ({ pairs: [{ ...pair, film: "" }] })],
    ["pairs[0].name", ([pair]) => ({ pairs: [{ ...pair, name: "x".repeat(61) }] })],
    ["pairs[0].firstBy", ([pair]) => ({ pairs: [{ ...pair, firstBy: "foot" }] })],
    ["pairs[0].secondZoom", ([pair]) => ({ pairs: [{ ...pair, secondZoom: 0 }] })],
    ["pairs[0].more", ([pair]) => ({ pairs: [{ ...pair, more: 1 }] })],
    ["films", (pairs) => ({ pairs, films: "drawn" })],
  ])("is a fault at %s", (path, wrong) => {
    const { code, faults } = refusalOf(wrong(exercise(1)));
    expect(code).toBe("input.invalid");
    expect(faults.map((fault) => fault.path)).toContain(path);
  });
});
