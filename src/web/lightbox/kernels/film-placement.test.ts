import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type FilmPlacement,
  filmStep,
  fitted,
  panned,
  placementMatrix,
  reoriented,
  toFilm,
  toScreen,
  zoomedAt,
} from "./film-placement.ts";
import { filmPoint, pixelsBetween } from "./film-point.ts";

const pane = { width: 900, height: 700 };
const film = { columns: 2000, rows: 1500 };
const coordinate = fc.double({ min: -500, max: 2500, noNaN: true });
const point = fc.tuple(coordinate, coordinate).map(([column, row]) => filmPoint(column, row));
const orientation = fc.record({ quarterTurns: fc.integer({ min: 0, max: 3 }), mirrored: fc.boolean() });
const placement: fc.Arbitrary<FilmPlacement> = fc.record({
  zoom: fc.double({ min: 0.05, max: 20, noNaN: true }),
  centre: point,
  orientation,
});
const screenPoint = fc.record({
  x: fc.double({ min: 0, max: 900, noNaN: true }),
  y: fc.double({ min: 0, max: 700, noNaN: true }),
});

describe("where a film lies in its pane", () => {
  it("goes to the screen and back to the same place of the film", () => {
    fc.assert(
      fc.property(placement, point, (lying, place) => {
        expect(pixelsBetween(toFilm(lying, pane, toScreen(lying, pane, place)), place)).toBeLessThan(1e-6);
      }),
    );
  });

  it("keeps the place under the pointer while it zooms", () => {
    fc.assert(
      fc.property(placement, screenPoint, fc.double({ min: 0.2, max: 5, noNaN: true }), (lying, at, factor) => {
        const larger = zoomedAt(lying, pane, { at, factor });
        expect(pixelsBetween(toFilm(larger, pane, at), toFilm(lying, pane, at))).toBeLessThan(1e-6);
      }),
    );
  });

  it("takes back one zoom with its inverse while no limit is met", () => {
    fc.assert(
      fc.property(screenPoint, fc.double({ min: 0.5, max: 2, noNaN: true }), (at, factor) => {
        const start = fitted(film, pane, { quarterTurns: 0, mirrored: false });
        const back = zoomedAt(zoomedAt(start, pane, { at, factor }), pane, { at, factor: 1 / factor });
        expect(back.zoom).toBeCloseTo(start.zoom, 9);
        expect(pixelsBetween(back.centre, start.centre)).toBeLessThan(1e-6);
      }),
    );
  });

  it("never zooms past its limits", () => {
    const start = fitted(film, pane, { quarterTurns: 0, mirrored: false });
    expect(zoomedAt(start, pane, { at: { x: 0, y: 0 }, factor: 1e9 }).zoom).toBe(32);
    expect(zoomedAt(start, pane, { at: { x: 0, y: 0 }, factor: 1e-9 }).zoom).toBe(0.02);
  });

  it("shows the whole film when it is fitted, however it is held", () => {
    fc.assert(
      fc.property(orientation, (held) => {
        const lying = fitted(film, pane, held);
        const corners = [
          filmPoint(-0.5, -0.5),
          filmPoint(1999.5, -0.5),
          filmPoint(1999.5, 1499.5),
          filmPoint(-0.5, 1499.5),
        ];
        for (const { x, y } of corners.map((corner) => toScreen(lying, pane, corner))) {
          expect(x).toBeGreaterThanOrEqual(15.9);
          expect(x).toBeLessThanOrEqual(pane.width - 15.9);
          expect(y).toBeGreaterThanOrEqual(15.9);
          expect(y).toBeLessThanOrEqual(pane.height - 15.9);
        }
      }),
    );
  });

  it("moves with the hand until its edge reaches the middle of the pane", () => {
    const start = { zoom: 2, centre: filmPoint(1000, 700), orientation: { quarterTurns: 0, mirrored: false } };
    expect(panned(start, film, { x: 20, y: -10 }).centre).toEqual(filmPoint(990, 705));
    expect(panned(start, film, { x: 1e6, y: 1e6 }).centre).toEqual(filmPoint(0, 0));
    expect(panned(start, film, { x: -1e6, y: -1e6 }).centre).toEqual(filmPoint(1999, 1499));
  });

  it("turns clockwise: what was at the top is then at the right", () => {
    const start = { zoom: 1, centre: filmPoint(100, 100), orientation: { quarterTurns: 0, mirrored: false } };
    const turned = { ...start, orientation: reoriented(start.orientation, "turned") };
    expect(toScreen(turned, pane, filmPoint(100, 50))).toEqual({ x: 500, y: 350 });
  });

  it("mirrors left to right as it is seen, whatever was done to it before", () => {
    fc.assert(
      fc.property(placement, point, (lying, place) => {
        const before = toScreen(lying, pane, place);
        const after = toScreen({ ...lying, orientation: reoriented(lying.orientation, "mirrored") }, pane, place);
        expect(after.x).toBeCloseTo(pane.width - before.x, 5);
        expect(after.y).toBeCloseTo(before.y, 5);
      }),
    );
  });

  it("is back after four turns and after two mirrorings", () => {
    fc.assert(
      fc.property(orientation, (held) => {
        const turned = [1, 2, 3, 4].reduce((now) => reoriented(now, "turned"), held);
        expect(turned).toEqual(held);
        expect(reoriented(reoriented(held, "mirrored"), "mirrored")).toEqual(held);
      }),
    );
  });

  it("says the same as its matrix", () => {
    fc.assert(
      fc.property(placement, point, (lying, place) => {
        const [a, b, c, d, e, f] = placementMatrix(lying, pane);
        const { x, y } = toScreen(lying, pane, place);
        expect(x).toBeCloseTo(a * place.column + c * place.row + e, 6);
        expect(y).toBeCloseTo(b * place.column + d * place.row + f, 6);
        // A turn keeps areas: the determinant is the square of the zoom, below 0 for a mirrored film.
        expect(Math.abs(a * d - b * c)).toBeCloseTo(lying.zoom ** 2, 6);
      }),
    );
  });

  it("takes a step on the screen to the step of the film that draws it", () => {
    fc.assert(
      fc.property(placement, screenPoint, (lying, step) => {
        const moved = filmStep(lying, step);
        const from = toScreen(lying, pane, filmPoint(0, 0));
        const to = toScreen(lying, pane, moved);
        expect(to.x - from.x).toBeCloseTo(step.x, 5);
        expect(to.y - from.y).toBeCloseTo(step.y, 5);
      }),
    );
  });
});
