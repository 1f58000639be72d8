import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { lightBoxDesigns, lightBoxStudy } from "./curvature-light-box.ts";
import { curvatureDesigns, curvatureStudy, studied } from "./curvature-study.ts";

const page = readFileSync(fileURLToPath(new URL("../../docs/studies/curvature.md", import.meta.url)), "utf8");

/** The shares that the stored table gives for a design, in the order of its columns. */
function storedShares(design: string): number[] {
  const row = page.split("\n").find((line) => line.startsWith(`| ${design} |`));
  return (row ?? "")
    .split("|")
    .slice(2, -1)
    .map((cell) => Number(cell) / 100);
}

/** The chance of at most k hits in n trials of chance p. */
function chanceOfAtMost(k: number, n: number, p: number): number {
  let term = (1 - p) ** n;
  let sum = term;
  for (let hit = 1; hit <= k; hit++) {
    term *= ((n - hit + 1) / hit) * (p / (1 - p));
    sum += term;
  }
  return sum;
}

/** Whether a count is no rarer than 1 in 1000 on either side, p itself known from so many trials only. */
function plausible(count: number, n: number, stored: number, storedTrials = 200): boolean {
  const error = Math.sqrt((stored * (1 - stored) + 0.005) / storedTrials);
  const low = Math.max(0.001, stored - 2 * error);
  const high = Math.min(0.999, stored + 2 * error);
  return chanceOfAtMost(count, n, low) > 0.0005 && 1 - chanceOfAtMost(count - 1, n, high) > 0.0005;
}

describe("the stored study of curvature", () => {
  it.each(curvatureDesigns.slice(0, 4).map((design) => [design.name, design] as const))(
    "%s: 20 new trials fall inside its binomial interval",
    (name, design) => {
      const counts = curvatureStudy(design, 20, 5001);
      const found = [
        counts.radiusWithin12Percent,
        counts.angleWithin3Deg,
        counts.angleWithin9Deg,
        ...studied.map((number) => counts.covered[number]),
      ];
      const stored = storedShares(name);
      expect(stored).toHaveLength(found.length);
      found.forEach((count, index) => {
        expect(plausible(count, 20, stored[index] ?? 0), `column ${index + 1}: ${count} of 20`).toBe(true);
      });
    },
  );

  it.each(lightBoxDesigns.filter((_, index) => index % 6 === 0).map((design) => [design.name, design] as const))(
    "%s: 10 new trials fall inside its binomial interval",
    (name, design) => {
      const { covered, widestLengthMm } = lightBoxStudy(design, 10, 7001);
      const stored = storedShares(name);
      [covered.lengthMm, covered.pruettDeg, covered.totalTurnDeg].forEach((count, index) => {
        expect(plausible(count, 10, stored[index] ?? 0, 60), `column ${index + 1}: ${count} of 10`).toBe(true);
      });
      expect(widestLengthMm).toBeLessThan(0.4);
    },
  );

  // Demanded of every course as the light box gives it, 8.5 mm long and more: the length's interval holds the truth in
  // at least 85 % and is never wider than 5 % of 8.5 mm; of a straight or single gentle bend, the angle's holds it in 80 %.
  it("meets what is demanded of finely followed courses", () => {
    for (const { name } of lightBoxDesigns) {
      const row = page.split("\n").find((line) => line.startsWith(`| ${name} |`)) ?? "";
      const [length = 0, angle = 0, , widest = 1] = row.split("|").slice(2, -1).map(Number);
      expect(length, name).toBeGreaterThanOrEqual(85);
      expect(widest, name).toBeLessThan(0.05 * 8.5);
      if (!name.startsWith("S ")) expect(angle, name).toBeGreaterThanOrEqual(80);
    }
  });

  it("a count that the table cannot explain is noticed", () => {
    expect(plausible(12, 20, 0.95)).toBe(false);
    expect(plausible(19, 20, 0.95)).toBe(true);
    expect(plausible(20, 20, 0.4)).toBe(false);
  });

  // Demanded of the designs with L2 2 mm: 90 % within 12 % of the radius and 3 degrees; with L2 0: within 9 degrees;
  // the 95 % intervals of all of them hold the truth in 90 to 99 %.
  it("meets what is demanded", () => {
    for (const { name, shape } of curvatureDesigns.slice(0, 4)) {
      const [radius = 0, three = 0, nine = 0, ...covered] = storedShares(name);
      if (shape.l2 === 2) expect(Math.min(radius, three)).toBeGreaterThanOrEqual(0.9);
      expect(nine).toBeGreaterThanOrEqual(0.9);
      for (const share of covered) {
        expect(share).toBeGreaterThanOrEqual(0.9);
        expect(share).toBeLessThanOrEqual(0.99);
      }
    }
  });
});
