import { describe, expect, it } from "vitest";
import { lowerCanine, upperCentralIncisor } from "../teeth/front-tooth.ts";
import { lowerFirstMolar, lowerFirstMolarWithThirdRoot, lowerSecondMolar } from "../teeth/lower-molar.ts";
import {
  immatureLowerSecondPremolar,
  lowerFirstPremolar,
  lowerSecondPremolar,
  upperFirstPremolar,
  upperSecondPremolar,
} from "../teeth/premolar.ts";
import { upperFirstMolar, upperSecondMolar } from "../teeth/upper-molar.ts";
import { distanceMm, toothPoint } from "../tooth-point.ts";
import { canalRadiusMm, lengthNearest, truePoints } from "./canal.ts";
import { placedTooth } from "./placed-tooth.ts";
import { rootOf } from "./root.ts";
import { toothOf } from "./tooth.ts";

const everyTooth = {
  upperCentralIncisor,
  lowerCanine,
  upperFirstPremolar,
  upperSecondPremolar,
  lowerFirstPremolar,
  lowerSecondPremolar,
  immatureLowerSecondPremolar,
  upperFirstMolar,
  upperSecondMolar,
  lowerFirstMolar,
  lowerFirstMolarWithThirdRoot,
  lowerSecondMolar,
};

describe.each(Object.entries(everyTooth))("%s", (_, shape) => {
  const tooth = toothOf(shape);
  it("keeps every canal inside its dentine from orifice to 1 mm before the foramen", () => {
    for (const canal of tooth.canals)
      for (const [i, { x, y, z }] of truePoints(canal, 0.25).entries()) {
        const along = i * 0.25;
        if (along > canal.course.lengthMm - 1) break;
        const narrow = canal.shape.wide ? 0.3 : canalRadiusMm(canal, along).mesiodistal;
        expect(tooth.dentine(x, y, z)).toBeLessThan(-narrow);
      }
  });
  it("opens every foramen near the root's surface", () => {
    for (const canal of tooth.canals) {
      const end = canal.course.points[canal.course.points.length - 1];
      if (end) expect(Math.abs(tooth.outside(end.x, end.y, end.z))).toBeLessThan(0.8);
    }
  });
  it("has dentine inside its outline everywhere", () => {
    for (let x = -5; x <= 5; x += 0.7)
      for (let y = -5; y <= 5; y += 0.7)
        for (let z = -8; z <= 12; z += 0.7)
          if (tooth.dentine(x, y, z) < -0.3) expect(tooth.outside(x, y, z)).toBeLessThan(0.05);
  });
  it("is enamel on its cusps and bare below its neck", () => {
    const [first] = shape.crown.cusps;
    if (first === undefined) throw new Error("no cusp");
    const underCusp = [first.x, first.y, -first.heightMm + 1] as const;
    expect(tooth.outside(...underCusp)).toBeLessThan(0);
    expect(tooth.dentine(...underCusp)).toBeGreaterThan(0);
  });
});

describe("rootOf", () => {
  const straight = rootOf({
    name: "R",
    axis: [toothPoint(0, 0, 0), toothPoint(0, 0, 12)],
    halfMesiodistal: [
      [0, 1.5],
      [1, 1.5],
    ],
    halfBuccolingual: [
      [0, 1.5],
      [1, 1.5],
    ],
  });
  it("is at its radius from a straight axis, and grows away from it (plane geometry)", () => {
    for (const away of [1.2, 1.5, 1.9]) expect(straight.distance(away, 0, 5)).toBeCloseTo(away - 1.5, 2);
  });
  it("ends at the tip of its axis", () => {
    expect(straight.distance(0, 0, 11.9)).toBeLessThan(0);
    expect(straight.distance(0, 0, 12.1)).toBeGreaterThan(0);
  });
  it("is the same all around a bent axis: distance to a torus", () => {
    // The axis is a quarter of a circle of radius 12 in the plane y = 0 with its middle at (12, 0, 0).
    const bent = rootOf({
      name: "R",
      axis: Array.from({ length: 13 }, (_, i) => {
        const turn = (i * Math.PI) / 24;
        return toothPoint(12 - 12 * Math.cos(turn), 0, 12 * Math.sin(turn));
      }),
      halfMesiodistal: [
        [0, 1],
        [1, 1],
      ],
      halfBuccolingual: [
        [0, 1],
        [1, 1],
      ],
    });
    for (const turn of [0.2, 0.5, 0.85])
      for (const [across, y] of [
        [1.3, 0],
        [-1.2, 0],
        [0.5, 1],
        [0, -1.4],
      ] as const) {
        const reach = 12 + across;
        const found = bent.distance(12 - reach * Math.cos(turn), y, reach * Math.sin(turn));
        expect(found).toBeCloseTo(Math.hypot(across, y) - 1, 1);
      }
  });
});

describe("the lower first molar with a third root", () => {
  const tooth = toothOf(lowerFirstMolarWithThirdRoot);
  const canal = tooth.canals.find(({ name }) => name === "DL");
  it("has its third canal on the lingual side, whose end turns to buccal by over 40 degrees and hardly to distal", () => {
    if (canal === undefined) throw new Error("no third canal");
    const points = truePoints(canal, 0.5);
    const [before, turn, end] = [points[6], points[Math.round(points.length * 0.65)], points[points.length - 1]];
    if (!before || !turn || !end) throw new Error("too short");
    expect(turn.y).toBeLessThan(-4);
    const leanBefore = Math.atan2(turn.y - before.y, turn.z - before.z);
    const leanAfter = Math.atan2(end.y - turn.y, end.z - turn.z);
    expect(((leanAfter - leanBefore) * 180) / Math.PI).toBeGreaterThan(40);
    expect(Math.abs(end.x - turn.x)).toBeLessThan(0.6);
  });
  it("finds the length nearest to a place of the course", () => {
    if (canal === undefined) throw new Error("no third canal");
    const third = truePoints(canal, 1)[3];
    if (third)
      expect(lengthNearest(canal.course, third)).toBeCloseTo(
        3 * (canal.course.lengthMm / Math.round(canal.course.lengthMm)),
        1,
      );
  });
});

describe("placedTooth", () => {
  it("brings a place to the tooth's own axes and back", () => {
    const placed = placedTooth(upperSecondMolar, toothPoint(10, -0.5, 0.4), 7);
    const place = toothPoint(11, 2, 6);
    expect(distanceMm(placed.fromOwn(placed.toOwn(place.x, place.y, place.z)), place)).toBeCloseTo(0, 9);
  });
  it("leans the crown to mesial and the roots to distal", () => {
    const placed = placedTooth(upperSecondMolar, toothPoint(0, 0, 0), 10);
    expect(placed.fromOwn(toothPoint(0, 0, -7)).x).toBeLessThan(-1);
    expect(placed.fromOwn(toothPoint(0, 0, 12)).x).toBeGreaterThan(2);
  });
});
