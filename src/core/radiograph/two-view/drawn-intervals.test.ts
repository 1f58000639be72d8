import { describe, expect, it } from "vitest";
import { drawnInterval, planeInterval } from "./drawn-intervals.ts";

const even = (low: number, high: number) =>
  Array.from({ length: 1001 }, (_, at) => ({ value: low + (at / 1000) * (high - low), counts: 1 }));

describe("intervals of what is drawn (C11)", () => {
  it("hold 95 per cent, and reach to the value", () => {
    const found = drawnInterval(even(0, 100), 50);
    expect(found.low).toBeCloseTo(2.5, 0);
    expect(found.high).toBeCloseTo(97.5, 0);
    expect(drawnInterval(even(0, 100), 120)).toMatchObject({ high: 120, level: 0.95 });
  });
});

describe("the interval of a plane's angle to the film", () => {
  it("is that of the directions where they stay between the film's plane and the one square to it", () => {
    const found = planeInterval(even(30, 50), 40);
    expect(found.low).toBeCloseTo(30.5, 1);
    expect(found.high).toBeCloseTo(49.5, 1);
    expect(planeInterval(even(-50, -30), -40)).toMatchObject({
      low: expect.closeTo(30.5, 1),
      high: expect.closeTo(49.5, 1),
    });
    expect(planeInterval(even(130, 150), 140)).toMatchObject({
      low: expect.closeTo(30.5, 1),
      high: expect.closeTo(49.5, 1),
    });
  });

  it("reaches to 90 where bends turn through straight to buccal, and to 0 where they turn through the film", () => {
    expect(planeInterval(even(80, 110), 95)).toMatchObject({ low: expect.closeTo(70.8, 1), high: 90 });
    expect(planeInterval(even(-100, -85), -92)).toMatchObject({ low: expect.closeTo(80.4, 1), high: 90 });
    expect(planeInterval(even(-8, 20), 5)).toMatchObject({ low: 0, high: expect.closeTo(19.3, 1) });
    const behind = [...even(172, 180), ...even(-180, -170)];
    expect(planeInterval(behind, 179)).toMatchObject({ low: 0, high: expect.closeTo(9.5, 0) });
  });
});
