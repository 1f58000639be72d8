import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { type BentCanal, lengthOf, placesOf, shown, viewsOf } from "./two-view/bent-canal-for-tests.ts";
import { twoViewTopic } from "./two-view-topic.ts";

type Pair = [number, number];
type Triple = readonly [number, number, number];
const read = (input: object) => answer(twoViewTopic, input);
const canal: BentCanal = { l1: 8, radius: 6, turnDeg: 35, l2: 2, planeDeg: 60 };
const other: BentCanal = { ...canal, l1: 9.6, planeDeg: 20 };

describe("films that hardly show the same canal (C17)", () => {
  it("ends at other heights than one place can have are named, with by how much", () => {
    const views = [
      { horizontalAngleDeg: 0, points: shown(placesOf(canal), 0) },
      { horizontalAngleDeg: 25, points: shown(placesOf(other), 25) },
    ];
    const { cautions } = read({ views, sigmaMm: 0.05 });
    expect(cautions.join()).toContain("The traces end 1.6 mm apart in height");
    expect(read({ views, sigmaMm: 0.05, scaleRelativeSigma: 0.05 }).cautions.join()).not.toContain("apart in height");
  });

  it("a course that runs across the jaw is named, with its side", () => {
    const points = shown(placesOf(canal), 0);
    const leaning = points.map(([u, v]): Pair => [u + 0.55 * v, v]);
    const views = [
      { horizontalAngleDeg: 0, points },
      { horizontalAngleDeg: 25, points: leaning },
    ];
    expect(read({ views, sigmaMm: 0.05 }).cautions.join()).toMatch(
      /would lean \d\d degrees to buccal, more than roots do/,
    );
  });

  it("films of one canal are not, under vertical angles and a near tube too", () => {
    const said = (input: object) => read(input).cautions.join();
    expect(said({ views: viewsOf(placesOf(canal), [0, 25]), sigmaMm: 0.05 })).not.toMatch(/apart in height|would lean/);
    const places = placesOf(canal).map(({ x, y, z }): Triple => [x, y, z]);
    const views = [thrown(places, 0, 8), thrown(places, 25, -6)];
    expect(said({ ...near, views, sigmaMm: 0.05 })).not.toMatch(/apart in height|would lean/);
  });
});

const near = {
  units: "detectorMm",
  geometry: { sourceToToothMm: 220, toothToDetectorMm: 10 },
  receptor: "turnsWithBeam",
} as const;

/**
 * What a tube 220 mm from the axis throws on a detector 10 mm behind it that turns with the beam: the ray from the tube through
 * a place, cut with the detector's plane; u and v are counted there from where the central ray, at the height of 6 mm, falls.
 */
function thrown(places: readonly Triple[], horizontalAngleDeg: number, verticalAngleDeg = 0) {
  const [a, b] = [(horizontalAngleDeg * Math.PI) / 180, (verticalAngleDeg * Math.PI) / 180];
  const toTube: Triple = [-Math.sin(a) * Math.cos(b), Math.cos(a) * Math.cos(b), Math.sin(b)];
  const across: Triple = [Math.cos(a), Math.sin(a), 0];
  const down: Triple = [Math.sin(a) * Math.sin(b), -Math.cos(a) * Math.sin(b), Math.cos(b)];
  const dot = (p: Triple, q: Triple) => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
  const tube: Triple = [220 * toTube[0], 220 * toTube[1], 220 * toTube[2] + 6];
  const points = places.map((place): Pair => {
    const ray: Triple = [place[0] - tube[0], place[1] - tube[1], place[2] - tube[2]];
    const reach = 230 / -dot(ray, toTube);
    return [reach * dot(ray, across), reach * dot(ray, down)];
  });
  return { horizontalAngleDeg, verticalAngleDeg, points };
}

describe("three films of a near tube in millimetres of the detector (C4)", () => {
  it("give the canal back", () => {
    const places = placesOf(canal).map(({ x, y, z }): Triple => [x, y, z]);
    const views = [thrown(places, 0), thrown(places, 20, 5), thrown(places, -25)];
    const found = read({ ...near, views, sigmaMm: 0.01, angleSigmaDeg: 0.2 });
    expect(Math.abs((found.lengthMm ?? 0) - lengthOf(canal))).toBeLessThan(0.03);
    expect(Math.abs((found.curvature?.pruettDeg ?? 0) - canal.turnDeg)).toBeLessThan(1);
    expect(Math.abs((found.plane?.angleToFilmDeg ?? 0) - canal.planeDeg)).toBeLessThan(2);
    expect(found.side).toBe("buccal");
    // In the detector's millimetres everything is 230 / 220 times as large: read as the tooth's, lengths are.
    const asTooth = read({ ...near, units: "toothPlaneMm", views, sigmaMm: 0.01, angleSigmaDeg: 0.2 });
    expect((asTooth.lengthMm ?? 0) / (found.lengthMm ?? 1)).toBeCloseTo(230 / 220, 2);
  });

  it("refuse without the detector's distance", () => {
    const views = [0, 20, -25].map((angle) => ({ horizontalAngleDeg: angle, points: shown(placesOf(canal), angle) }));
    expect(() => read({ units: "detectorMm", geometry: { sourceToToothMm: 220 }, views })).toThrow(
      expect.objectContaining({ faults: [expect.objectContaining({ path: "geometry.toothToDetectorMm" })] }),
    );
  });
});
