import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partTypes } from "../../../record/parts.ts";
import { roomOf, rowsOf, withLevelMoved } from "./level-rows.ts";
import type { LevelTick } from "./level-ticks.ts";

/** Five levels on two films; the second of the inner ones was set by hand. */
const ticks: readonly LevelTick[] = [0, 0.25, 0.5, 0.75, 1].map((share, number) => ({
  number,
  shares: [share, share],
  zMm: share * 10,
  fixed: number === 2,
  isEnd: number === 0 || number === 4,
}));

describe("a level that is moved", () => {
  it("is set by hand from then on, on all films: where it was put on one, where it was on the others", () => {
    const moved = withLevelMoved(ticks, { number: 1, film: 1, share: 0.3 });
    expect(moved[1]).toMatchObject({ fixed: true, shares: [0.25, 0.3] });
    expect(rowsOf(moved)).toEqual([
      [0.25, 0.3],
      [0.5, 0.5],
    ]);
  });

  it("stops before its neighbours and before the ends of the trace, so that it stays the level that it is", () => {
    expect(roomOf(ticks, { number: 1, film: 0 })).toEqual({ low: 0.01, high: 0.49 });
    expect(roomOf(ticks, { number: 2, film: 0 })).toEqual({ low: 0.26, high: 0.74 });
    expect(withLevelMoved(ticks, { number: 1, film: 0, share: 0.9 })[1]?.shares[0]).toBeCloseTo(0.49, 12);
    expect(withLevelMoved(ticks, { number: 1, film: 0, share: -1 })[1]?.shares[0]).toBeCloseTo(0.01, 12);
  });

  it("stays what it was where its neighbours leave it no room", () => {
    const near = ticks.map((tick) => (tick.number === 3 ? { ...tick, shares: [0.51, 0.51] } : tick));
    const nearer = near.map((tick) => (tick.number === 1 ? { ...tick, shares: [0.495, 0.495] } : tick));
    expect(withLevelMoved(nearer, { number: 2, film: 0, share: 0.7 })).toEqual(nearer);
  });

  it("is not one of the ends: they are one level by what they are", () => {
    expect(withLevelMoved(ticks, { number: 0, film: 0, share: 0.2 })).toEqual(ticks);
  });

  it("can be left to the computing again", () => {
    expect(rowsOf(ticks, 2)).toEqual([]);
    expect(rowsOf(ticks)).toEqual([[0.5, 0.5]]);
  });

  it("keeps rows that the record takes, whatever is moved where and in what order", () => {
    const move = fc.record({
      number: fc.integer({ min: 0, max: 4 }),
      film: fc.integer({ min: 0, max: 1 }),
      share: fc.double({ min: -0.5, max: 1.5, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(move, { maxLength: 12 }), (moves) => {
        const rows = rowsOf(moves.reduce<readonly LevelTick[]>(withLevelMoved, ticks));
        const body = { canal: "DL", films: ["film-1", "film-2"], levels: rows };
        expect(partTypes.pairing.body.safeParse(body).error?.issues).toBeUndefined();
      }),
    );
  });
});
