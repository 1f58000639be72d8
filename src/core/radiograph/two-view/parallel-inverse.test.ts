import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deg, radiansOf } from "../../units.ts";
import { cameraOf, type Receptor } from "./camera.ts";
import { parallelInverse } from "./parallel-inverse.ts";
import { placeInSpace } from "./place-in-space.ts";

const angle = (value: number) => radiansOf(deg(value));

describe("the closed forms (C2, C3)", () => {
  // Worked example of rotation: x 2, depth 1.5, 20 degrees -> 2.39241546 (closed form, 8 digits).
  it("a place 2 mm to distal and 1.5 mm to buccal shows at 2.39241546 mm under 20 degrees", () => {
    const camera = cameraOf({ receptor: "turnsWithBeam", angle: angle(20), tilt: 0 });
    expect(camera({ x: 2, y: 1.5, z: 0 }).u).toBeCloseTo(2.39241546, 7);
    const back = parallelInverse({ angle: 0, u: 2 }, { angle: angle(20), u: 2.39241546 }, "turnsWithBeam");
    expect(back.y).toBeCloseTo(1.5, 7);
  });

  // Two canals 3.5 mm apart in depth, one behind the other: b = (du2 - du1 cos p) / sin p, 1.197 mm at 20 degrees.
  it("canals 3.5 mm behind one another come 1.197 mm apart under 20 degrees", () => {
    const { x, y } = parallelInverse({ angle: 0, u: 0 }, { angle: angle(20), u: 1.197 }, "turnsWithBeam");
    expect(x).toBe(0);
    expect(y).toBeCloseTo(3.5, 3);
  });

  // Tube moved by B = 30 mm, object 12 mm above a receptor that stays, source 300 mm from it: B z / (SID - z) = 1.25 mm.
  it("an object 12 mm above a fixed receptor moves 1.25 mm for a tube shift of 30 mm at 300 mm", () => {
    const shift = Math.atan2(30, 288);
    const source = { toToothMm: Math.hypot(30, 288), toPlaneMm: 12, centralRayMm: 0 };
    const camera = cameraOf({ receptor: "fixed", angle: shift, tilt: 0, source });
    const moved = camera({ x: 0, y: 0, z: 0 }).u - camera({ x: 0, y: -12, z: 0 }).u;
    expect(Math.abs(moved)).toBeCloseTo(1.25, 12);
  });

  // The wrong formula: atan(tan 30 (1 - cos 25) / sin 25) = 7.29 degrees.
  it("a mesiodistal slope of 30 degrees on a fixed receptor, read as turned, leans 7.3 degrees to one side", () => {
    const u = Math.tan(angle(30));
    const { y } = parallelInverse({ angle: 0, u }, { angle: angle(25), u }, "turnsWithBeam");
    expect((Math.atan(y) * 180) / Math.PI).toBeCloseTo(7.29, 2);
  });
});

const receptors = fc.constantFrom<Receptor>("turnsWithBeam", "fixed");
const place = fc.record({ x: coordinate(8), y: coordinate(8), z: coordinate(12) });
function coordinate(reach: number) {
  return fc.double({ min: -reach, max: reach, noNaN: true });
}
const degrees = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

describe("places from films (C5)", () => {
  it("the closed form and least squares give back any place, parallel rays", () => {
    fc.assert(
      fc.property(receptors, place, degrees(-40, 10), degrees(15, 45), (receptor, at, first, shift) => {
        const angles = [angle(first), angle(first + shift)];
        const looks = angles.map((one) => ({ angle: one, camera: cameraOf({ receptor, angle: one, tilt: 0 }) }));
        const [a, b] = looks.map((look) => ({ angle: look.angle, u: look.camera(at).u }));
        if (a === undefined || b === undefined) throw new Error("two sights");
        const back = parallelInverse(a, b, receptor);
        expect(back.x).toBeCloseTo(at.x, 8);
        expect(back.y).toBeCloseTo(at.y, 8);
      }),
    );
  });

  it("least squares give back any place from three films of a near tube under vertical angles", () => {
    fc.assert(
      fc.property(receptors, place, degrees(-12, 12), degrees(0, 20), (receptor, at, tilt, toPlaneMm) => {
        const source = { toToothMm: 250, toPlaneMm, centralRayMm: 4 };
        const seen = [-20, 0, 25].map((one) => {
          const camera = cameraOf({ receptor, angle: angle(one), tilt: angle(tilt), source });
          return { camera, at: camera(at) };
        });
        const { place: found, squares } = placeInSpace(seen, { x: 0, y: 0, z: 0 });
        expect(Math.hypot(found.x - at.x, found.y - at.y, found.z - at.z)).toBeLessThan(1e-6);
        expect(squares).toBeLessThan(1e-12);
      }),
    );
  });

  // u1 = x and y = (u2 - u1 cos a) / sin a: the variance of y is (1 + cos^2 a) / sin^2 a, of x 1, of z 1/2.
  it("depth is as unsure as the closed form says", () => {
    const seen = [0, 25].map((one) => {
      const camera = cameraOf({ receptor: "turnsWithBeam", angle: angle(one), tilt: 0 });
      return { camera, at: camera({ x: 1, y: 2, z: 3 }) };
    });
    const { spread } = placeInSpace(seen, { x: 0, y: 0, z: 0 });
    expect(spread.x).toBeCloseTo(1, 6);
    expect(spread.y).toBeCloseTo(Math.sqrt(1 + Math.cos(angle(25)) ** 2) / Math.sin(angle(25)), 6);
    expect(spread.z).toBeCloseTo(Math.SQRT1_2, 6);
  });

  it("a far tube is a parallel beam, and an upright one counts the plane of the tooth as it is", () => {
    for (const receptor of ["turnsWithBeam", "fixed"] as const) {
      const parallel = cameraOf({ receptor, angle: angle(25), tilt: angle(7) });
      const far = { toToothMm: 1e7, toPlaneMm: 0, centralRayMm: 5 };
      const distant = cameraOf({ receptor, angle: angle(25), tilt: angle(7), source: far });
      const [a, b] = [parallel, distant].map((camera) => {
        const top = camera({ x: 0, y: 0, z: 0 });
        const at = camera({ x: 3, y: -2, z: 9 });
        return [at.u - top.u, at.v - top.v];
      });
      expect(a?.[0]).toBeCloseTo(b?.[0] ?? 0, 4);
      expect(a?.[1]).toBeCloseTo(b?.[1] ?? 0, 4);
      const near = cameraOf({ receptor, angle: 0, tilt: 0, source: { toToothMm: 300, toPlaneMm: 0, centralRayMm: 5 } });
      expect(near({ x: 3, y: 0, z: 9 })).toEqual({ u: 3, v: 9 });
    }
  });

  // u = (D + d)(x cos a + y sin a) / (D - w), w = -x sin a + y cos a.
  it("on the detector a near tube shows what the printed formula says", () => {
    const source = { toToothMm: 300, toPlaneMm: 9, centralRayMm: 0 };
    const { u } = cameraOf({ receptor: "turnsWithBeam", angle: angle(25), tilt: 0, source })({ x: 2, y: 3, z: 0 });
    const [c, s] = [Math.cos(angle(25)), Math.sin(angle(25))];
    expect(u).toBeCloseTo((309 * (2 * c + 3 * s)) / (300 - (-2 * s + 3 * c)), 12);
  });
});
