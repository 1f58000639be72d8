import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { placesOf, viewsOf } from "./two-view/bent-canal-for-tests.ts";
import { twoViewTopic } from "./two-view-topic.ts";

const [straight, angled] = viewsOf(placesOf({ l1: 8, radius: 5, turnDeg: 40, l2: 3, planeDeg: 60 }), [0, 25]);
if (straight === undefined || angled === undefined) throw new Error("two views");

function refusalOf(input: unknown): Refusal {
  try {
    answer(twoViewTopic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("was answered");
}
const spots = (...places: [number, number][]) => Object.fromEntries(places.map((place, index) => [`m${index}`, place]));

describe("what two views refuse", () => {
  it.each([
    ["one view", { views: [straight] }, "views", "depth needs at least 2 films"],
    ["no view", { views: [] }, "views", "depth needs at least 2 films"],
    [
      "equal angles",
      { views: [straight, { ...angled, horizontalAngleDeg: 0.5 }] },
      "views[1].horizontalAngleDeg",
      "both films show the same",
    ],
    [
      "opposite traces",
      { views: [straight, { ...angled, points: [...angled.points].reverse() }] },
      "views[1].points",
      "runs the other way",
    ],
    [
      "unequal traces",
      { views: [straight, { ...angled, points: angled.points.slice(0, 15) }] },
      "views[1].points",
      "trace the same stretch",
    ],
    [
      "a canal across the film",
      { views: [straight, angled].map((view) => ({ ...view, points: view.points.map(([u, v]) => [v, 0.01 * u]) })) },
      "views[0].points",
      "no levels to pair",
    ],
    [
      "detector millimetres without a geometry",
      { views: [straight, angled], units: "detectorMm" },
      "geometry",
      "is missing",
    ],
    [
      "a reference that a film does not show",
      { views: [straight, angled], reference: "cusp" },
      "reference",
      "not among the landmarks of views[0]",
    ],
    [
      "a separation of a landmark from itself",
      {
        views: [straight, angled].map((view) => ({ ...view, landmarks: { a: [0, 1] } })),
        knownSeparation: { landmarks: ["a", "a"], buccolingualMm: 3 },
      },
      "knownSeparation.landmarks",
      "names one landmark twice",
    ],
    [
      "three landmarks in one line",
      { views: [straight, angled].map((view) => ({ ...view, landmarks: spots([0, 0], [1, 3], [2, 6]) })) },
      "views[1].landmarks",
      "lie in one line",
    ],
  ])("%s", (_, input, path, says) => {
    const refusal = refusalOf(input);
    expect(refusal.code).toBe("input.impossible");
    expect(refusal.faults[0]?.path).toBe(path);
    expect(refusal.faults[0]?.says).toContain(says);
  });

  it("fewer than 4 different points", () => {
    const same = { ...angled, points: angled.points.map(() => [1, 2]) };
    expect(refusalOf({ views: [straight, same] })).toMatchObject({
      code: "trace.tooFewPoints",
      faults: [{ path: "views[1].points" }],
    });
  });

  it("an angle that nothing fixes", () => {
    const refusal = refusalOf({ views: [straight, { points: angled.points }] });
    expect(refusal).toMatchObject({ code: "input.notDeterminable", faults: [{ path: "views[1].horizontalAngleDeg" }] });
    expect(refusal.faults[0]?.says).toContain("tubeMovedTo");
  });

  it("an angle that landmarks allow twice", () => {
    // u = 6 cos a + 7 sin a is 7.5 at 10.2 and at 88 degrees less; with r 9.22 and f 49.4: 49.4 -+ 35.6 = 13.8 and 85; both
    // inside 60 degrees only for a larger u: 9 gives 49.4 -+ 12.5 = 36.9 and 61.9; 9.15 gives 42.4 and 56.4.
    const marks = (second: number) => ({ a: [0, 0], b: [second, -1] });
    const refusal = refusalOf({
      views: [
        { ...straight, landmarks: marks(6) },
        { points: angled.points, landmarks: marks(9.15) },
      ],
      knownSeparation: { landmarks: ["a", "b"], buccolingualMm: 7 },
    });
    expect(refusal.code).toBe("input.notDeterminable");
    expect(refusal.faults[0]?.says).toContain("allow");
  });

  it.each([
    [
      "an angle that is no number",
      { views: [{ ...straight, horizontalAngleDeg: Number.NaN }, angled] },
      "views[0].horizontalAngleDeg",
    ],
    [
      "an angle beyond 60 degrees",
      { views: [straight, { ...angled, horizontalAngleDeg: 190 }] },
      "views[1].horizontalAngleDeg",
    ],
    [
      "a vertical angle beyond 60 degrees",
      { views: [straight, { ...angled, verticalAngleDeg: -61 }] },
      "views[1].verticalAngleDeg",
    ],
    [
      "an endless coordinate",
      { views: [straight, { ...angled, points: [...angled.points, [Number.POSITIVE_INFINITY, 3]] }] },
      `views[1].points[${angled.points.length}][0]`,
    ],
    ["a receptor of no kind", { views: [straight, angled], receptor: "film" }, "receptor"],
    ["a noise of 0", { views: [straight, angled], sigmaMm: 0 }, "sigmaMm"],
    ["a negative angle error", { views: [straight, angled], angleSigmaDeg: -1 }, "angleSigmaDeg"],
    [
      "a tube inside the tooth",
      { views: [straight, angled], geometry: { sourceToToothMm: 3, toothToDetectorMm: 5 } },
      "geometry.sourceToToothMm",
    ],
  ])("%s", (_, input, path) => {
    const refusal = refusalOf(input);
    expect(refusal.code).toBe("input.invalid");
    expect(refusal.faults.map((fault) => fault.path)).toContain(path);
  });
});
