import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crosshairMoved, isArrow, pushOf } from "./crosshair-motion.ts";
import { toScreen } from "./film-placement.ts";
import { filmPoint, pixelsBetween } from "./film-point.ts";

const film = { columns: 1500, rows: 1200 };
const pane = { width: 900, height: 700 };
const middle = filmPoint(700, 600);
const orientation = fc.record({ quarterTurns: fc.integer({ min: 0, max: 3 }), mirrored: fc.boolean() });
const none = { shift: false, alt: false };

describe("the crosshair", () => {
  it("goes the way the arrow points on the screen, however the film is held", () => {
    fc.assert(
      fc.property(orientation, fc.constantFrom("ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"), (held, key) => {
        const placement = { zoom: 1.7, centre: middle, orientation: held };
        const to = crosshairMoved(middle, { key, held: none }, placement, film);
        const [before, after] = [toScreen(placement, pane, middle), toScreen(placement, pane, to)];
        expect(Math.sign(Math.round(after.x - before.x))).toBe(key === "ArrowRight" ? 1 : key === "ArrowLeft" ? -1 : 0);
        expect(Math.sign(Math.round(after.y - before.y))).toBe(key === "ArrowDown" ? 1 : key === "ArrowUp" ? -1 : 0);
      }),
    );
  });

  it("goes 1 pixel of the film, 10 with Shift, a quarter with Alt, at any zoom", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 30, noNaN: true }), orientation, (zoom, held) => {
        const placement = { zoom, centre: middle, orientation: held };
        const far = (keys: { shift: boolean; alt: boolean }) =>
          pixelsBetween(middle, crosshairMoved(middle, { key: "ArrowUp", held: keys }, placement, film));
        expect(far(none)).toBeCloseTo(1, 9);
        expect(far({ shift: true, alt: false })).toBeCloseTo(10, 9);
        expect(far({ shift: false, alt: true })).toBeCloseTo(0.25, 9);
      }),
    );
  });

  it("stays on the film", () => {
    const placement = { zoom: 1, centre: middle, orientation: { quarterTurns: 0, mirrored: false } };
    const press = { key: "ArrowLeft", held: { shift: true, alt: false } };
    expect(crosshairMoved(filmPoint(3, 5), press, placement, film)).toEqual(filmPoint(0, 5));
  });

  it("leaves other keys alone", () => {
    expect(isArrow("ArrowUp")).toBe(true);
    expect(isArrow("t")).toBe(false);
    expect(isArrow("toString")).toBe(false);
  });

  it("pushes the film against the arrow, so that one looks where it points", () => {
    expect(pushOf("ArrowRight", none)).toEqual({ x: -40, y: -0 });
    expect(pushOf("ArrowDown", { shift: true, alt: false })).toEqual({ x: -0, y: -200 });
  });
});
