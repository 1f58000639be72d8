import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { acrossOn, cornersOf, type FilmInSpace, imageOf } from "./film-in-space.ts";

const film = (angleDeg: number, receptor: FilmInSpace["receptor"]): FilmInSpace => ({ name: "", angleDeg, receptor });
const angle = fc.double({ min: -60, max: 60, noNaN: true });
const coordinate = fc.double({ min: -15, max: 15, noNaN: true });
const place = fc.tuple(coordinate, coordinate, coordinate);
const receptor = fc.constantFrom("turnsWithBeam" as const, "fixed" as const);
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

describe("the image of a place on a film behind the tooth", () => {
  it("lies straight behind it on a straight film", () => {
    for (const kind of ["turnsWithBeam", "fixed"] as const)
      expect(imageOf(film(0, kind), 6, [2, 3, 9])).toEqual([2, expect.closeTo(-6, 12), 9]);
  });

  it("lies on the ray through the place, whatever the receptor", () => {
    fc.assert(
      fc.property(angle, receptor, place, (angleDeg, kind, at) => {
        const image = imageOf(film(angleDeg, kind), 8, at);
        const [dx, dy] = [image[0] - at[0], image[1] - at[1]];
        // The beam comes from (-sin a, cos a): the step to the image has no part across it.
        expect(dx * Math.cos(radians(angleDeg)) + dy * Math.sin(radians(angleDeg))).toBeCloseTo(0, 8);
        expect(image[2]).toBe(at[2]);
      }),
    );
  });

  it("stands as far across the film as the formulas of the two receptors say", () => {
    // docs/methods/two-view.md C2 and C3: x cos a + y sin a = 3.0806; x + y tan a = 3.3989, and the axis 8 tan a aside.
    expect(acrossOn(film(25, "turnsWithBeam"), 8, [2, 3, 0])).toBeCloseTo(3.08047, 4);
    const aside = acrossOn(film(25, "fixed"), 8, [2, 3, 0]) - acrossOn(film(25, "fixed"), 8, [0, 0, 0]);
    expect(aside).toBeCloseTo(2 + 3 * Math.tan(radians(25)), 8);
  });

  it("lies inside the corners of a frame that holds it", () => {
    const turned = film(30, "turnsWithBeam");
    const corners = cornersOf(turned, { behindMm: 5, acrossMm: [-4, 4], downMm: [0, 12] });
    expect(corners).toHaveLength(4);
    for (const [x, y] of corners) expect(-x * Math.sin(radians(30)) + y * Math.cos(radians(30))).toBeCloseTo(-5, 10);
    expect(corners.map(([, , z]) => z)).toEqual([0, 0, 12, 12]);
    const [left = [0, 0, 0], right = [0, 0, 0]] = corners;
    expect(Math.hypot(left[0] - right[0], left[1] - right[1])).toBeCloseTo(8, 10);
  });
});
