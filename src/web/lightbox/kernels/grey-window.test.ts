import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draggedWindow, relativeTo, windowLike, windowText } from "./grey-window.ts";

const start = { centre: 2000, width: 1000, invert: false };

describe("the grey window under the hand", () => {
  it("stays as it was without a step", () => {
    expect(draggedWindow(start, { x: 0, y: 0 }, 12)).toEqual(start);
  });

  it("grows wider to the right, and back by the same step to the left", () => {
    const wider = draggedWindow(start, { x: 60, y: 0 }, 12);
    expect(wider.width).toBeGreaterThan(start.width);
    expect(draggedWindow(wider, { x: -60, y: 0 }, 12).width).toBeCloseTo(start.width, 6);
  });

  it("brightens upward: a lower centre, or a higher one where black and white are exchanged", () => {
    expect(draggedWindow(start, { x: 0, y: -40 }, 12).centre).toBeLessThan(start.centre);
    expect(draggedWindow({ ...start, invert: true }, { x: 0, y: -40 }, 12).centre).toBeGreaterThan(start.centre);
  });

  it("never closes and never leaves the values by more than their own range", () => {
    const step = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(step, step, fc.integer({ min: 1, max: 16 }), (x, y, bits) => {
        const { centre, width } = draggedWindow(start, { x, y }, bits);
        expect(width).toBeGreaterThanOrEqual(1);
        expect(width).toBeLessThanOrEqual(4 * 2 ** bits);
        expect(centre).toBeGreaterThanOrEqual(-(2 ** bits));
        expect(centre).toBeLessThanOrEqual(2 * 2 ** bits);
      }),
    );
  });

  it("is told in words", () => {
    expect(windowText(start)).toBe("width 1000, centre 2000");
    expect(windowText({ ...start, invert: true })).toBe("width 1000, centre 2000, black and white exchanged");
  });
});

describe("the like of a window on another film", () => {
  const other = { centre: 128, width: 200, invert: false };

  it("is the other film's own window where the first has its own", () => {
    expect(windowLike(relativeTo(start, start), other)).toEqual(other);
  });

  it("is as much narrower and as far off as on the first, and as negative", () => {
    const narrow = { centre: 1750, width: 500, invert: true };
    expect(windowLike(relativeTo(start, narrow), other)).toEqual({ centre: 78, width: 100, invert: true });
    expect(windowLike(relativeTo(start, narrow), start)).toEqual(narrow);
  });

  it("never closes", () => {
    expect(windowLike({ shift: 0, stretch: 0.001, invert: false }, other).width).toBe(1);
  });
});
