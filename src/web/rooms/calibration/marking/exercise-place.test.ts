import { describe, expect, it } from "vitest";
import type { ExerciseStepView } from "../../../../server/api.ts";
import { edgesOf, exercisePlace, marksInAll } from "./exercise-place.ts";

const step = (film: string, places: number): ExerciseStepView => ({
  ...{ film, tooth: "lower canine", columns: 440, rows: 780, uRunsTo: "distal", round: 1, mirrored: false },
  places: Array.from({ length: places }, () => ({ kind: "apex", says: "Apex" })),
});
const steps = [step("film-01", 3), step("film-02", 2), step("film-03", 3)];
const marks = (count: number) =>
  Array.from({ length: count }, (_, u) => ({ at: [u, 0] as const, by: "pointer" as const }));

describe("where an exercise is", () => {
  it.each([
    [0, "film-01", 0, []],
    [2, "film-01", 2, [0, 1]],
    [3, "film-02", 0, []],
    [4, "film-02", 1, [3]],
    [7, "film-03", 2, [5, 6]],
  ])("after %d marks is at %s, place %d, and shows the marks of this showing alone", (count, film, index, shown) => {
    const place = exercisePlace({ steps, marks: marks(count) });
    expect(place).toMatchObject({ step: { film }, placeIndex: index });
    expect(place?.marks.map(({ at }) => at[0])).toEqual(shown);
  });

  it("is nowhere when everything is marked", () => {
    expect(marksInAll({ steps })).toBe(8);
    expect(exercisePlace({ steps, marks: marks(8) })).toBeUndefined();
  });
});

it("the sides change with the film and with mirroring, and both together change nothing", () => {
  const edges = (uRunsTo: "distal" | "mesial", mirrored: boolean) => edgesOf({ uRunsTo, mirrored }).join(" ");
  expect(edges("distal", false)).toBe("mesial distal");
  expect(edges("distal", true)).toBe("distal mesial");
  expect(edges("mesial", false)).toBe("distal mesial");
  expect(edges("mesial", true)).toBe("mesial distal");
});
