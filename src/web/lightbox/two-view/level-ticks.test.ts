import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filmPoint } from "../kernels/film-point.ts";
import { arrowAlong, levelTicks, measuredLine, placeOnLine, shareNearest } from "./level-ticks.ts";

const corner = measuredLine([filmPoint(0, 0), filmPoint(0, 30), filmPoint(40, 30)]);
const upright = { zoom: 2, centre: filmPoint(0, 0), orientation: { quarterTurns: 0, mirrored: false } };

describe("levels on traces", () => {
  it("lie at the share of each trace that the ledger's distances are of its whole", () => {
    const levels = [
      { alongMm: [0, 0], zMm: 0, fixed: false },
      { alongMm: [2, 3], zMm: 2, fixed: true },
      { alongMm: [8, 12], zMm: 7.5, fixed: false },
    ];
    expect(levelTicks({ levels })).toEqual([
      { number: 0, shares: [0, 0], zMm: 0, fixed: false, isEnd: true },
      { number: 1, shares: [0.25, 0.25], zMm: 2, fixed: true, isEnd: false },
      { number: 2, shares: [1, 1], zMm: 7.5, fixed: false, isEnd: true },
    ]);
    expect(levelTicks({ levels: [] })).toEqual([]);
  });
});

describe("a place on a trace", () => {
  it("is found by its share: 35 of 70 pixels lie 5 past the corner", () => {
    expect(placeOnLine(corner, 0.5)).toEqual(filmPoint(5, 30));
    expect(placeOnLine(corner, 0)).toEqual(filmPoint(0, 0));
    expect(placeOnLine(corner, 1)).toEqual(filmPoint(40, 30));
  });

  it("is nearest to a place beside it, square to the trace", () => {
    expect(shareNearest(corner, filmPoint(-3, 14))).toEqual({ share: 14 / 70, distancePx: 3 });
    expect(shareNearest(corner, filmPoint(90, 30))).toEqual({ share: 1, distancePx: 50 });
  });

  it("is found back from any share", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        expect(shareNearest(corner, placeOnLine(corner, share)).share).toBeCloseTo(share, 9);
      }),
    );
  });
});

describe("an arrow on a level", () => {
  const at = (share: number, quarterTurns = 0, mirrored = false) => ({
    share,
    placement: { ...upright, orientation: { quarterTurns, mirrored } },
  });
  it("goes the way it points on the screen", () => {
    expect(arrowAlong("ArrowDown", corner, at(0.2))).toBe(1);
    expect(arrowAlong("ArrowUp", corner, at(0.2))).toBe(-1);
    expect(arrowAlong("ArrowRight", corner, at(0.8))).toBe(1);
    expect(arrowAlong("ArrowLeft", corner, at(0.8))).toBe(-1);
  });

  it("goes so on a film that is turned or mirrored as well", () => {
    expect(arrowAlong("ArrowUp", corner, at(0.2, 2))).toBe(1);
    expect(arrowAlong("ArrowLeft", corner, at(0.8, 0, true))).toBe(1);
    expect(arrowAlong("ArrowLeft", corner, at(0.2, 1))).toBe(1);
  });

  it("is no other key", () => {
    expect(arrowAlong("Enter", corner, at(0.2))).toBeUndefined();
  });
});
