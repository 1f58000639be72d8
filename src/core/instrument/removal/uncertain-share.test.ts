import { describe, expect, it } from "vitest";
import { seededRandom } from "../../statistics/seeded-random.ts";
import { countedShare, oneOf, picked, type UncertainShare, unknownShare } from "./uncertain-share.ts";

const draws = 20_000;
/** Within 5 standard errors of a share's draws, whose standard deviation is at most 1/2. */
const near = (5 * 0.5) / Math.sqrt(draws);

function meanOf(share: UncertainShare): number {
  const random = seededRandom(5);
  return Array.from({ length: draws }, () => share.draw(random)).reduce((sum, one) => sum + one, 0) / draws;
}

describe("a share that is not known exactly", () => {
  // The mean of a beta distribution is a / (a + b).
  it("of a count has the mean of its beta distribution (C8)", () => {
    const share = countedShare({ events: 21, n: 44 });
    expect(share.mean).toBeCloseTo(21.5 / 45, 12);
    expect(Math.abs(meanOf(share) - 21.5 / 45)).toBeLessThan(near);
  });

  it("of all or none is neither 1 nor 0 (C8)", () => {
    expect(countedShare({ events: 8, n: 8 }).mean).toBeCloseTo(8.5 / 9, 12);
    expect(countedShare({ events: 0, n: 8 }).mean).toBeCloseTo(0.5 / 9, 12);
  });

  it("of several lies about the mean of their means (C8)", () => {
    const share = oneOf([countedShare({ events: 5, n: 50 }), countedShare({ events: 45, n: 50 })]);
    expect(share.mean).toBeCloseTo(0.5, 12);
    expect(Math.abs(meanOf(share) - 0.5)).toBeLessThan(near);
  });

  it("of nothing known is anything (C12)", () => {
    expect(unknownShare.mean).toBe(0.5);
    expect(Math.abs(meanOf(unknownShare) - 0.5)).toBeLessThan(near);
  });

  it("can't be picked from nothing", () => {
    expect(() => picked([], seededRandom(1))).toThrow(RangeError);
  });
});
