import { describe, expect, it } from "vitest";
import { deg } from "../units.ts";
import { lengthRatioOfBeam, magnificationOf, sphereShadowMm } from "./projection.ts";

describe("magnificationOf", () => {
  // Similar triangles H / (H - d), worked by hand.
  it.each([
    [380, 20, 400 / 380],
    [190, 10, 1.0526315789],
    [175, 25, 1.1428571429],
    [290, 10, 1.0344827586],
    [300, 0, 1],
  ])("with %d mm to the tooth and %d mm on", (sourceToToothMm, toothToDetectorMm, ratio) => {
    expect(magnificationOf({ sourceToToothMm, toothToDetectorMm })).toBeCloseTo(ratio, 9);
  });
});

describe("sphereShadowMm", () => {
  it("is the tangent rays' shadow: 4.13832471 mm half across on a detector at 300, centre at 290, radius 4", () => {
    // 300 * 4 / sqrt(290^2 - 4^2), worked outside; the magnified radius would be 4.13793103.
    const onDetector = (sphereShadowMm(8, 290) / 2) * (300 / 290);
    expect(onDetector).toBeCloseTo(4.13832471, 8);
    expect(onDetector).toBeGreaterThan(4.13793104);
  });

  it("is the diameter itself for a source far away", () => {
    expect(sphereShadowMm(5, 1e9)).toBeCloseTo(5, 12);
  });
});

describe("lengthRatioOfBeam", () => {
  // sin(90 - d/2 - e) / sin(90 - d/2 + e), worked outside for a detector d off the tooth and a beam e off.
  it.each([
    [30, 0, 1],
    [30, 10, 0.9097697355],
    [30, -10, 1.0991792329],
    [40, 5, 0.938278864],
    [0, 15, 1],
  ])("with the detector %d degrees off and the beam %d", (toothToDetector, beamError, ratio) => {
    expect(lengthRatioOfBeam(deg(toothToDetector), deg(beamError))).toBeCloseTo(ratio, 9);
  });

  it("is the cosine of the detector's angle for a beam square on the detector", () => {
    expect(lengthRatioOfBeam(deg(30), deg(15))).toBeCloseTo(Math.cos(Math.PI / 6), 12);
  });
});
