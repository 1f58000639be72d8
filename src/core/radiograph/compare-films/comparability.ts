import { percent } from "../../percent.ts";
import type { ImagePoint } from "../../units.ts";
import type { Homography } from "./homography.ts";
import { placeAt } from "./homography-of-landmarks.ts";
import type { LocalShift, LocalShifts } from "./local-shifts.ts";

/**
 * How far pieces of the films may lie off on average: the width of the ligament space (common practice). A larger shift
 * draws a light and a dark line along every root that can't be told from a change of the ligament.
 */
const mostResidualMm = 0.2;
/** What that is in px where the scale of the film is not known: at 0.04 mm a pixel. */
const mostResidualPx = 5;
/** What a beam 10 degrees off shortens a tooth by (docs/methods/working-length C5: 0.910). */
const mostStretch = 1.1;
/** Below this the films hardly show the same. */
const leastCorrelation = 0.6;
const leastOverlap = 0.3;
/** Of the pieces looked at, so many have to be found again. */
const leastFound = 0.5;

/** What speaks for or against comparing two films. */
export interface Geometry {
  readonly residualPx: number;
  readonly residualMm: number | undefined;
  readonly stretch: number;
  readonly correlation: number;
  readonly overlap: number;
  readonly shifts: LocalShifts;
}

/**
 * Why two films can't be compared, one sentence each; empty where they can.
 * @source own thresholds, each with its reason; docs/methods/compare-films C5
 */
export function reasonsAgainst({ residualPx, residualMm, stretch, correlation, overlap, shifts }: Geometry): string[] {
  const off = residualMm === undefined ? `${residualPx.toFixed(1)} px` : `${residualMm.toFixed(2)} mm`;
  const most = residualMm === undefined ? `${mostResidualPx} px` : `${mostResidualMm} mm`;
  const isOff = residualMm === undefined ? residualPx > mostResidualPx : residualMm > mostResidualMm;
  return [
    ...(overlap < leastOverlap
      ? [`The films share ${percent(overlap)} of the first; ${percent(leastOverlap)} are needed.`]
      : []),
    ...(correlation < leastCorrelation
      ? [
          `The films correlate by ${correlation.toFixed(2)} only: they may show different teeth, or landmarks are mistaken.`,
        ]
      : []),
    ...notFound(shifts),
    ...(isOff ? [`Pieces of the films lie ${off} off, over ${most}: the tube stood elsewhere, and depth shows.`] : []),
    ...(stretch > mostStretch
      ? [`One film is stretched by ${percent(stretch - 1)} against the other, over ${percent(mostStretch - 1)}.`]
      : []),
  ];
}

function notFound({ looked, shifts }: LocalShifts): string[] {
  if (looked === 0) return ["No piece of the first film shows enough to be looked for on the second."];
  if (shifts.length >= leastFound * looked) return [];
  return [`Of ${looked} pieces of the first film ${shifts.length} are found again on the second.`];
}

/** The tenth of the pieces that lies off most is left out: a few are always taken for their neighbours. */
const kept = 0.9;

/** How far pieces lie off: the root mean square of the nine tenths that lie off least, px of the second film. */
export function residualOf(shifts: readonly LocalShift[]): number {
  const away = shifts.map(({ right, down }) => right * right + down * down).sort((a, b) => a - b);
  const least = away.slice(0, Math.max(1, Math.floor(kept * away.length)));
  return least.length === 0 ? 0 : Math.sqrt(least.reduce((sum, one) => sum + one, 0) / least.length);
}

/** The same of the pieces nearest to a place, `most` of them: what is left over at a root. */
export function residualNear(shifts: readonly LocalShift[], place: ImagePoint, most = 6): number {
  const away = ({ at }: LocalShift): number => Math.hypot(at.column - place.column, at.row - place.row);
  return residualOf([...shifts].sort((a, b) => away(a) - away(b)).slice(0, most));
}

/**
 * How unevenly a map stretches a film: the largest stretch in any direction at its middle and corners over the smallest.
 * @source plane geometry: singular values of the map's derivative; docs/methods/compare-films C5
 */
export function stretchOf(map: Homography, { columns, rows }: { columns: number; rows: number }): number {
  const [a, b, c, d, e, f, g, h, i] = map;
  const places = [0, 0.5, 1].flatMap((x) => [0, 0.5, 1].map((y) => placeAt(x * columns, y * rows)));
  const stretches = places.flatMap(({ column, row }) => {
    const depth = g * column + h * row + i;
    const [u, v] = [(a * column + b * row + c) / depth, (d * column + e * row + f) / depth];
    const [uRight, uDown, vRight, vDown] = [a - u * g, b - u * h, d - v * g, e - v * h].map((one) => one / depth);
    return singularValues([uRight ?? 0, uDown ?? 0, vRight ?? 0, vDown ?? 0]);
  });
  return Math.max(...stretches) / Math.min(...stretches);
}

function singularValues([a, b, c, d]: readonly [number, number, number, number]): [number, number] {
  const [sum, turned] = [Math.hypot(a + d, b - c), Math.hypot(a - d, b + c)];
  return [(sum + turned) / 2, Math.abs(sum - turned) / 2];
}
