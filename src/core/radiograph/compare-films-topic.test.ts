import { describe, expect, it } from "vitest";
import { boneLike, type FilmMaking, filmOf } from "../../../test/bone-like-film.ts";
import { Refusal } from "../refusal.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import type { CompareFilmsOutput } from "./compare-films/compare-films-input.ts";
import { type Homography, mapped, scaled, still } from "./compare-films/homography.ts";
import { placeAt } from "./compare-films/homography-of-landmarks.ts";
import { compareFilmsTopic } from "./compare-films-topic.ts";

const [columns, rows] = [420, 320];
const bone = boneLike(11);
const before = filmOf(bone, { columns, rows, noise: 0.005, seed: 1 });

type Place = [number, number];
const corners: Place[] = [
  [90, 70],
  [330, 80],
  [320, 250],
  [80, 240],
];

/** Landmarks as they are clicked: a mate under the map, each off by `sigma` in each direction. */
function clicked(map: Homography, sigma: number, seed = 3) {
  const { normal } = seededRandom(seed);
  return corners.map(([u, v]) => {
    const { column, row } = mapped(map, placeAt(u, v));
    return { before: [u, v], after: [column + sigma * normal(), row + sigma * normal()] };
  });
}

const filmUnder = (making: Partial<FilmMaking>) => filmOf(bone, { columns, rows, ...making });

function compared(map: Homography, making: Partial<FilmMaking> = {}, rest: object = {}): CompareFilmsOutput {
  const input = { before, after: filmUnder({ map, seed: 2, ...making }), landmarks: clicked(map, 1.5), ...rest };
  return answer(compareFilmsTopic, input);
}

const flat = ({ transform: [[a, b, c], [d, e, f], [g, h, i]] }: CompareFilmsOutput): Homography => [
  a,
  b,
  c,
  d,
  e,
  f,
  g,
  h,
  i,
];

/** The root mean square of how far a map is from the true one, over the whole film. */
function missedBy(found: Homography, truth: Homography): number {
  let [sum, count] = [0, 0];
  for (let v = 0; v < rows; v += 20)
    for (let u = 0; u < columns; u += 20) {
      const [a, b] = [mapped(found, placeAt(u, v)), mapped(truth, placeAt(u, v))];
      sum += (a.column - b.column) ** 2 + (a.row - b.row) ** 2;
      count += 1;
    }
  return Math.sqrt(sum / count);
}

/** A flat film seen from `deg` degrees aside, 7,000 px away, turned by half of that and shifted. */
function seenFrom(deg: number): Homography {
  const [a, b] = [(deg * Math.PI) / 180, (deg * Math.PI) / 360];
  const [cosA, cosB, sinB] = [Math.cos(a), Math.cos(b), Math.sin(b)];
  const [u, v, g] = [columns / 2, rows / 2, -Math.sin(a) / 7000];
  const turned: Homography = [cosA * cosB, -sinB, 6, cosA * sinB, cosB, -5, g, 0, 1];
  const [p, q, r, s, t, w, x, y, z] = turned;
  // Counted from the middle of the film and back again.
  const [c, f, i] = [r - p * u - q * v, w - s * u - t * v, z - x * u - y * v];
  return scaled([p + u * x, q + u * y, c + u * i, s + v * x, t + v * y, f + v * i, x, y, i]);
}

describe("a film warped by a known map (C1, C2)", () => {
  it.each([
    [2, 1, 0],
    [5, 0.8, 0.02],
    [8, 1.25, 0.02],
    [-8, 0.8, 0.02],
  ])("seen from %d degrees, gamma %d, noise %d, is brought back within 0.5 px", (deg, gamma, noise) => {
    const map = seenFrom(deg);
    const found = compared(map, { noise, tone: (grey) => grey ** gamma });
    expect(missedBy(flat(found), map)).toBeLessThan(0.5);
    expect(found.comparable).toBe(true);
    expect(found.statement).toBe("The films can be compared.");
    // Nothing has depth here, so nothing is left over but what grain does to pieces of 64 px.
    expect(found.residualPx).toBeLessThan(0.5);
    expect(found.stretch).toBeLessThan(1.05);
  });

  it("of itself, shifted by whole pixels, exactly", () => {
    const map: Homography = [1, 0, 7, 0, 1, -4, 0, 0, 1];
    const whole = filmOf(bone, { columns, rows });
    const input = { before: whole, after: filmUnder({ map }), landmarks: clicked(map, 1.5) };
    const found = answer(compareFilmsTopic, { ...input, wantsDifference: true });
    expect(missedBy(flat(found), map)).toBeLessThan(1e-5);
    expect(found.correlation).toBeGreaterThan(0.999999);
    expect(found.overlap).toBeCloseTo(((columns - 7) * (rows - 4)) / (columns * rows), 2);
    const largest = found.difference?.values.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
    expect(largest).toBeLessThan(2 / 4095);
  });

  it("does not depend on gain and offset of either film", () => {
    const map = seenFrom(3);
    const plain = filmUnder({ map, noise: 0.01, seed: 2 });
    const input = { before, landmarks: clicked(map, 1.5) };
    const one = answer(compareFilmsTopic, { ...input, after: plain });
    const other = answer(compareFilmsTopic, {
      ...input,
      after: { ...plain, grey: Float64Array.from(plain.grey, (grey) => 0.15 + 0.6 * grey) },
    });
    // The steps end where none moves a corner by 1e-4 px.
    expect(missedBy(flat(one), flat(other))).toBeLessThan(2e-3);
    expect(other.correlation).toBeCloseTo(one.correlation, 4);
  });

  it("comes back when the films are exchanged (property)", () => {
    const map = seenFrom(4);
    const there = compared(map, { noise: 0.005 });
    const marks = clicked(map, 1.5).map((one) => ({ before: one.after, after: one.before }));
    const back = answer(compareFilmsTopic, {
      before: filmUnder({ map, seed: 2, noise: 0.005 }),
      after: before,
      landmarks: marks,
    });
    const round = corners.map(([u, v]) => mapped(flat(back), mapped(flat(there), placeAt(u, v))));
    round.forEach(({ column, row }, index) => {
      const [u, v] = corners[index] ?? [0, 0];
      expect(Math.hypot(column - u, row - v)).toBeLessThan(0.3);
    });
  });
});

describe("what changed", () => {
  const round = (radius: number, [column, row]: Place): Place[] =>
    Array.from({ length: 48 }, (_, at) => {
      const turn = (at * Math.PI) / 24;
      return [column + radius * Math.cos(turn), row + radius * Math.sin(turn)];
    });
  const map = seenFrom(3);
  const middle: Place = [200, 150];
  /** A dark round place of a radius, on the bone. */
  const withLesion = (radius: number) => (u: number, v: number) =>
    bone(u, v) * (Math.hypot(u - middle[0], v - middle[1]) < radius ? 0.5 : 1);
  const films = {
    before: filmOf(withLesion(40), { columns, rows, noise: 0.01, seed: 4 }),
    after: filmOf(withLesion(28), { columns, rows, map, noise: 0.01, seed: 5 }),
    landmarks: clicked(map, 1),
  };
  const onAfter = round(28, middle).map(([u, v]): Place => {
    const { column, row } = mapped(map, placeAt(u, v));
    return [column, row];
  });

  it("is the ratio of both outlines on one film, with an interval that holds the truth (C6)", () => {
    const lesions = { before: round(40, middle), after: onAfter };
    const found = answer(compareFilmsTopic, { ...films, lesions });
    expect(Math.abs((found.areaRatio ?? 0) / (28 / 40) ** 2 - 1)).toBeLessThan(0.01);
    expect(found.intervals.areaRatio?.low).toBeLessThan(0.49);
    expect(found.intervals.areaRatio?.high).toBeGreaterThan(0.49);
    expect(found.residualNearLesionPx).toBeLessThan(0.5);
    found.carried.afterOnBefore?.forEach(([u, v]) => {
      expect(Math.hypot(u - middle[0], v - middle[1])).toBeCloseTo(28, 0);
    });
    expect(found.carried.beforeOnAfter).toHaveLength(48);
    expect(found.cautions).toEqual([]);
  });

  it("is given for further lesions by the same rule as for the first (C6)", () => {
    const [one, other] = [round(40, middle), onAfter];
    const found = answer(compareFilmsTopic, {
      ...films,
      lesions: { before: one, after: other },
      others: [
        { name: "at MB1", before: one, after: other },
        { name: "at DB", before: one },
      ],
    });
    const { areaRatio, intervals, carried } = found;
    expect(found.others).toEqual([
      { name: "at MB1", areaRatio, interval: intervals.areaRatio, ...carried },
      { name: "at DB", beforeOnAfter: carried.beforeOnAfter },
    ]);
  });

  it("leaves further lesions out of what is taken as unchanged (C2)", () => {
    const whole = answer(compareFilmsTopic, { ...films, wantsDifference: true });
    const without = answer(compareFilmsTopic, { ...films, others: [{ name: "", before: round(42, middle) }] });
    expect(without.differenceSigma).toBeLessThan(whole.differenceSigma ?? 0);
    expect(answer(compareFilmsTopic, { ...films, lesions: { before: round(42, middle) } }).differenceSigma).toBe(
      without.differenceSigma,
    );
  });

  it("is brighter where bone came back and nothing elsewhere (C3)", () => {
    const lesions = { before: round(40, middle), after: onAfter };
    const { difference } = answer(compareFilmsTopic, { ...films, lesions, wantsDifference: true });
    const meanIn = (from: number, to: number): number => {
      const inside = (difference?.values ?? new Float64Array(0)).filter((_, at) => {
        const away = Math.hypot((at % columns) - middle[0], Math.floor(at / columns) - middle[1]);
        return away > from && away < to;
      });
      return inside.reduce((sum, one) => sum + one, 0) / inside.length;
    };
    expect(meanIn(30, 38)).toBeGreaterThan(0.15);
    expect(Math.abs(meanIn(0, 26))).toBeLessThan(0.03);
    expect(Math.abs(meanIn(45, 140))).toBeLessThan(0.01);
  });

  it("is given as far as it can be: one outline is carried, but gives no ratio", () => {
    const found = answer(compareFilmsTopic, { ...films, lesions: { before: round(40, middle) } });
    expect(found.carried).toEqual({ beforeOnAfter: expect.any(Array) });
    expect(found).not.toHaveProperty("areaRatio");
    expect(found.notComputed.map(({ name }) => name)).toEqual(["areaRatio", "difference"]);
    const other = answer(compareFilmsTopic, { ...films, lesions: { after: onAfter } });
    expect(other.carried).toEqual({ afterOnBefore: expect.any(Array) });
    expect(other.residualNearLesionPx).toBeDefined();
  });

  it("warns where no lesion is outlined, and where landmarks are not the same places", () => {
    const wrong = films.landmarks.map((one, at) => ({ ...one, after: one.after.map((x) => x + (at === 2 ? 30 : 0)) }));
    const { cautions } = answer(compareFilmsTopic, { ...films, landmarks: wrong });
    expect(cautions).toEqual([
      expect.stringContaining("landmarks lie"),
      expect.stringContaining("No lesion is outlined"),
    ]);
  });

  it("goes by the hard parts alone where they are outlined (C2)", () => {
    const side = (from: number, to: number): Place[] => [
      [from, 0],
      [to, 0],
      [to, rows],
      [from, rows],
    ];
    // The left of the second film shows other bone: by the whole film this is change, by the right part it is not seen.
    const other = boneLike(99);
    const changed = filmOf((u, v) => (u < 150 ? other(u, v) : bone(u, v)), { columns, rows, seed: 6 });
    const input = { before, after: changed, landmarks: clicked(still, 1), hardParts: [side(160, columns)] };
    expect(missedBy(flat(answer(compareFilmsTopic, input)), still)).toBeLessThan(0.2);
  });
});

describe("films that can't be compared (C5)", () => {
  it("say so, and give neither ratio nor difference", () => {
    const other = filmOf(boneLike(77), { columns, rows });
    const found = answer(compareFilmsTopic, {
      before,
      after: other,
      landmarks: clicked(still, 1),
      wantsDifference: true,
    });
    expect(found.comparable).toBe(false);
    expect(found.statement).toMatch(/^The films can't be compared\. .*correlate/);
    expect(found).not.toHaveProperty("difference");
    expect(found.intervals).toEqual({});
    expect(found.notComputed.map(({ name }) => name)).toEqual(["areaRatio", "differenceSigma", "difference"]);
  });

  it("are those of which one is stretched by a fifth", () => {
    const found = compared([1.1, 0, -20, 0, 0.92, 10, 0, 0, 1]);
    expect(found.stretch).toBeCloseTo(1.1 / 0.92, 2);
    expect(found.comparable).toBe(false);
  });

  it("are those whose pieces lie off by more than 0.2 mm, as depth makes them", () => {
    // Places right of the middle lie nearer to the tube and move 24 px farther, as no projective map does.
    const deep = filmOf((u, v) => bone(u - 12 * Math.tanh((u - 210) / 40), v), { columns, rows, seed: 7 });
    const found = answer(compareFilmsTopic, { before, after: deep, landmarks: clicked(still, 1), mmPerPx: 0.1 });
    expect(found.residualMm).toBeCloseTo(0.1 * found.residualPx, 12);
    expect(found.residualMm).toBeGreaterThan(0.2);
    expect(found.comparable).toBe(false);
    expect(found.statement).toContain("over 0.2 mm");
  });
});

describe("what is refused", () => {
  const good = { before, after: before, landmarks: clicked(still, 0) };
  const refusalOf = (change: object): Refusal => {
    try {
      answer(compareFilmsTopic, { ...good, ...change });
    } catch (thrown) {
      if (thrown instanceof Refusal) return thrown;
    }
    throw new Error("not refused");
  };
  const at = (places: Place[]) => ({ landmarks: places.map((place) => ({ before: place, after: place })) });

  it.each<[string, object, string, string]>([
    ["three landmarks", at(corners.slice(1)), "input.invalid", "landmarks"],
    ["landmarks in line", at([10, 50, 90, 130].map((x): Place => [x, x])), "input.impossible", "landmarks"],
    ["a landmark outside", at([...corners, [419.6, 5]]), "input.impossible", "landmarks[4].before"],
    ["too few greys", { before: { ...before, columns: 421 } }, "input.impossible", "before.grey"],
    [
      "a grey above 1",
      { after: { ...before, grey: before.grey.map((g, i) => (i === 5 ? 1.5 : g)) } },
      "input.invalid",
      "after.grey[5]",
    ],
    [
      "an outline of two corners",
      {
        lesions: {
          after: [
            [1, 1],
            [9, 9],
          ],
        },
      },
      "trace.tooFewPoints",
      "lesions.after",
    ],
    [
      "a crossed outline",
      {
        lesions: {
          before: [
            [0, 0],
            [9, 9],
            [9, 0],
            [0, 9],
          ],
        },
      },
      "input.impossible",
      "lesions.before[2]",
    ],
    ["a film's name", { film: "x.png" }, "input.invalid", "film"],
  ])("%s", (_, change, code, path) => {
    const refusal = refusalOf(change);
    expect(refusal.code).toBe(code);
    expect(refusal.faults.map((fault) => fault.path)).toContain(path);
  });
});
