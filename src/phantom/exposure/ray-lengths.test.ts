import { describe, expect, it } from "vitest";
import { coverage, roundedBox, type Solid } from "../solid.ts";
import { boxAround, toothPoint } from "../tooth-point.ts";
import { type Ball, chainShadow } from "./ball-chain.ts";
import { attenuationPerMm, beamParts, transmission } from "./material.ts";
import { type FilmGeometry, projectionOf } from "./projection.ts";
import { addRaySums, raysOfRow } from "./ray-sum.ts";
import { emptyField, fullVoxel, gridOver, type VoxelField } from "./voxel-field.ts";

const geometry: FilmGeometry = {
  sourceToToothMm: 290,
  toothToDetectorMm: 10,
  horizontalAngleDeg: 0,
  verticalAngleDeg: 0,
  receptor: "turnsWithBeam",
  aim: { x: 0, z: 0 },
  rightIs: "distal",
  apexIs: "down",
  columns: 301,
  rows: 101,
  spacingMm: 0.04,
};
const middleRow = 50;
const middleColumn = 150;

function fieldOf(solid: Solid, reach: number, step = 0.08): VoxelField {
  const grid = gridOver(boxAround(toothPoint(0, 0, 0), toothPoint(reach, reach, reach)), { x: step, y: step, z: step });
  const field = emptyField(grid);
  let at = 0;
  for (let j = 0; j < grid.count.y; j++)
    for (let k = 0; k < grid.count.z; k++)
      for (let i = 0; i < grid.count.x; i++, at++) {
        const distance = solid(grid.from.x + i * step, grid.from.y + j * step, grid.from.z + k * step);
        field.filled[at] = Math.round(coverage(distance, step) * fullVoxel);
      }
  return field;
}

const rowOf = (field: VoxelField, shape: FilmGeometry): Float32Array => {
  const sums = new Float32Array(shape.columns);
  addRaySums(field, raysOfRow(projectionOf(shape), middleRow), sums);
  return sums;
};

describe("addRaySums", () => {
  it("gives a sphere's diameter on the central ray, to 0.5 %", () => {
    const sums = rowOf(
      fieldOf((x, y, z) => Math.hypot(x, y, z) - 4, 4.4),
      geometry,
    );
    expect(Math.abs((sums[middleColumn] ?? 0) / 8 - 1)).toBeLessThan(0.005);
  });
  it("gives every chord 2 sqrt(r^2 - p^2) of a sphere, p the ray's distance from its middle, to 0.5 % of the diameter", () => {
    const sums = rowOf(
      fieldOf((x, y, z) => Math.hypot(x, y, z) - 4, 4.4),
      geometry,
    );
    for (const column of [70, 100, 130, 180, 220]) {
      const u = (column - middleColumn) * 0.04;
      const p = (290 * Math.abs(u)) / Math.hypot(u, 300);
      expect(Math.abs((sums[column] ?? 0) - 2 * Math.sqrt(16 - p * p))).toBeLessThan(0.04);
    }
  });
  it("gives a slab's thickness over the cosine at any horizontal angle, to 0.5 %", () => {
    const slab = fieldOf(roundedBox([-9, -1, -2], [9, 1, 2], 0.01), 9.4, 0.1);
    for (const degrees of [0, 15, -25]) {
      const sums = rowOf(slab, { ...geometry, horizontalAngleDeg: degrees });
      const expected = 2 / Math.cos((degrees * Math.PI) / 180);
      expect(Math.abs((sums[middleColumn] ?? 0) / expected - 1)).toBeLessThan(0.005);
    }
  });
  it("casts half a shadow of SID R / sqrt(SOD^2 - R^2) for a cylinder: 4.13832 mm for 300, 290, 4", () => {
    const sums = rowOf(
      fieldOf((x, y) => Math.hypot(x, y) - 4, 4.4),
      geometry,
    );
    const last = sums.findLastIndex((sum) => sum > 0.2);
    // The chord falls to 0 like a root at the edge; 0.2 mm of chord are left 0.0012 mm before it. One pixel is 0.04 mm.
    expect(Math.abs((last - middleColumn) * 0.04 - 4.13832471)).toBeLessThan(0.06);
  });
});

describe("chainShadow", () => {
  const rod = (radius: number, length: number): Ball[] =>
    Array.from({ length: Math.round(length / 0.04) + 1 }, (_, i) => ({
      middle: toothPoint(0, 0, i * 0.04 - length / 2),
      rx: radius,
      ry: radius,
      rz: radius,
    }));
  it("gives a thin rod's chord 2 sqrt(r^2 - p^2), to 0.5 % of its diameter", () => {
    const shadow = chainShadow({ balls: rod(0.3, 3) }, projectionOf(geometry));
    if (shadow === undefined) throw new Error("the rod misses the film");
    for (const column of [146, 148, 150, 152, 155]) {
      const u = (column - middleColumn) * 0.04;
      const p = (290 * Math.abs(u)) / Math.hypot(u, 300);
      const found = shadow.lengthMm[(middleRow - shadow.top) * shadow.columns + column - shadow.left] ?? 0;
      expect(Math.abs(found - 2 * Math.sqrt(0.09 - p * p))).toBeLessThan(0.003);
    }
  });
  it("counts overlapping balls once and separate ones twice", () => {
    const at = (y: number): Ball => ({ middle: toothPoint(0, y, 0), rx: 1, ry: 1, rz: 1 });
    const central = (balls: Ball[]): number => {
      const shadow = chainShadow({ balls }, projectionOf(geometry));
      if (shadow === undefined) throw new Error("the balls miss the film");
      return shadow.lengthMm[(middleRow - shadow.top) * shadow.columns + middleColumn - shadow.left] ?? 0;
    };
    expect(central([at(0), at(0.5)])).toBeCloseTo(2.5, 4);
    expect(central([at(-3), at(3)])).toBeCloseTo(4, 4);
  });
  it("stretches a ball's chord with its axis along the ray", () => {
    const shadow = chainShadow(
      { balls: [{ middle: toothPoint(0, 0, 0), rx: 0.5, ry: 2, rz: 0.5 }] },
      projectionOf(geometry),
    );
    expect(Math.max(...(shadow?.lengthMm ?? []))).toBeCloseTo(4, 3);
  });
  it("gives nothing for a chain beside the film, and for one without balls", () => {
    const away = { middle: toothPoint(60, 0, 0), rx: 1, ry: 1, rz: 1 };
    expect(chainShadow({ balls: [away] }, projectionOf(geometry))).toBeUndefined();
    expect(chainShadow({ balls: [] }, projectionOf(geometry))).toBeUndefined();
  });
});

describe("transmission", () => {
  it("lets everything through where nothing is", () => {
    expect(transmission({ soft: new Float32Array([0]) }, 1)[0]).toBeCloseTo(1, 6);
  });
  it("follows exp(-sum mu t) for each energy", () => {
    const expected = beamParts.reduce(
      (sum, part, i) =>
        sum + part * Math.exp(-7 * (attenuationPerMm.soft[i] ?? 0) - 2 * (attenuationPerMm.mineral[i] ?? 0)),
      0,
    );
    const found = transmission({ soft: new Float32Array([7]), mineral: new Float32Array([2]) }, 1)[0];
    expect(found).toBeCloseTo(expected, 5);
  });
  it("hardens: the second half of a path takes away less than the first", () => {
    const [half = 0, whole = 0] = transmission({ mineral: new Float32Array([2, 4]) }, 2);
    expect(whole).toBeGreaterThan(half * half * 1.02);
  });
  it("keeps the tables of attenuation: hydroxyapatite at 3.16 g/cm3 and 40 keV is 0.9876 cm2/g (xraylib 4.0.0)", () => {
    expect(attenuationPerMm.mineral[1]).toBeCloseTo((0.9876 * 3.16) / 10, 4);
    expect(attenuationPerMm.soft[1]).toBeCloseTo((0.2683 * 1.05) / 10, 4);
  });
});
