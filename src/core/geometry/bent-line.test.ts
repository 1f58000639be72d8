import { expect, it } from "vitest";
import { bentPlace } from "./bent-line.ts";

it("without curvature goes straight on", () => {
  expect(bentPlace(0, 0, 3)).toEqual({ along: 3, aside: 0, turned: 0 });
});

it("on a circle of radius 5 a quarter turn ends 5 ahead and 5 aside; backwards it ends behind", () => {
  const quarter = (5 * Math.PI) / 2;
  const there = bentPlace(0.2, 0, quarter);
  expect([there.along, there.aside, there.turned]).toEqual([
    expect.closeTo(5, 12),
    expect.closeTo(5, 12),
    expect.closeTo(Math.PI / 2, 12),
  ]);
  expect(bentPlace(0.2, 0, -quarter).along).toBeCloseTo(-5, 12);
  expect(bentPlace(-0.2, 0, quarter).aside).toBeCloseTo(-5, 12);
});

it("a barely bent arc meets the formula on both sides of the change to a series", () => {
  for (const turn of [0.99e-4, 1.01e-4]) {
    const place = bentPlace(turn, 0, 1);
    expect(place.aside / (turn / 2)).toBeCloseTo(1, 6);
    expect(place.along).toBeCloseTo(1 - turn ** 2 / 6, 12);
  }
});

// Fresnel's integrals C(1) = 0.7798934 and S(1) = 0.4382591 (Abramowitz and Stegun, table 7.7): curvature pi s.
it("a clothoid meets Fresnel's integrals", () => {
  const place = bentPlace(0, Math.PI, 1);
  expect(place.along).toBeCloseTo(0.7798934, 7);
  expect(place.aside).toBeCloseTo(0.4382591, 7);
  expect(place.turned).toBeCloseTo(Math.PI / 2, 12);
});
