import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Frame, frameAlong, rotated, tiltedFrame, turnedFrame } from "./frame.ts";
import { angleBetween, cross, dot, norm, unit, vector } from "./vector.ts";

const number = fc.double({ min: -2, max: 2, noNaN: true });

function expectRightAngles({ tangent, first, second }: Frame) {
  for (const side of [tangent, first, second]) expect(norm(side)).toBeCloseTo(1, 9);
  for (const [a, b] of [
    [tangent, first],
    [tangent, second],
    [first, second],
  ] as const)
    expect(dot(a, b)).toBeCloseTo(0, 9);
  expect(dot(cross(tangent, first), second)).toBeCloseTo(1, 9);
}

describe("frames (C2)", () => {
  it("along +y in the plane, the first side is +x: to the right", () => {
    const { first } = frameAlong(vector(0, 3));
    expect([first.x, first.y, first.z]).toEqual([1, expect.closeTo(0, 12), 0]);
  });

  it("stay at right angles when laid along, tilted and turned", () => {
    fc.assert(
      fc.property(number, number, number, number, (x, y, z, angle) => {
        fc.pre(Math.hypot(x, y, z) > 0.01);
        const frame = frameAlong(vector(x, y, z));
        expectRightAngles(frame);
        expectRightAngles(tiltedFrame(frame, y, z));
        expectRightAngles(turnedFrame(frame, frame.second, angle));
      }),
      { numRuns: 60, seed: 2 },
    );
    expectRightAngles(frameAlong(vector(0, 0, 1)));
  });

  it("a turn by an angle turns the tangent by that angle towards the side named", () => {
    const frame = frameAlong(vector(0, 1));
    const { tangent } = turnedFrame(frame, frame.first, Math.PI / 6);
    expect(tangent.x).toBeCloseTo(0.5, 12);
    expect(angleBetween(tangent, frame.tangent)).toBeCloseTo(Math.PI / 6, 12);
  });

  it("a quarter turn about z takes x to y", () => {
    const { x, y, z } = rotated(vector(1, 0, 5), vector(0, 0, 1), Math.PI / 2);
    expect([x, y, z]).toEqual([expect.closeTo(0, 12), expect.closeTo(1, 12), expect.closeTo(5, 12)]);
  });
});

it("angles near 0 and near pi keep their digits; a vector of no length has no direction", () => {
  expect(angleBetween(vector(1, 0), vector(1, 1e-9)) / 1e-9).toBeCloseTo(1, 6);
  expect(angleBetween(vector(1, 0), vector(-1, 0))).toBeCloseTo(Math.PI, 12);
  expect(unit(vector(0, 0))).toEqual(vector(0, 0));
});
