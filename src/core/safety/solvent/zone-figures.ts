import type { CourseReading } from "./course-reading.ts";
import { highest, largestOver } from "./largest-over.ts";
import type { ZoneName } from "./room-modes.ts";
import type { VapourCourse } from "./vapour-course.ts";
import { levelIn, slopeIn } from "./vapour-piece.ts";

/** What limits are held against, mg/m3. */
export interface ZoneFigures {
  readonly peak: number;
  readonly peakAtMin: number;
  readonly mean15: number;
  readonly mean60: number;
  readonly mean480: number;
}

/**
 * Peak and worst running means of one zone, to the machine's rounding.
 * @source integrals of exponentials; docs/methods/solvent.md C8
 */
export function zoneFigures(course: VapourCourse, zone: ZoneName, reading: CourseReading): ZoneFigures {
  const peaks = course.pieces.map((piece) => {
    const valueAt = (after: number) => levelIn(piece, zone, after);
    const slopeAt = (after: number) => slopeIn(piece, zone, after);
    const { atMin, value } = largestOver(0, piece.lengthMin, { valueAt, slopeAt });
    return { atMin: piece.startMin + atMin, value };
  });
  const peak = highest(peaks);
  return {
    peak: peak.value,
    peakAtMin: peak.atMin,
    mean15: worstMean(reading, 15),
    mean60: worstMean(reading, 60),
    mean480: worstMean(reading, 480),
  };
}

/** The worst mean over so many minutes: of the area between two ends that move along together. */
function worstMean({ levelAt, areaUntil, edges }: CourseReading, overMin: number): number {
  const [start = 0, end = 0] = [edges[0], edges.at(-1)];
  const [from, to] = [start - overMin, end - overMin];
  const places = [...new Set([...edges, ...edges.map((at) => at - overMin)])]
    .filter((at) => at >= from && at <= to)
    .sort((x, y) => x - y);
  const valueAt = (at: number) => areaUntil(at + overMin) - areaUntil(at);
  const slopeAt = (at: number) => levelAt(at + overMin) - levelAt(at);
  let best = Math.max(...places.map(valueAt));
  for (const [index, at] of places.entries()) {
    const next = places[index + 1];
    // A window that starts between both holds no more than from the first start to the last end: most stretches need no search.
    if (next === undefined || areaUntil(next + overMin) - areaUntil(at) <= best) continue;
    best = Math.max(best, largestOver(at, next, { valueAt, slopeAt }).value);
  }
  return best / overMin;
}
