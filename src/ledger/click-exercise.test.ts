import { describe, expect, it } from "vitest";
import { seededRandom } from "../core/statistics/seeded-random.ts";
import type { CalibrationFilm } from "../record/calibration-film.ts";
import type { ExerciseMark } from "../record/exercise.ts";
import { exerciseSteps } from "../record/exercise-steps.ts";
import { clickExerciseAnswer } from "./click-exercise.ts";

const films = Array.from(
  { length: 20 },
  (_, at): CalibrationFilm => ({
    ...{ name: `film-${String(at + 1).padStart(2, "0")}`, tooth: "lower canine", columns: 440, rows: 780 },
    uRunsTo: "distal",
    places: [
      { kind: "apex", says: "Apex", truth: [200 + at, 700] },
      { kind: "cusp", says: "Cusp", truth: [210, 40 + at] },
      { kind: "crest", says: "Crest" },
    ],
  }),
);
const { normal } = seededRandom(2);
/** Every place marked with an error of 0.8 px, in the order of a seed. */
const marks = exerciseSteps(films, 9).flatMap(({ film, round, mirrored }) =>
  film.places.map(
    ({ kind, truth = [50, 300] }): ExerciseMark => ({
      ...{ film: film.name, kind, round, mirrored, by: round === 1 ? "pointer" : "keyboard", zoom: 1.5 },
      at: [truth[0] + 0.8 * normal(), truth[1] + 0.8 * normal()],
      markedAt: "2026-11-29T10:00:00.000Z",
    }),
  ),
);

describe("what an exercise answers", () => {
  it("is the click error of its pairs, whose interval holds the error that was put in", () => {
    const { topicVersion, answer } = clickExerciseAnswer(marks, films);
    expect(topicVersion).toBe(1);
    expect(answer).toMatchObject({ n: 60, clicks: 120, truths: 40, zoom: { low: 1.5, middle: 1.5, high: 1.5 } });
    const { sigmaPx } = (answer as { intervals: Record<string, { low: number; high: number }> }).intervals;
    expect(sigmaPx?.low).toBeLessThan(0.8);
    expect(sigmaPx?.high).toBeGreaterThan(0.8);
    expect(answer).toMatchObject({ cautions: expect.arrayContaining([expect.stringContaining("films are made")]) });
  });

  it("does not ask in which order the marks were made", () => {
    expect(clickExerciseAnswer([...marks].reverse(), films)).toEqual(clickExerciseAnswer(marks, films));
  });

  it("is refused while a place has no second mark", () => {
    expect(() => clickExerciseAnswer(marks.slice(0, -1), films)).toThrow(
      expect.objectContaining({ code: "input.impossible" }),
    );
  });
});
