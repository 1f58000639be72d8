import type { Interval } from "../../basis.ts";
import { quantile } from "../../statistics/quantile.ts";
import { seededRandom } from "../../statistics/seeded-random.ts";
import { type Headline, type HeadlineName, headlineNames } from "./headline.ts";

/** The level of every interval of this topic. */
const level = 0.95;

/**
 * An interval for each headline number: what 95 % of the drawn courses measure, reaching to the number itself and, where
 * no family fits, to what the smoothing spline measures.
 * Takes the headline numbers, the draws, the relative standard deviation of the scale (it moves lengths, not angles), and
 * further values to be reached.
 * @source docs/methods/curvature.md C12
 */
export function intervalsOf(
  headline: Headline,
  draws: readonly Headline[],
  scaleSigma: number,
  reach: Headline,
): Record<string, Interval> {
  const random = seededRandom(7);
  const scales = draws.map(() => Math.max(0.1, 1 + scaleSigma * random.normal()));
  const entries = headlineNames.flatMap((name): [string, Interval][] => {
    const value = headline[name];
    if (value === undefined) return [];
    const drawn = draws.flatMap((draw, index) => scaled(name, draw[name], scales[index] ?? 1));
    const reached = [value, ...(reach[name] === undefined ? [] : [reach[name]])];
    return [[name, around(drawn, reached)]];
  });
  return Object.fromEntries(entries);
}

function around(drawn: number[], reached: readonly number[]): Interval {
  const sorted = drawn.sort((a, b) => a - b);
  const ends = sorted.length === 0 ? [] : [quantile(sorted, (1 - level) / 2), quantile(sorted, (1 + level) / 2)];
  return { low: Math.min(...ends, ...reached), high: Math.max(...ends, ...reached), level };
}

/** A drawn value under another scale of the film: lengths grow with it, curvature shrinks, angles stay. */
function scaled(name: HeadlineName, value: number | undefined, scale: number): number[] {
  if (value === undefined) return [];
  if (name.endsWith("Deg")) return [value];
  return [name.endsWith("PerMm") ? value / scale : value * scale];
}
