import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { covered, twoViewDesigns, twoViewStudy } from "./two-view-study.ts";

const page = readFileSync(fileURLToPath(new URL("../../docs/studies/two-view.md", import.meta.url)), "utf8");

/** The numbers of a design's row in the first or the second table of the page. */
function stored(design: string, table: 0 | 1): number[] {
  const rows = page.split("\n").filter((line) => line.startsWith(`| ${design} |`));
  return (rows[table] ?? "").split("|").slice(2, -1).map(Number.parseFloat);
}

/** The chance of at most k hits in n trials of chance p. */
function chanceOfAtMost(k: number, n: number, p: number): number {
  if (k < 0) return 0;
  let term = (1 - p) ** n;
  let sum = term;
  for (let hit = 1; hit <= k; hit++) {
    term *= ((n - hit + 1) / hit) * (p / (1 - p));
    sum += term;
  }
  return sum;
}

/** Whether a count is no rarer than 1 in 1000 on either side, p itself known from 200 canals only. */
function plausible(count: number, n: number, share: number): boolean {
  const error = Math.sqrt((share * (1 - share) + 0.005) / 200);
  const low = Math.max(0.001, share - 2 * error);
  const high = Math.min(0.999, share + 2 * error);
  return chanceOfAtMost(count, n, low) > 0.0005 && 1 - chanceOfAtMost(count - 1, n, high) > 0.0005;
}

const n = 8;
const bound = twoViewDesigns.slice(0, 4);

describe("the stored study of two views", () => {
  it.each(bound.map((design) => [design.name, design] as const))(
    "%s: 8 new canals fall inside its binomial interval",
    (name, design) => {
      const counts = twoViewStudy(design, n, 7001);
      const found = [counts.lengthWithin, counts.bendWithin, ...covered.map((number) => counts.covered[number])];
      const shares = stored(name, 0).slice(0, found.length);
      expect(shares).toHaveLength(found.length);
      found.forEach((count, index) => {
        expect(plausible(count, n, (shares[index] ?? 0) / 100), `column ${index + 1}: ${count} of ${n}`).toBe(true);
      });
      expect(counts.turned.wrong).toBe(0);
    },
  );

  it("a count that the table cannot explain is noticed", () => {
    expect(plausible(3, 8, 0.95)).toBe(false);
    expect(plausible(7, 8, 0.95)).toBe(true);
    expect(plausible(8, 8, 0.3)).toBe(false);
  });

  // Demanded: at 0.05 mm length within 0.5 mm for 95 %, largest bend within 5 degrees for 90 %; at 0.1 mm within 0.6 mm for
  // 90 % and 8 degrees for 85 %; of the sides that are told 99 % right, and at 0.05 mm 99 % of all that turn 10 degrees out; intervals hold the truth in 90 to 99 % everywhere.
  it("meets what is demanded", () => {
    for (const { name, kind, sigmaMm } of twoViewDesigns) {
      const [length = 0, bend = 0, ...rest] = stored(name, 0);
      for (const share of rest.slice(0, covered.length)) {
        expect(share).toBeGreaterThanOrEqual(90);
        expect(share).toBeLessThanOrEqual(99);
      }
      const [, right = 0, rightOfTold = 0] = stored(name, 1);
      expect(rightOfTold).toBeGreaterThanOrEqual(99);
      if ((kind === "bend" || kind === "across") && sigmaMm === 0.05) expect(right).toBeGreaterThanOrEqual(99);
      if (kind !== "bend") continue;
      expect(length).toBeGreaterThanOrEqual(sigmaMm === 0.05 ? 95 : 90);
      expect(bend).toBeGreaterThanOrEqual(sigmaMm === 0.05 ? 90 : 85);
    }
  });
});
