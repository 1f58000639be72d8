import { Refusal } from "../core/refusal.ts";
import type { FilmPixels } from "./film-pixels.ts";

/** How many regions a film is cut into each way, how many steps of grey are counted, and how many pixels one may hold. */
interface LocalContrastOptions {
  /** Regions across and down, each at least 1; a film too small for that many gets fewer. */
  readonly regions?: number;
  /** The largest share of a region's pixels that one step of grey may count for, above 0 to 1: lower holds noise down. */
  readonly clip?: number;
}

const usualRegions = 8;
const usualClip = 0.01;
const steps = 256;
/** A region with fewer pixels to a side knows too little of its grey. */
const leastSidePx = 8;

/**
 * The film with the contrast of each of its regions spread evenly over the film's grey: contrast-limited adaptive
 * equalisation, each pixel between the curves of the four regions around it.
 * Takes the film and the options. Gives one number a pixel in stored samples, between the film's lowest and highest;
 * within a region a larger sample never becomes a smaller one. A level film comes back as it is.
 * @throws Refusal `input.impossible` for no region or a clip outside 0..1.
 * @source K. Zuiderveld, Contrast limited adaptive histogram equalization, in: Graphics Gems IV, Academic Press 1994,
 * pages 474-485 (memory); S. M. Pizer and others, Adaptive histogram equalization and its variations, Computer Vision,
 * Graphics, and Image Processing 1987;39:355-368 (memory)
 */
export function localContrast(film: FilmPixels, options: LocalContrastOptions = {}): Float32Array {
  const { regions = usualRegions, clip = usualClip } = options;
  if (!(Number.isInteger(regions) && regions >= 1 && clip > 0 && clip <= 1))
    throw new Refusal(
      "input.impossible",
      `Cannot even out contrast: ${regions} regions and a clip of ${clip} are none`,
    );
  const { low, high } = rangeOf(film.samples);
  if (low === high) return Float32Array.from(film.samples);
  const [columns, rows] = [cutsOf(film.columns, regions), cutsOf(film.rows, regions)];
  const curves = columns.cuts.flatMap((column) =>
    rows.cuts.map((row) => curveOf(film, { column, row }, { low, high, clip })),
  );
  return between(film, { columns, rows, curves, low, high });
}

/** From the first pixel to before the last. */
type Span = readonly [from: number, to: number];

interface Cuts {
  readonly cuts: readonly Span[];
  /** For each pixel: the region whose middle lies before it, the one after, and the share of the way to that. */
  readonly before: Uint16Array;
  readonly after: Uint16Array;
  readonly share: Float32Array;
}

function cutsOf(size: number, regions: number): Cuts {
  const count = Math.max(1, Math.min(regions, Math.floor(size / leastSidePx)));
  const edge = (at: number) => Math.round((at * size) / count);
  const cuts = Array.from({ length: count }, (_, at): Span => [edge(at), edge(at + 1)]);
  const middles = cuts.map(([from, to]) => (from + to - 1) / 2);
  const [before, after, share] = [new Uint16Array(size), new Uint16Array(size), new Float32Array(size)];
  for (let pixel = 0; pixel < size; pixel++) {
    const next = middles.findIndex((middle) => middle > pixel);
    const [left, right] = next === -1 ? [count - 1, count - 1] : [Math.max(0, next - 1), next];
    const [from = 0, to = 0] = [middles[left], middles[right]];
    before[pixel] = left;
    after[pixel] = right;
    share[pixel] = to === from ? 0 : Math.max(0, (pixel - from) / (to - from));
  }
  return { cuts, before, after, share };
}

interface Range {
  readonly low: number;
  readonly high: number;
}

function rangeOf(samples: Uint16Array): Range {
  let [low, high] = [samples[0] ?? 0, samples[0] ?? 0];
  for (const sample of samples) {
    if (sample < low) low = sample;
    if (sample > high) high = sample;
  }
  return { low, high };
}

/** The step of grey that a sample falls into. */
const stepOf = (sample: number, { low, high }: Range): number =>
  Math.min(steps - 1, Math.floor(((sample - low) * steps) / (high - low)));

/** For the lower end of each step, and the upper end of the last: which share of the region's pixels lies below, clipped. */
function curveOf(
  film: FilmPixels,
  { column, row }: { column: Span; row: Span },
  { clip, ...range }: Range & { clip: number },
): Float32Array {
  const counts = new Float64Array(steps);
  for (let line = row[0]; line < row[1]; line++)
    for (let at = line * film.columns + column[0]; at < line * film.columns + column[1]; at++) {
      const step = stepOf(film.samples[at] ?? 0, range);
      counts[step] = (counts[step] ?? 0) + 1;
    }
  const pixels = (row[1] - row[0]) * (column[1] - column[0]);
  clipped(counts, Math.max(1, Math.floor(clip * pixels)));
  const curve = new Float32Array(steps + 1);
  let sum = 0;
  for (let step = 0; step < steps; step++) {
    sum += counts[step] ?? 0;
    curve[step + 1] = Math.min(1, sum / pixels);
  }
  return curve;
}

/** Cuts what lies above the limit and deals it out evenly to all steps that have room. */
function clipped(counts: Float64Array, limit: number): void {
  let excess = cutAt(counts, limit);
  // Dealing out can fill a step up to the limit; what is left then goes to those that still have room.
  while (excess > 1e-6) {
    const room = counts.reduce((open, count) => open + (count < limit ? 1 : 0), 0);
    if (room === 0) return;
    const each = excess / room;
    for (let step = 0; step < counts.length; step++) {
      const count = counts[step] ?? 0;
      if (count < limit) counts[step] = count + each;
    }
    excess = cutAt(counts, limit);
  }
}

function cutAt(counts: Float64Array, limit: number): number {
  let excess = 0;
  for (let step = 0; step < counts.length; step++) {
    const over = (counts[step] ?? 0) - limit;
    if (over <= 0) continue;
    excess += over;
    counts[step] = limit;
  }
  return excess;
}

interface Curves extends Range {
  readonly columns: Cuts;
  readonly rows: Cuts;
  /** Column by column of regions, each from the top. */
  readonly curves: readonly Float32Array[];
}

function between(film: FilmPixels, { columns, rows, curves, low, high }: Curves): Float32Array {
  const down = rows.cuts.length;
  const wide = steps + 1;
  const flat = new Float32Array(curves.length * wide);
  curves.forEach((curve, index) => {
    flat.set(curve, index * wide);
  });
  const even = new Float32Array(film.samples.length);
  const perSample = steps / (high - low);
  let at = 0;
  for (let row = 0; row < film.rows; row++) {
    const [above, below, lower] = [rows.before[row] ?? 0, rows.after[row] ?? 0, rows.share[row] ?? 0];
    for (let column = 0; column < film.columns; column++, at++) {
      const place = ((film.samples[at] ?? 0) - low) * perSample;
      const step = Math.min(steps - 1, Math.floor(place));
      const within = place - step;
      const left = (columns.before[column] ?? 0) * down;
      const right = (columns.after[column] ?? 0) * down;
      const across = columns.share[column] ?? 0;
      const curve = (region: number) => onCurve(flat, region * wide + step, within);
      const upper = curve(left + above) * (1 - across) + curve(right + above) * across;
      const under = curve(left + below) * (1 - across) + curve(right + below) * across;
      even[at] = low + (upper * (1 - lower) + under * lower) * (high - low);
    }
  }
  return even;
}

const onCurve = (flat: Float32Array, at: number, within: number): number =>
  (flat[at] ?? 0) * (1 - within) + (flat[at + 1] ?? 0) * within;
