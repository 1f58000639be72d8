import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { fractureDesigns, fractureStudy } from "./fracture-study.ts";

const page = readFileSync(fileURLToPath(new URL("../../docs/studies/fracture.md", import.meta.url)), "utf8");

/** The cells of a row of the page, the first one left out. */
function stored(name: string): number[] {
  const row = page.split("\n").find((line) => line.startsWith(`| ${name} |`));
  return (row ?? "").split("|").slice(2, -1).map(Number.parseFloat);
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

/** Whether a count is no rarer than 1 in 1000 on either side, p itself known from 200 breaks only. */
function plausible(count: number, n: number, share: number): boolean {
  const error = Math.sqrt((share * (1 - share) + 0.005) / 200);
  const low = Math.max(0.001, share - 2 * error);
  const high = Math.min(0.999, share + 2 * error);
  return chanceOfAtMost(count, n, low) > 0.0005 && 1 - chanceOfAtMost(count - 1, n, high) > 0.0005;
}

const n = 12;

describe("the stored study of breaks", () => {
  it.each(fractureDesigns.slice(0, 2).map((design) => [design.name, design] as const))(
    "%s: 12 new breaks fall inside its binomial interval",
    (name, design) => {
      const counts = fractureStudy(design, n, 7_001);
      const [, right = Number.NaN] = stored(name);
      expect(counts.n).toBe(n);
      expect(plausible(counts.right, n, right / 100), `${counts.right} of ${n}`).toBe(true);
    },
  );

  it("a count that the table cannot explain is noticed", () => {
    expect(plausible(3, 12, 0.8)).toBe(false);
    expect(plausible(10, 12, 0.8)).toBe(true);
    expect(plausible(12, 12, 0.3)).toBe(false);
  });

  it("every design has a log score better than the prior's", () => {
    for (const { name } of fractureDesigns) {
      const [told = 0, , score = Number.NaN, prior = Number.NaN] = stored(name);
      expect(told).toBeGreaterThanOrEqual(190);
      expect(score).toBeGreaterThan(prior + 0.1);
    }
  });

  // Demanded: of the breaks given 70 to 80 % in 60 to 90 % it was the cause; the other chances likewise within 10 points.
  it("a chance means what it says", () => {
    const [told = 0, , right = Number.NaN] = stored("70 to 80 %");
    expect(told).toBeGreaterThanOrEqual(50);
    expect(right).toBeGreaterThanOrEqual(60);
    expect(right).toBeLessThanOrEqual(90);
    for (const [bin, low, high] of [
      ["60 to 70 %", 50, 80],
      ["80 to 90 %", 70, 100],
      ["90 to 100 %", 80, 100],
    ] as const) {
      const [, , share = Number.NaN] = stored(bin);
      expect(share).toBeGreaterThanOrEqual(low);
      expect(share).toBeLessThanOrEqual(high);
    }
  });
});
