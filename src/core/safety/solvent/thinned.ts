/** Straight lines between the points that stay lie within this share of what is left out. */
const closeTo = 0.02;
/** Below this share of the highest a difference is not told. */
const unseen = 1e-4;

type Curve = (index: number) => number;

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Which points of curves have to stay so that straight lines between them tell the others to 2 %; the highest of each curve stays.
 * Takes the times and the curves over them, all of one length.
 * @source the point farthest off stays, and both sides are looked at in turn (Douglas and Peucker 1973, from memory)
 */
export function thinned(times: readonly number[], curves: readonly (readonly number[])[]): number[] {
  const last = times.length - 1;
  if (last < 1) return times.map((_, index) => index);
  const highest = curves.map((values) => values.indexOf(Math.max(...values)));
  const stay = new Set([0, last, ...highest]);
  const fixed = [...stay].sort((a, b) => a - b);
  const open: Stretch[] = fixed.slice(1).map((to, at) => ({ from: fixed[at] ?? 0, to }));
  const off = curves.map((values) => offLine(times, values));
  for (let stretch = open.pop(); stretch !== undefined; stretch = open.pop()) {
    const worst = farthest(stretch, off);
    if (worst === undefined) continue;
    stay.add(worst);
    open.push({ from: stretch.from, to: worst }, { from: worst, to: stretch.to });
  }
  return [...stay].sort((a, b) => a - b);
}

/** The point of a stretch that is farthest off in any curve; undefined where all are close enough. */
function farthest({ from, to }: Stretch, off: readonly ((stretch: Stretch) => Curve)[]): number | undefined {
  const curves = off.map((of) => of({ from, to }));
  let worst: { index: number; by: number } | undefined;
  for (let index = from + 1; index < to; index += 1) {
    const by = Math.max(...curves.map((curve) => curve(index)));
    if (by > (worst?.by ?? 1)) worst = { index, by };
  }
  return worst?.index;
}

/** How far a point lies off the line of a stretch, in parts of what is allowed. */
function offLine(times: readonly number[], values: readonly number[]): (stretch: Stretch) => Curve {
  const floor = unseen * Math.max(...values);
  return ({ from, to }) => {
    const [start = 0, end = 0, first = 0, last = 0] = [times[from], times[to], values[from], values[to]];
    return (index) => {
      const value = values[index] ?? 0;
      const share = end > start ? ((times[index] ?? start) - start) / (end - start) : 0;
      const gap = Math.abs(value - (first + share * (last - first)));
      return gap === 0 ? 0 : gap / Math.max(closeTo * value, floor);
    };
  };
}

/** Seven figures: a curve needs no more, and an entry keeps hundreds of points. Noise of a difference is not told as below nothing. */
export const short = (value: number): number => Math.max(0, Number(value.toPrecision(7)));
