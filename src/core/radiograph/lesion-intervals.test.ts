import { describe, expect, it } from "vitest";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import { lesionTopic } from "./lesion-topic.ts";

const trials = 300;
/** With 300 trials a true share of 95 % falls below 0.915 once in 200 such tests. */
const leastShare = 0.915;

interface Design {
  readonly a: number;
  readonly b: number;
  readonly corners: number;
  readonly sigmaMm: number;
  readonly scaleSigma: number;
}

type Truth = Record<string, number>;

/** The polygon that is clicked, and what is true of it: its corners lie on the ellipse. */
function truthOf({ a, b, corners }: Design): { points: [number, number][]; truth: Truth } {
  const points = Array.from({ length: corners }, (_, index): [number, number] => {
    const t = (2 * Math.PI * index) / corners;
    return [a * Math.cos(t), b * Math.sin(t)];
  });
  const area = (corners / 2) * a * b * Math.sin((2 * Math.PI) / corners);
  return {
    points,
    truth: {
      areaMm2: area,
      equivalentDiameterMm: 2 * Math.sqrt(area / Math.PI),
      largestDiameterMm: 2 * a,
      acrossDiameterMm: 2 * b,
      apexToEdgeMm: 2,
    },
  };
}

/** Clicked and scaled with error, again and again: the share of intervals that hold the truth, and the spread. */
function studied(design: Design) {
  const { normal } = seededRandom(17);
  const { points, truth } = truthOf(design);
  const names = Object.keys(truth);
  const held = Object.fromEntries(names.map((name) => [name, 0]));
  const areas: number[] = [];
  let stated = 0;
  for (let trial = 0; trial < trials; trial++) {
    const scale = 1 + design.scaleSigma * normal();
    const clicked = ([x, y]: [number, number]): [number, number] => [
      (x + design.sigmaMm * normal()) * scale,
      (y + design.sigmaMm * normal()) * scale,
    ];
    const found = answer(lesionTopic, {
      points: points.map(clicked),
      apex: clicked([0, -design.b - 2]),
      sigmaMm: design.sigmaMm,
      scaleRelativeSigma: design.scaleSigma,
    });
    for (const name of names) {
      const { low = 0, high = 0 } = found.intervals[name] ?? {};
      if (low <= (truth[name] ?? 0) && (truth[name] ?? 0) <= high) held[name] = (held[name] ?? 0) + 1;
    }
    areas.push(found.areaMm2);
    const area = found.intervals.areaMm2;
    stated += ((area?.high ?? 0) - (area?.low ?? 0)) / (2 * 1.959964) / trials;
  }
  const mean = areas.reduce((sum, area) => sum + area, 0) / trials;
  const spread = Math.sqrt(areas.reduce((sum, area) => sum + (area - mean) ** 2, 0) / (trials - 1));
  const shares = Object.fromEntries(names.map((name) => [name, (held[name] ?? 0) / trials]));
  return { shares, spread, stated };
}

describe("95 % intervals of a lesion's size, against draws of clicked outlines (C5, C6)", () => {
  it.each<Design>([
    { a: 4, b: 2.5, corners: 24, sigmaMm: 0.1, scaleSigma: 0 },
    { a: 3, b: 3, corners: 24, sigmaMm: 0.1, scaleSigma: 0.02 },
    { a: 5, b: 2, corners: 36, sigmaMm: 0.05, scaleSigma: 0.01 },
  ])("hold the truth in at least 92 %: %j", (design) => {
    const { shares, spread, stated } = studied(design);
    for (const [name, share] of Object.entries(shares)) expect(share, name).toBeGreaterThan(leastShare);
    // The area's standard deviation is linear in small errors; 300 draws know theirs to 4 %.
    expect(Math.abs(stated / spread - 1)).toBeLessThan(0.12);
  });

  // Moving one corner of a regular polygon of n corners and radius r: half the chord over two steps, r sin(2 pi / n).
  it("have the closed form of a regular polygon: sigma r sin(2 pi / n) sqrt(n)", () => {
    const design = { a: 3, b: 3, corners: 20, sigmaMm: 0.01, scaleSigma: 0 };
    const { points, truth } = truthOf(design);
    const interval = answer(lesionTopic, { points, sigmaMm: 0.01 }).intervals.areaMm2;
    const sigma = 0.01 * 3 * Math.sin(Math.PI / 10) * Math.sqrt(20);
    expect(interval?.high).toBeCloseTo((truth.areaMm2 ?? 0) + 1.959964 * sigma, 6);
    expect(interval?.low).toBeCloseTo((truth.areaMm2 ?? 0) - 1.959964 * sigma, 6);
  });

  it("with a scale of 2 % alone: diameters by 2 %, the area by 4 %", () => {
    const { points } = truthOf({ a: 3, b: 2, corners: 24, sigmaMm: 0, scaleSigma: 0 });
    const found = answer(lesionTopic, { points, sigmaMm: 0, scaleRelativeSigma: 0.02 });
    const share = (name: "areaMm2" | "largestDiameterMm") =>
      ((found.intervals[name]?.high ?? 0) / found[name] - 1) / 1.959964;
    expect(share("areaMm2")).toBeCloseTo(0.04, 9);
    expect(share("largestDiameterMm")).toBeCloseTo(0.02, 9);
  });

  it("of an apex within the lesion begin at 0 and reach out only where the edge is near", () => {
    const { points } = truthOf({ a: 3, b: 3, corners: 24, sigmaMm: 0, scaleSigma: 0 });
    const deep = answer(lesionTopic, { points, sigmaMm: 0.1, apex: [0, 0] });
    expect(deep.intervals.apexDistanceMm).toEqual({ low: 0, high: 0, level: 0.95 });
    const shallow = answer(lesionTopic, { points, sigmaMm: 0.1, apex: [2.9, 0] });
    expect(shallow.apexDistanceMm).toBe(0);
    expect(shallow.intervals.apexDistanceMm?.high).toBeGreaterThan(0.05);
  });

  it("are absent without a click error", () => {
    const { points } = truthOf({ a: 3, b: 3, corners: 24, sigmaMm: 0, scaleSigma: 0 });
    expect(answer(lesionTopic, { points }).intervals).toEqual({});
  });
});
