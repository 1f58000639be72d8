import { correlationStep } from "./correlation-step.ts";
import { templateOf } from "./film-template.ts";
import { type Homography, resized } from "./homography.ts";
import { halved, type Picture, smoothed } from "./picture.ts";
import { halvedRegion, type Region } from "./region.ts";

/** Two films brought together. */
export interface AlignedFilms {
  /** Takes places of the first film to places of the second. */
  readonly map: Homography;
  /** Correlation of both in the region under the map, -1 to 1. */
  readonly correlation: number;
  /** Steps taken at full size. */
  readonly steps: number;
}

/** Both films at one size, and which pixels of the first count. */
export interface Level {
  readonly first: Picture;
  readonly second: Picture;
  readonly region: Region;
}

/** Smaller than this a film shows too little to be worth a level of its own. */
const smallestSide = 90;
const mostSteps = 40;
/** A step that moves no corner farther is the last one, px at full size. */
const settledPx = 1e-4;

/**
 * The projective map under which two films correlate best in a region, from coarse to fine.
 * Takes both films at full size, half of it and so on, and a map to start from.
 * @source Evangelidis and Psarakis 2008 (memory); docs/methods/compare-films C2
 */
export function alignedFilms(levels: readonly Level[], start: Homography): AlignedFilms {
  let map = start;
  let found = { map, correlation: 0, steps: 0 };
  for (let index = levels.length - 1; index >= 0; index--) {
    const level = levels[index];
    if (level === undefined) continue;
    const factor = 0.5 ** index;
    found = settled(level, resized(map, factor), settledPx * factor);
    map = resized(found.map, 1 / factor);
  }
  return { ...found, map };
}

/** Both films at full size, a little smoothed, then at half of it and so on while they still show something. */
export function levelsOf({ first, second, region }: Level): Level[] {
  const levels = [{ first: smoothed(first), second: smoothed(second), region }];
  for (let last = levels[0]; last !== undefined; ) {
    if (Math.min(last.first.columns, last.first.rows, last.second.columns, last.second.rows) < 2 * smallestSide) break;
    const next: Level = {
      first: halved(smoothed(last.first)),
      second: halved(smoothed(last.second)),
      region: halvedRegion(last.region),
    };
    levels.push(next);
    last = next;
  }
  return levels;
}

/** The same levels with another region at full size. */
export function withRegion(levels: readonly Level[], region: Region): Level[] {
  let smaller = region;
  return levels.map((level, index) => {
    if (index > 0) smaller = halvedRegion(smaller);
    return { ...level, region: smaller };
  });
}

/** Steps until none moves anything any more, at one size; never ends with less correlation than it began with. */
function settled(level: Level, start: Homography, enoughPx: number) {
  const template = templateOf(level);
  let best = { map: start, correlation: -1, steps: 0 };
  let map = start;
  for (let steps = 1; steps <= mostSteps; steps++) {
    const step = correlationStep(template, level.second, map);
    if (step === undefined) break;
    if (step.correlation > best.correlation) best = { map, correlation: step.correlation, steps };
    // Beyond the top the correlation falls by less than rounding or for good; either way nothing is gained.
    else if (step.correlation < best.correlation - 1e-3) break;
    if (step.movedPx > template.middle.half / 2) break;
    map = step.map;
    if (step.movedPx < enoughPx) return { map, correlation: Math.max(step.correlation, best.correlation), steps };
  }
  return { ...best, correlation: Math.max(best.correlation, 0) };
}
