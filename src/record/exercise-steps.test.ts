import { describe, expect, it } from "vitest";
import type { CalibrationFilm } from "./calibration-film.ts";
import { exerciseSteps, markOfNumber } from "./exercise-steps.ts";

const films = Array.from(
  { length: 20 },
  (_, at): CalibrationFilm => ({
    ...{ name: `film-${String(at + 1).padStart(2, "0")}`, tooth: "lower canine", columns: 440, rows: 780 },
    uRunsTo: "distal",
    places: (["apex", "cusp", "crest"] as const).slice(0, at === 3 ? 1 : 3).map((kind) => ({ kind, says: kind })),
  }),
);
const named = (seed: number) => exerciseSteps(films, seed).map(({ film }) => film.name);

describe("the order of an exercise", () => {
  it.each([0, 1, 77, 4_294_967_295])("shows every film once in each round (seed %d)", (seed) => {
    const steps = exerciseSteps(films, seed);
    for (const round of [1, 2]) {
      const shown = steps.filter((step) => step.round === round).map(({ film }) => film.name);
      expect([...shown].sort()).toEqual(films.map(({ name }) => name));
    }
    expect(steps.map(({ round }) => round)).toEqual([...Array(20).fill(1), ...Array(20).fill(2)]);
  });

  it("has at least ten films between the two showings of any, whatever the seed", () => {
    for (let seed = 0; seed < 200; seed += 1) {
      const shown = named(seed);
      for (const { name } of films) expect(shown.lastIndexOf(name) - shown.indexOf(name)).toBeGreaterThan(10);
    }
  });

  it("mirrors ten films, all of them in the second round", () => {
    for (let seed = 0; seed < 50; seed += 1) {
      const mirrored = exerciseSteps(films, seed).filter((step) => step.mirrored);
      expect(mirrored).toHaveLength(10);
      expect(mirrored.every(({ round }) => round === 2)).toBe(true);
    }
  });

  it("is the same for the same seed and another for another", () => {
    expect(named(5)).toEqual(named(5));
    expect(named(5)).not.toEqual(named(6));
    expect(named(5).slice(0, 20)).not.toEqual(named(5).slice(20));
  });

  it("brings every film to every place in about the same number of exercises", () => {
    const firsts = new Map<string, number>();
    for (let seed = 0; seed < 2_000; seed += 1) {
      const [first = ""] = named(seed);
      firsts.set(first, (firsts.get(first) ?? 0) + 1);
    }
    // 100 each on the mean; four standard deviations of a binomial count are 39.
    expect([...firsts.values()].every((count) => Math.abs(count - 100) < 39)).toBe(true);
    expect(firsts.size).toBe(20);
  });
});

describe("the mark of a number", () => {
  const steps = exerciseSteps(films, 11);
  const marks = 2 * (19 * 3 + 1);

  it("goes through every place of every showing, in order", () => {
    const all = Array.from({ length: marks }, (_, number) => markOfNumber(steps, number));
    const expected = steps.flatMap((step, stepIndex) =>
      step.film.places.map((_, placeIndex) => ({ step, stepIndex, placeIndex })),
    );
    expect(all).toEqual(expected);
  });

  it("is none when everything is marked, and where there are no films", () => {
    expect(markOfNumber(steps, marks)).toBeUndefined();
    expect(markOfNumber(exerciseSteps([], 3), 0)).toBeUndefined();
  });
});
