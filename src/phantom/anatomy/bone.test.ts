import { describe, expect, it } from "vitest";
import { gridOver } from "../exposure/voxel-field.ts";
import { upperFirstMolar } from "../teeth/upper-molar.ts";
import { toothPoint } from "../tooth-point.ts";
import { alveolarBoneOf, type BoneShape } from "./alveolar-bone.ts";
import { mandibularCanal, sinusOver } from "./hollow.ts";
import { boneLeft } from "./lesion.ts";
import { laminaPart, ligamentPart, socket } from "./ligament.ts";
import { placedTooth } from "./placed-tooth.ts";
import { type TrabecularNet, trabeculaeIn } from "./trabeculae.ts";

const shape: BoneShape = {
  buccal: [
    [0, 6],
    [20, 6],
  ],
  lingual: [
    [0, -6],
    [20, -6],
  ],
  crest: [
    [-20, 2],
    [20, 2],
  ],
  plateMm: [
    [0, 0.5],
    [8, 1],
    [20, 1],
  ],
  crestLayerMm: 0.3,
};

describe("alveolarBoneOf", () => {
  const bone = alveolarBoneOf(shape, [placedTooth(upperFirstMolar, toothPoint(0, 0, 0))]);
  it("lies between its plates and under its crest", () => {
    expect(bone.bone(9, 0, 8)).toBeLessThan(-4);
    expect(bone.bone(9, 6.5, 8)).toBeCloseTo(0.5, 6);
    expect(bone.bone(9, -6.5, 8)).toBeCloseTo(0.5, 6);
    // The crest is uneven by up to 0.35 mm.
    expect(Math.abs(bone.bone(9, 0, 1) - 1)).toBeLessThan(0.36);
  });
  it("has its crest lower over the face of a root than between the teeth", () => {
    expect(bone.bone(0, 5.4, 2.6)).toBeGreaterThan(bone.bone(9, 5.4, 2.6) + 0.5);
  });
  it("is covered by gum that stands higher between the teeth", () => {
    expect(bone.gum(9, 0, 0)).toBeLessThan(0);
    expect(bone.gum(9, 0, -1.5)).toBeLessThan(bone.gum(0, 0, -1.5));
  });
  it("has a thin layer on the crest and thick plates below", () => {
    expect(bone.compactMm(9, 0, 2)).toBeCloseTo(0.3, 6);
    expect(bone.compactMm(9, 0, 12)).toBeCloseTo(1, 6);
  });
});

describe("the socket", () => {
  it("is ligament first and lamina dura after", () => {
    expect(ligamentPart(socket.ligamentMm / 2, 0.08)).toBeCloseTo(1, 6);
    expect(laminaPart(socket.ligamentMm / 2)).toBe(0);
    expect(laminaPart(socket.ligamentMm + socket.laminaMm / 2)).toBeCloseTo(1, 6);
    expect(ligamentPart(socket.ligamentMm + socket.laminaMm / 2, 0.08)).toBe(0);
    expect(laminaPart(1)).toBe(0);
    expect(ligamentPart(-0.2, 0.08)).toBe(0);
  });
});

describe("boneLeft", () => {
  const lesion = { middle: toothPoint(0, 0, 12), radiusMm: 2, softnessMm: 0.8, seed: 4 };
  it("leaves nothing in the middle and everything far away", () => {
    const left = boneLeft([lesion]);
    expect(left(0, 0, 12)).toBe(0);
    expect(left(5, 0, 12)).toBe(1);
  });
  it("leaves more the smaller the lesion has become", () => {
    const sum = (radiusMm: number): number => {
      const left = boneLeft([{ ...lesion, radiusMm }]);
      let total = 0;
      for (let x = -4; x <= 4; x += 0.2) for (let z = 8; z <= 16; z += 0.2) total += left(x, 0, z);
      return total;
    };
    const [old = 0, half = 0, healed = 0] = [2.2, 1.1, 0.2].map(sum);
    expect(half).toBeGreaterThan(old);
    expect(healed).toBeGreaterThan(half);
  });
  it("leaves all bone where there is no lesion", () => expect(boneLeft([])(0, 0, 0)).toBe(1));
});

describe("hollows", () => {
  it("hold the sinus off the roots, over its floor and inside the plates", () => {
    const plates = {
      buccal: [
        [0, 6],
        [30, 6],
      ],
      lingual: [
        [0, -6],
        [30, -6],
      ],
    } as const;
    const sinus = sinusOver(
      [
        [-10, 12],
        [10, 12],
      ],
      plates,
      3,
    );
    expect(sinus.space(0, 0, 15, 9)).toBeLessThan(0);
    expect(sinus.space(0, 0, 9, 9)).toBeGreaterThan(1);
    expect(sinus.space(0, 0, 15, 0.2)).toBeGreaterThan(0);
    expect(sinus.space(0, 5.5, 15, 9)).toBeGreaterThan(0);
  });
  it("run the mandibular canal along the jaw with its radius", () => {
    const canal = mandibularCanal(
      [
        [-10, 18],
        [10, 16],
      ],
      1,
      1.5,
    );
    expect(canal.space(0, 1, 17, 9)).toBeCloseTo(-1.5, 1);
    expect(canal.space(0, 1 + 1.5, 17, 9)).toBeCloseTo(0, 1);
  });
});

describe("trabeculaeIn", () => {
  const net: TrabecularNet = {
    spacingMm: { x: 1.2, y: 1.2, z: 1.2 },
    joins: { x: 0.7, y: 0.7, z: 0.7 },
    radiusMm: 0.08,
    depth: 1,
    seed: 3,
  };
  const grid = gridOver({ from: toothPoint(0, 0, 0), to: toothPoint(8, 8, 8) }, { x: 0.1, y: 0.1, z: 0.1 });
  const partOf = (filled: Uint8Array): number => filled.reduce((sum, value) => sum + value / 255, 0) / filled.length;
  const everywhere = (): boolean => true;
  it("is the same for the same seed", () => {
    expect(trabeculaeIn(grid, [net], everywhere)).toEqual(trabeculaeIn(grid, [net], everywhere));
    expect(trabeculaeIn(grid, [{ ...net, seed: 4 }], everywhere)).not.toEqual(trabeculaeIn(grid, [net], everywhere));
  });
  it("fills 5 to 25 % of the bone, as struts do", () => {
    // Trabecular bone volume of jaws: about 10 to 30 % (common range); thin nets lie at its lower end.
    const part = partOf(trabeculaeIn(grid, [net], everywhere));
    expect(part).toBeGreaterThan(0.05);
    expect(part).toBeLessThan(0.25);
  });
  it("fills more with thicker struts, and more with plates seen on their edge", () => {
    const usual = partOf(trabeculaeIn(grid, [net], everywhere));
    expect(partOf(trabeculaeIn(grid, [{ ...net, radiusMm: 0.12 }], everywhere))).toBeGreaterThan(usual * 1.5);
    expect(partOf(trabeculaeIn(grid, [{ ...net, depth: 4 }], everywhere))).toBeGreaterThan(usual * 1.5);
  });
  it("makes no strut outside the bone", () => {
    expect(partOf(trabeculaeIn(grid, [net], () => false))).toBe(0);
  });
});
