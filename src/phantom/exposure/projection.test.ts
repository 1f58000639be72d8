import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toothPoint } from "../tooth-point.ts";
import { type FilmGeometry, magnificationOf, projectionOf } from "./projection.ts";

const usual: FilmGeometry = {
  sourceToToothMm: 288,
  toothToDetectorMm: 12,
  horizontalAngleDeg: 0,
  verticalAngleDeg: 0,
  receptor: "turnsWithBeam",
  aim: { x: 0, z: 0 },
  rightIs: "distal",
  apexIs: "down",
  columns: 1001,
  rows: 801,
  spacingMm: 0.04,
};
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const coordinate = fc.double({ min: -12, max: 12, noNaN: true });
const angle = fc.double({ min: -40, max: 40, noNaN: true });

describe("projectionOf", () => {
  it("follows u = (D + d)(x cos a + y sin a) / (D - w) with w = -x sin a + y cos a, receptor turning with the beam", () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, angle, (x, y, z, degrees) => {
        const { sourceToToothMm: D, toothToDetectorMm: d } = usual;
        const a = radians(degrees);
        const w = -x * Math.sin(a) + y * Math.cos(a);
        const { u, v } = projectionOf({ ...usual, horizontalAngleDeg: degrees }).toDetectorMm(toothPoint(x, y, z));
        expect(u).toBeCloseTo(((D + d) * (x * Math.cos(a) + y * Math.sin(a))) / (D - w), 9);
        expect(v).toBeCloseTo(((D + d) * z) / (D - w), 9);
      }),
    );
  });
  it("nears u = x + (y + d) tan a for a fixed receptor and a far tube", () => {
    const far = projectionOf({ ...usual, sourceToToothMm: 1e7, horizontalAngleDeg: 25, receptor: "fixed" });
    const { u, v } = far.toDetectorMm(toothPoint(1.5, 3, 7));
    // Parallel rays; at 1e7 mm the rest is below 1e-4 mm.
    expect(u).toBeCloseTo(1.5 + (3 + 12) * Math.tan(radians(25)), 3);
    expect(v).toBeCloseTo(7, 3);
  });
  it("turns (2, 1.5) by 20 degrees to 2.39241546 with parallel rays (x cos + y sin)", () => {
    const far = projectionOf({ ...usual, sourceToToothMm: 1e8, horizontalAngleDeg: 20 });
    expect(far.toDetectorMm(toothPoint(2, 1.5, 0)).u).toBeCloseTo(2.39241546, 5);
  });
  it("shifts a place 12 mm behind the axis by 1.25 mm when the tube moves 30 mm (D = B z / (SID - z))", () => {
    // SID 300 mm with the receptor 12 mm nearer than the place's image plane: B z / (SID - z) = 30 * 12 / 288.
    const shift = (30 * 12) / 288;
    const straight = projectionOf({ ...usual, receptor: "fixed" });
    const moved = projectionOf({
      ...usual,
      sourceToToothMm: Math.hypot(288, 30),
      horizontalAngleDeg: (Math.atan2(30, 288) * 180) / Math.PI,
      receptor: "fixed",
    });
    const place = toothPoint(0, 0, 0);
    expect(moved.toDetectorMm(place).u - straight.toDetectorMm(place).u).toBeCloseTo(shift, 9);
    expect(shift).toBe(1.25);
  });
  it("moves what lies lingually with the tube, and what lies buccally against it", () => {
    const straight = projectionOf(usual);
    const mesial = projectionOf({ ...usual, horizontalAngleDeg: 20 });
    const movedBy = (y: number): number =>
      mesial.toDetectorMm(toothPoint(0, y, 0)).u - straight.toDetectorMm(toothPoint(0, y, 0)).u;
    expect(movedBy(-4)).toBeLessThan(-1);
    expect(movedBy(4)).toBeGreaterThan(1);
  });
  it("moves what lies lingually towards the apex when the tube moves there", () => {
    const high = projectionOf({ ...usual, verticalAngleDeg: 15 });
    expect(high.toDetectorMm(toothPoint(0, -4, 0)).v).toBeGreaterThan(0.9);
    expect(high.toDetectorMm(toothPoint(0, 4, 0)).v).toBeLessThan(-0.9);
  });
  it("puts pixels where it reads them: every pixel's centre falls on itself", () => {
    fc.assert(
      fc.property(
        fc.record({
          horizontalAngleDeg: angle,
          verticalAngleDeg: fc.double({ min: -20, max: 20, noNaN: true }),
          receptor: fc.constantFrom("turnsWithBeam" as const, "fixed" as const),
          rightIs: fc.constantFrom("distal" as const, "mesial" as const),
          apexIs: fc.constantFrom("up" as const, "down" as const),
        }),
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 0, max: 800 }),
        (part, column, row) => {
          const projection = projectionOf({ ...usual, ...part, aim: { x: 1, z: 5 } });
          const back = projection.toFilm(projection.onDetector(column, row));
          expect(back.column).toBeCloseTo(column, 6);
          expect(back.row).toBeCloseTo(row, 6);
        },
      ),
    );
  });
  it("turns left and right, up and down with the way the film is held", () => {
    const place = toothPoint(2, 0, 3);
    const right = projectionOf(usual).toFilm(place);
    const left = projectionOf({ ...usual, rightIs: "mesial" }).toFilm(place);
    const up = projectionOf({ ...usual, apexIs: "up" }).toFilm(place);
    expect(right.column - 500).toBeCloseTo(500 - left.column, 9);
    expect(right.row - 400).toBeCloseTo(400 - up.row, 9);
    expect(right.column).toBeGreaterThan(500);
    expect(right.row).toBeGreaterThan(400);
  });
});

describe("magnificationOf", () => {
  it("is source to receptor over source to tooth: 300 / 290 = 1.034483", () => {
    expect(magnificationOf({ ...usual, sourceToToothMm: 290, toothToDetectorMm: 10 })).toBeCloseTo(1.034483, 6);
  });
});
