import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { curvatureTopic } from "./curvature-topic.ts";
import { refusalOf } from "./drawn-measures/bent-course-for-tests.ts";

/** Straight 200 px, then 60 degrees round 100 px: with 0.05 mm a pixel 10 mm and a radius of 5 mm; pixels so high as is said. */
const canal = (aspect = 1): [number, number][] => {
  const straight = Array.from({ length: 51 }, (_, index): [number, number] => [300, 100 + index * 4]);
  const arc = Array.from({ length: 26 }, (_, index): [number, number] => {
    const turn = ((index + 1) / 26) * (Math.PI / 3);
    return [300 + 100 * (1 - Math.cos(turn)), 300 + 100 * Math.sin(turn)];
  });
  return [...straight, ...arc].map(([u, v]) => [u, v / aspect]);
};
const inPx = (input: object) => answer(curvatureTopic, { points: canal(), unit: "px", ...input });

describe("the angles of a course in px (C20)", () => {
  // Closed forms: Schneider is half the turn of a pure arc; tan a = 2.5 / (10 + 4.330).
  it("are those of its shape, whatever its size", () => {
    for (const size of [1, 3.7]) {
      const found = inPx({ points: canal().map(([u, v]) => [u * size, v * size]) });
      expect(found.pruettDeg).toBeCloseTo(60, 1);
      expect(found.schneiderDeg).toBeCloseTo(30, 1);
      expect(found.accessAngleDeg).toBeCloseTo(9.896, 1);
      expect(found.totalTurnDeg).toBeCloseTo(60, 1);
    }
  });

  it("are the same as in mm, with the same noise", () => {
    const points = canal();
    const px = inPx({ sigmaPx: 1 });
    const mm = answer(curvatureTopic, { points: points.map(([u, v]) => [u * 0.05, v * 0.05]), sigmaMm: 0.05 });
    expect(px.pruettDeg).toBeCloseTo(mm.pruettDeg, 1);
    expect(px.intervals.pruettDeg?.high).toBeCloseTo(mm.intervals.pruettDeg?.high ?? 0, 0);
    expect(px.bends).toMatchObject([{ side: "right", fromShare: expect.closeTo(200 / 304.7, 2) }]);
  });

  it("need the shape of a pixel: as it is stated, or square with a caution", () => {
    const high = inPx({ points: canal(1.25), pixelAspect: 1.25 });
    expect(high.pruettDeg).toBeCloseTo(60, 1);
    expect(high.cautions.join()).not.toContain("square");
    expect(inPx({ points: canal(1.25) }).pruettDeg).not.toBeCloseTo(60, 0);
    expect(inPx({}).cautions.join()).toContain("Pixels are taken as square");
  });

  it("come without any length, each named with its reason", () => {
    const found = inPx({});
    const absent = ["lengthMm", "weineDeg", "pruettRadiusMm", "minRadiusMm", "heightMm", "profile"];
    for (const name of absent) {
      expect(found).not.toHaveProperty(name);
      expect(found.notComputed).toContainEqual({ name, why: "the film has no scale: angles alone can be told" });
    }
    expect(Object.keys(found.intervals).every((name) => name.endsWith("Deg"))).toBe(true);
    expect(JSON.stringify(found)).not.toMatch(/"\w*(Mm|PerMm)":/);
  });

  it("have their class by angle and none by radius", () => {
    expect(inPx({}).severity).toMatchObject([{ source: "schneider-1971", class: "severe" }]);
  });

  it("are built in the film's own pixels, also where these are not square", () => {
    for (const aspect of [1, 1.25]) {
      const made = inPx({ points: canal(aspect), pixelAspect: aspect }).construction;
      expect(made?.departure[0]).toBeCloseTo(300, 0);
      expect(made?.departure[1]).toBeCloseTo(300 / aspect, 0);
      expect(made?.pruett?.centre[0]).toBeCloseTo(400, 0);
      expect(made?.pruett?.radius).toBeCloseTo(100, 0);
      expect(made).not.toHaveProperty("weine");
    }
  });

  it("are told of a course that no family fits, its distance said in px", () => {
    // A spiral turning ever tighter: no arc and no ramp.
    const points = Array.from({ length: 80 }, (_, index): [number, number] => {
      const turn = index / 12;
      return [300 + (140 - index) * Math.cos(turn), 300 + (140 - index) * Math.sin(turn)];
    });
    expect(inPx({ points }).cautions.join()).toMatch(/\d px off/);
  });

  it.each([
    [{ unit: "px", sigmaMm: 0.05 }, "sigmaMm"],
    [{ unit: "px", weineLengthMm: 2 }, "weineLengthMm"],
    [{ unit: "px", points: [...canal(), [1, 2, 3]] }, `points[${canal().length}]`],
    [{ sigmaPx: 1 }, "sigmaPx"],
    [{ unit: "mm", pixelAspect: 1 }, "pixelAspect"],
  ])("refuses %j beside each other", (input, path) => {
    expect(refusalOf(curvatureTopic, { points: canal(), ...input })).toMatchObject({
      code: "input.impossible",
      faults: [{ path }],
    });
  });

  it("refuses a pixel of no shape, and too few points", () => {
    expect(refusalOf(curvatureTopic, { points: canal(), unit: "px", pixelAspect: 0 }).code).toBe("input.invalid");
    expect(refusalOf(curvatureTopic, { points: canal().slice(0, 3), unit: "px" }).code).toBe("trace.tooFewPoints");
  });
});
