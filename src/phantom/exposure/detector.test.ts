import { describe, expect, it } from "vitest";
import { blurred, enlargedAt, type Picture, reduced } from "./blur.ts";
import { samplesOf, usualDetector } from "./detector.ts";

const flat = (value: number, columns = 160, rows = 120): Picture => ({
  columns,
  rows,
  values: new Float32Array(columns * rows).fill(value),
});
const exposure = { detector: usualDetector, spacingMm: 0.04, focalBlurMm: 0.01, seed: 5 };

/** Mean, variance and the correlation of neighbours in the middle of a film. */
function grainOf(samples: Uint16Array, columns: number, rows: number) {
  const inside: number[] = [];
  const pairs: [number, number][] = [];
  for (let row = 40; row < rows - 40; row++)
    for (let column = 40; column < columns - 40; column++) {
      const at = row * columns + column;
      inside.push(samples[at] ?? 0);
      pairs.push([samples[at] ?? 0, samples[at + 1] ?? 0]);
    }
  const mean = inside.reduce((a, b) => a + b, 0) / inside.length;
  const variance = inside.reduce((a, b) => a + (b - mean) ** 2, 0) / inside.length;
  const shared = pairs.reduce((a, [x, y]) => a + (x - mean) * (y - mean), 0) / pairs.length;
  return { mean, variance, neighbour: shared / variance };
}

describe("blurred", () => {
  it("keeps a flat picture flat, and the sum of a point", () => {
    expect(blurred(flat(0.5), 2).values[2000]).toBeCloseTo(0.5, 5);
    const point = flat(0, 41, 41);
    point.values[20 * 41 + 20] = 1;
    expect(blurred(point, 2).values.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 5);
  });
  it("spreads a point with the standard deviation it was asked for", () => {
    const point = flat(0, 61, 61);
    point.values[30 * 61 + 30] = 1;
    const spread = blurred(point, 3).values.reduce((sum, value, at) => sum + value * ((at % 61) - 30) ** 2, 0);
    // Cut off at 3.5 standard deviations: a hundredth of the variance is missing.
    expect(Math.sqrt(spread)).toBeCloseTo(3, 0.9);
  });
  it("leaves a picture alone for less than a tenth of a pixel", () => {
    const picture = flat(1);
    expect(blurred(picture, 0.05)).toBe(picture);
  });
});

describe("reduced and enlargedAt", () => {
  it("bring a ramp back between blocks", () => {
    const ramp = flat(0, 64, 64);
    ramp.values.forEach((_, at) => {
      ramp.values[at] = at % 64;
    });
    expect(enlargedAt(reduced(ramp, 8), 8, 30, 30)).toBeCloseTo(30, 4);
  });
});

describe("samplesOf", () => {
  it("is the same for the same seed and another for another", () => {
    const [a, b] = [samplesOf(flat(0.3), exposure), samplesOf(flat(0.3), exposure)];
    expect(a).toEqual(b);
    expect(samplesOf(flat(0.3), { ...exposure, seed: 6 })).not.toEqual(a);
  });
  it("is brighter where less comes through, between 0 and 4095", () => {
    const means = [0.7, 0.4, 0.2, 0.1, 0.01].map((part) => grainOf(samplesOf(flat(part), exposure), 160, 120).mean);
    for (let i = 1; i < means.length; i++) expect(means[i]).toBeGreaterThan(means[i - 1] ?? 0);
    expect(means[0]).toBeLessThan(150);
    expect(means[4]).toBeGreaterThan(3900);
    expect(means[4]).toBeLessThanOrEqual(4095);
  });
  it("is noisier with fewer quanta: the variance of the logarithm goes as one over their number", () => {
    const quiet = { ...usualDetector, readoutQuanta: 0, scatterPart: 0 };
    const many = grainOf(samplesOf(flat(0.3), { ...exposure, detector: quiet }), 160, 120);
    const few = grainOf(samplesOf(flat(0.3), { ...exposure, detector: { ...quiet, quantaPerPixel: 2250 } }), 160, 120);
    // 3200 correlated pixels: the ratio's own error is about 5 %.
    expect(few.variance / many.variance).toBeGreaterThan(3.5);
    expect(few.variance / many.variance).toBeLessThan(4.5);
  });
  it("shares its grain with its neighbours through the scintillator, and not without its blur", () => {
    const quiet = { ...usualDetector, readoutQuanta: 0 };
    const neighbour = (detector: typeof usualDetector): number =>
      grainOf(samplesOf(flat(0.3), { ...exposure, detector }), 160, 120).neighbour;
    // White noise blurred by s = 0.525 px has neighbours that share exp(-1 / (4 s^2)) = 0.40; pixels this coarse share less.
    expect(neighbour(quiet)).toBeGreaterThan(0.25);
    expect(neighbour(quiet)).toBeLessThan(0.45);
    expect(Math.abs(neighbour({ ...quiet, blurMm: 0.005 }))).toBeLessThan(0.08);
  });
  it("adds the scatter of the surroundings: a dark place is lighter beside a bright field", () => {
    const half = flat(0.05);
    half.values.forEach((_, at) => {
      if (at % 160 > 80) half.values[at] = 0.6;
    });
    const at = 60 * 160 + 50;
    const mean = (scatterPart: number): number => {
      const samples = samplesOf(half, { ...exposure, detector: { ...usualDetector, scatterPart } });
      return Array.from(samples.subarray(at - 8, at + 8)).reduce((a, b) => a + b, 0) / 16;
    };
    expect(mean(0.3)).toBeLessThan(mean(0) - 100);
  });
  it("is black outside its rounded corner", () => {
    const samples = samplesOf(flat(0.1), exposure);
    expect(samples[0]).toBe(0);
    expect(samples[60 * 160 + 80]).toBeGreaterThan(2000);
  });
});
