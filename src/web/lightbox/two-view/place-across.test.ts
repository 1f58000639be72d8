import { describe, expect, it } from "vitest";
import { courseShareOf, traceShareOf } from "./place-across.ts";

/** A course straight down of 11 places, 1 mm apart; on the second film its lower half is drawn out. */
const course = Array.from({ length: 11 }, (_, at): [number, number, number] => [0, 0, at]);
const ticks = [
  { z: 0, on: [0, 0] },
  { z: 5, on: [0.5, 0.4] },
  { z: 10, on: [1, 1] },
].map(({ z, on }, number) => ({ number, shares: on, zMm: z, fixed: false, isEnd: number !== 1 }));

describe("a place on a film and on the course in space", () => {
  it("lie at one height", () => {
    expect(courseShareOf({ course }, ticks, { film: 0, share: 0.3 })).toBeCloseTo(0.3, 9);
    expect(courseShareOf({ course }, ticks, { film: 1, share: 0.4 })).toBeCloseTo(0.5, 9);
    expect(courseShareOf({ course }, ticks, { film: 1, share: 0.76 })).toBeCloseTo(0.8, 9);
    expect(traceShareOf({ course }, ticks, { film: 1, share: 0.5 })).toBeCloseTo(0.4, 9);
    expect(traceShareOf({ course }, ticks, { film: 1, share: 0.2 })).toBeCloseTo(0.16, 9);
  });

  it("end where the course ends", () => {
    for (const film of [0, 1]) {
      expect(courseShareOf({ course }, ticks, { film, share: -1 })).toBe(0);
      expect(courseShareOf({ course }, ticks, { film, share: 2 })).toBe(1);
      expect(traceShareOf({ course }, ticks, { film, share: 1 })).toBe(1);
      expect(traceShareOf({ course }, ticks, { film, share: 0 })).toBe(0);
    }
  });

  it("are found back from each other at every place of the course", () => {
    for (let at = 0; at <= 10; at += 1) {
      const share = traceShareOf({ course }, ticks, { film: 1, share: at / 10 });
      expect(courseShareOf({ course }, ticks, { film: 1, share })).toBeCloseTo(at / 10, 9);
    }
  });
});
