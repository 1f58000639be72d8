import { describe, expect, it } from "vitest";
import { teeth } from "../teeth.ts";
import { canHave, features } from "./feature.ts";
import { featuresOfTooth } from "./features-of-tooth.ts";
import { priorOfSeries } from "./prior-of-series.ts";
import { shareOfSeries } from "./share-of-series.ts";

const tooth = (twoDigit: string) => {
  const found = teeth.find((one) => one.twoDigit === twoDigit);
  if (found === undefined) throw new Error(`no tooth ${twoDigit}`);
  return found;
};

describe("what may hide in a tooth", () => {
  it("is the second mesiobuccal canal of an upper first molar, with every count of it (C1)", () => {
    const [only, ...others] = featuresOfTooth(tooth("26"));
    expect([only?.feature, others]).toEqual(["secondMesiobuccal", []]);
    // Martins 2018: 73.8 % of 21 regions of 250 teeth; Kim 2020: 308 of 400, read in the papers.
    expect(only?.series.find(({ region }) => region === "world")?.N).toBe(5250);
    expect(only?.series.find(({ region }) => region === "United States")).toMatchObject({ n: 308, N: 400 });
  });

  it("marks counts that a wider one holds already, and gives each its reference", () => {
    const series = featuresOfTooth(tooth("26")).flatMap((one) => one.series);
    expect(series.filter(({ within }) => within).map(({ region }) => region)).toContain("Belgium");
    expect(series.every(({ reference }) => /\d{4}|year not shown/.test(reference))).toBe(true);
  });

  it("is nothing for a tooth in which nobody counted any", () => {
    expect(featuresOfTooth(tooth("11"))).toEqual([]);
    expect(featuresOfTooth(tooth("75"))).toEqual([]);
  });

  it("names for every tooth just what a search of it can be asked about", () => {
    for (const one of teeth) {
      const named = featuresOfTooth(one).map(({ feature }) => feature);
      const asked = features.filter((feature) => {
        try {
          return canHave(one, feature) && priorOfSeries(one, feature, undefined).mean > 0;
        } catch {
          return false;
        }
      });
      expect(named, one.twoDigit).toEqual(asked);
    }
  });
});

describe("shareOfSeries", () => {
  it("has the ends of Jeffreys' interval that R gives", () => {
    // 7 of 10 is beta(7.5, 3.5); R 4.2.2: qbeta(c(.025, .975), 7.5, 3.5) gives 0.3941816819 0.9073054061, told to 7 places.
    const { interval } = shareOfSeries({ n: 7, N: 10 });
    expect(interval.low).toBeCloseTo(0.3941816819, 7);
    expect(interval.high).toBeCloseTo(0.9073054061, 7);
  });

  it("turns round with what is counted: those without it have the mirrored share", () => {
    const [have, lack] = [shareOfSeries({ n: 7, N: 1024 }), shareOfSeries({ n: 1017, N: 1024 })];
    expect(have.mean).toBeCloseTo(1 - lack.mean, 12);
    expect(have.interval.low).toBeCloseTo(1 - lack.interval.high, 9);
  });

  it("is neither 0 nor 1 at the edges", () => {
    expect(shareOfSeries({ n: 0, N: 10 }).mean).toBeGreaterThan(0);
    expect(shareOfSeries({ n: 10, N: 10 }).mean).toBeLessThan(1);
  });
});
