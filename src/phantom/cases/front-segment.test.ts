import { describe, expect, it } from "vitest";
import { usualDetector } from "../exposure/detector.ts";
import { exposeFilm } from "../exposure/expose-film.ts";
import { lowerCanineSegment, upperFrontSegment } from "./front-segment.ts";

describe.each([
  ["upper central incisor", upperFrontSegment(11), "up"],
  ["lower canine", lowerCanineSegment(33), "down"],
] as const)("the segment of the %s", (_, jaw, apexIs) => {
  it("makes a film on which the root is brighter than the bone beside it, and air is black", () => {
    const { columns, samples, projection } = exposeFilm(jaw, {
      geometry: {
        sourceToToothMm: 300,
        toothToDetectorMm: 9,
        horizontalAngleDeg: 0,
        verticalAngleDeg: 0,
        receptor: "turnsWithBeam",
        aim: { x: 0, z: 3.5 },
        rightIs: "distal",
        apexIs,
        columns: 100,
        rows: 150,
        spacingMm: 0.24,
      },
      detector: { ...usualDetector, quantaPerPixel: 1e6 },
      voxelMm: { x: 0.3, y: 0.5, z: 0.3 },
      seed: 1,
    });
    const at = (x: number, z: number): number => {
      const { column, row } = projection.toFilm({ x, y: 0, z });
      return samples[Math.round(row) * columns + Math.round(column)] ?? -1;
    };
    expect(at(1.4, 4)).toBeGreaterThan(at(4.1, 6) + 150);
    expect(at(0, -12)).toBeLessThan(100);
  });
});
