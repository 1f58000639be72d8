import { describe, expect, it } from "vitest";
import { betaQuantile } from "./beta-quantile.ts";
import { betaShare } from "./beta-share.ts";
import { logGamma } from "./log-gamma.ts";

describe("logGamma", () => {
  // scipy 1.17.1, scipy.special.gammaln; the first two also by hand: gamma(1/2) = sqrt(pi), gamma(10) = 9!.
  it.each([
    [0.5, Math.log(Math.sqrt(Math.PI))],
    [10, Math.log(362_880)],
    [0.1, 2.252712651734206],
    [1.5, -0.12078223763524526],
    [100.5, 361.43554046777757],
    [12_608, 106434.02842866401],
  ])("of %d is %d", (x, value) => {
    expect(Math.abs(logGamma(x) - value)).toBeLessThan(1e-13 * Math.max(1, Math.abs(value)));
  });

  it("follows gamma(x + 1) = x gamma(x), on both sides of where it is mirrored", () => {
    for (const x of [0.01, 0.3, 0.4999, 0.5001, 1, 7.7, 3000])
      expect(logGamma(x + 1) - logGamma(x)).toBeCloseTo(Math.log(x), 10);
  });
});

describe("betaShare", () => {
  it.each([
    ["even", 0.3, 1, 1, 0.3],
    ["a power", 0.3, 4, 1, 0.3 ** 4],
    ["arc sine", 0.3, 0.5, 0.5, (2 / Math.PI) * Math.asin(Math.sqrt(0.3))],
    // At least 3 of 5 with chance 0.4, added up: 0.31744.
    ["a sum of the binomial", 0.4, 3, 3, 10 * 0.4 ** 3 * 0.6 ** 2 + 5 * 0.4 ** 4 * 0.6 + 0.4 ** 5],
  ])("of shapes that can be written out: %s", (_, place, a, b, share) => {
    expect(betaShare(place, a, b)).toBeCloseTo(share, 13);
  });

  it("is 0 and 1 at and beyond the ends, mirrored, and rises without a step", () => {
    expect([betaShare(-1, 2, 3), betaShare(0, 2, 3), betaShare(1, 2, 3), betaShare(2, 2, 3)]).toEqual([0, 0, 1, 1]);
    for (const [a, b] of [
      [0.5, 12.5],
      [2, 3],
      [511.5, 489.5],
    ] as const) {
      let before = 0;
      for (let at = 1; at < 100; at++) {
        const share = betaShare(at / 100, a, b);
        expect(share).toBeGreaterThanOrEqual(before);
        expect(share + betaShare(1 - at / 100, b, a)).toBeCloseTo(1, 12);
        before = share;
      }
    }
  });
});

describe("betaQuantile", () => {
  // scipy 1.17.1, scipy.stats.beta.ppf.
  it.each([
    [0.025, 0.5, 0.5, 0.001541333133436012],
    [0.025, 2, 3, 0.06758598648854294],
    [0.5, 2, 3, 0.3857275681323895],
    [0.975, 10, 1, 0.9974714214555382],
    [0.025, 0.5, 100.5, 4.898073104397486e-6],
    [0.025, 18.5, 1343.5, 0.008140431924778571],
    [0.975, 57, 194.5, 0.2802633822100821],
    [0.5, 3875.5, 1375.5, 0.7380801199613811],
    [0.975, 3875.5, 1375.5, 0.7498548433733452],
  ])("%d of shapes %d and %d is %d", (share, a, b, place) => {
    expect(betaQuantile(share, a, b) / place).toBeCloseTo(1, 9);
  });

  // Agresti and Coull's way gives 0.82 to 2.10 percent for 18 of 1361, as printed (Anthropol Anz 2019;76:121-127); the
  // interval of Jeffreys lies within a tenth of a point of it.
  it("is near the printed interval of 18 in 1361", () => {
    expect(betaQuantile(0.025, 18.5, 1343.5)).toBeCloseTo(0.0082, 3);
    expect(betaQuantile(0.975, 18.5, 1343.5)).toBeCloseTo(0.021, 2);
  });

  it("undoes the share, and ends at 0 and 1", () => {
    for (const share of [1e-6, 0.2, 0.5, 0.9, 1 - 1e-6])
      expect(betaShare(betaQuantile(share, 7, 2.5), 7, 2.5)).toBeCloseTo(share, 10);
    expect([betaQuantile(0, 2, 2), betaQuantile(1, 2, 2)]).toEqual([0, 1]);
  });
});
