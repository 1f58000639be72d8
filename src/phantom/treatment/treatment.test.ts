import { describe, expect, it } from "vitest";
import { canalRadiusMm } from "../anatomy/canal.ts";
import { toothOf } from "../anatomy/tooth.ts";
import { placeAt } from "../course.ts";
import type { Ball } from "../exposure/ball-chain.ts";
import { immatureLowerSecondPremolar } from "../teeth/premolar.ts";
import { upperFirstMolar } from "../teeth/upper-molar.ts";
import { distanceMm } from "../tooth-point.ts";
import { accessCavity, crownFilling, decayAt } from "./coronal-filling.ts";
import { fragmentIn, instrumentIn } from "./instrument.ts";
import { postIn } from "./post.ts";
import { rootFillingStrand } from "./root-filling.ts";
import { shapedRadiusMm } from "./shaping.ts";
import { wideCanalFilling } from "./wide-canal-filling.ts";

const tooth = toothOf(upperFirstMolar);
const palatal = tooth.canals.find(({ name }) => name === "P");
if (palatal === undefined) throw new Error("no palatal canal");
const length = palatal.course.lengthMm;
const ends = (balls: readonly Ball[]): [Ball, Ball] => {
  const [first, last] = [balls[0], balls[balls.length - 1]];
  if (first === undefined || last === undefined) throw new Error("no balls");
  return [first, last];
};

describe("shapedRadiusMm", () => {
  const shaping = { sizeMm: 0.4, taper: 0.06, endMm: length - 0.5 };
  it("is the last instrument's: size 40 taper .06 is 0.2 mm at its end and 0.32 mm 4 mm before", () => {
    expect(shapedRadiusMm(palatal, shaping, length - 0.5).mesiodistal).toBeCloseTo(0.2, 6);
    expect(shapedRadiusMm(palatal, shaping, length - 4.5).mesiodistal).toBeCloseTo(0.32, 6);
  });
  it("leaves the canal as it was beyond the end, without shaping, and where it was wider", () => {
    expect(shapedRadiusMm(palatal, shaping, length - 0.1)).toEqual(canalRadiusMm(palatal, length - 0.1));
    expect(shapedRadiusMm(palatal, undefined, 3)).toEqual(canalRadiusMm(palatal, 3));
    expect(shapedRadiusMm(palatal, { ...shaping, sizeMm: 0.06, taper: 0 }, 2)).toEqual(canalRadiusMm(palatal, 2));
  });
});

describe("rootFillingStrand", () => {
  const filling = { fromMm: 0.5, toMm: length - 1, seed: 1 };
  it("reaches from its stated start to its stated end", () => {
    const { chain, material } = rootFillingStrand(palatal, undefined, filling);
    const [first, last] = ends(chain.balls);
    expect(material).toBe("guttaPercha");
    expect(distanceMm(first.middle, placeAt(palatal.course, 0.5))).toBeLessThan(0.05);
    expect(distanceMm(last.middle, placeAt(palatal.course, length - 1))).toBeLessThan(0.05);
  });
  it("is thin in a void and whole beside it", () => {
    const { chain } = rootFillingStrand(palatal, undefined, { ...filling, voids: [{ atMm: 6, lengthMm: 1 }] });
    const at = (mm: number): number => chain.balls[Math.round((mm - 0.5) / 0.04)]?.rx ?? 0;
    expect(at(6)).toBeLessThan(at(7) * 0.5);
    expect(at(5)).toBeGreaterThan(at(6) * 2);
  });
  it("stays inside the canal", () => {
    const { chain } = rootFillingStrand(palatal, undefined, { ...filling, fit: 0.7 });
    chain.balls.forEach((ball, i) => {
      expect(ball.rx).toBeLessThanOrEqual(canalRadiusMm(palatal, 0.5 + i * 0.04).mesiodistal * 1.01);
    });
  });
  it("is half as wide beside a fragment", () => {
    const past = rootFillingStrand(palatal, undefined, { ...filling, beside: { fromMm: 5, toMm: 7 } });
    const at = (mm: number): number => past.chain.balls[Math.round((mm - 0.5) / 0.04)]?.rx ?? 0;
    expect(at(6) / at(8)).toBeLessThan(0.7);
  });
});

describe("instrumentIn", () => {
  const file = { sizeMm: 0.2, taper: 0.02, cuttingMm: 16, alloy: "steel" } as const;
  const placed = instrumentIn(palatal, file, { tipAtMm: length - 0.5, stopMm: 20 });
  it("has its tip where it was put, and its stop 20 mm back along it", () => {
    expect(distanceMm(placed.tip, placeAt(palatal.course, length - 0.5))).toBeLessThan(0.01);
    expect(placed.lengthMm).toBe(20);
    // The straight distance is shorter than the length along a curved instrument, by less than 1 mm here.
    const straight = distanceMm(placed.tip, placed.stop);
    expect(straight).toBeLessThan(20);
    expect(straight).toBeGreaterThan(19);
  });
  it("is no wider than its taper says: 0.52 mm in all at 16 mm", () => {
    for (const { chain, material } of placed.strands.filter((strand) => strand.material === "steel")) {
      expect(material).toBe("steel");
      for (const ball of chain.balls) expect(ball.rx * 2).toBeLessThanOrEqual(0.5201);
    }
  });
  it("takes the place of soft tissue inside the canal only", () => {
    expect(placed.strands.map(({ replaces }) => replaces)).toEqual(["soft", "nothing", "nothing"]);
  });
});

describe("fragmentIn", () => {
  it("is as long as stated", () => {
    const strand = fragmentIn(
      palatal,
      { sizeMm: 0.25, taper: 0.06, cuttingMm: 16, alloy: "nickelTitanium" },
      { tipAtMm: length - 1, lengthMm: 3 },
    );
    const heights = strand.chain.balls.map((ball) => ball.middle);
    const [first, last] = [heights[0], heights[heights.length - 1]];
    if (first === undefined || last === undefined) throw new Error("no fragment");
    expect(distanceMm(first, last)).toBeGreaterThan(2.7);
    expect(distanceMm(first, last)).toBeLessThan(3.3);
  });
});

describe("fillings of the crown", () => {
  it("stay inside the crown's outline", () => {
    const { solid } = crownFilling(tooth, [{ from: [-6, -2, -9], to: [6, 2, -4] }], "amalgam");
    for (let x = -6; x <= 6; x += 0.5)
      for (let z = -9; z <= -3; z += 0.5) if (solid(x, 0, z) < -0.1) expect(tooth.outside(x, 0, z)).toBeLessThan(0.2);
  });
  it("take in the whole chamber only where the cut reaches it", () => {
    const deep = accessCavity(tooth, { from: [-2, -2, -9], to: [2, 2, 0.5] }, "air");
    const shallow = accessCavity(tooth, { from: [-2, -2, -9], to: [2, 2, -3.5] }, "temporaryFilling");
    expect(deep.solid(0, 0, 0.6)).toBeLessThan(0);
    expect(shallow.solid(0, 0, 0.6)).toBeGreaterThan(0);
    expect(shallow.solid(0, 0, -5)).toBeLessThan(0);
  });
  it("make decay uneven around its radius", () => {
    const { solid } = decayAt({ x: 4, y: 0, z: -4 }, 1.5, 3);
    expect(solid(4, 0, -4)).toBeLessThan(-0.8);
    expect(solid(4, 2.6, -4)).toBeGreaterThan(0);
  });
});

describe("wideCanalFilling", () => {
  const canal = toothOf(immatureLowerSecondPremolar).canals[0];
  if (canal === undefined) throw new Error("no canal");
  it("fills the canal between its heights and nothing outside", () => {
    const { solid } = wideCanalFilling(canal, { fromZ: 6, toZ: 10, seed: 2 }, "bioceramicCement");
    expect(solid(0, 0.15, 8)).toBeLessThan(0);
    expect(solid(0, 0.15, 4)).toBeGreaterThan(0);
    expect(solid(0, 0.15, 11)).toBeGreaterThan(0);
    expect(solid(1.6, 0.15, 8)).toBeGreaterThan(0);
  });
});

describe("postIn", () => {
  it("runs straight from above the orifice to its depth", () => {
    const { chain } = postIn(palatal, { diameterMm: 1.2, aboveMm: 3, depthMm: 8 }, "glassFibrePost");
    const [first, last] = ends(chain.balls);
    expect(first.rx).toBeCloseTo(0.6, 9);
    expect(distanceMm(last.middle, placeAt(palatal.course, 8))).toBeLessThan(1e-6);
    expect(first.middle.z).toBeLessThan(placeAt(palatal.course, 0).z - 2.5);
  });
});
