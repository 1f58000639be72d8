import type { ZoneName } from "./room-modes.ts";
import type { VapourCourse } from "./vapour-course.ts";
import { areaIn, levelIn, type VapourPiece } from "./vapour-piece.ts";

/** The concentration of one zone over time, as it is read off a course. */
export interface CourseReading {
  /** mg/m3; 0 before the first dose. */
  readonly levelAt: (atMin: number) => number;
  /** Area under the concentration from the first dose on, mg min/m3. */
  readonly areaUntil: (atMin: number) => number;
  /** Where its law changes: the first dose, the ends of pieces, the end. */
  readonly edges: readonly number[];
}

/** Reads one zone of a course; from the first dose to the end. */
export function courseReading({ pieces, startMin, end }: VapourCourse, zone: ZoneName): CourseReading {
  const before: number[] = [];
  let sum = 0;
  for (const piece of pieces) {
    before.push(sum);
    sum += areaIn(piece, zone, piece.lengthMin);
  }
  const read = (atMin: number, of: (piece: VapourPiece, after: number, index: number) => number): number => {
    const index = lastStarted(pieces, atMin);
    const piece = pieces[index];
    if (piece === undefined) return 0;
    return of(piece, Math.min(atMin - piece.startMin, piece.lengthMin), index);
  };
  return {
    levelAt: (atMin) => read(atMin, (piece, after) => levelIn(piece, zone, after)),
    areaUntil: (atMin) => read(atMin, (piece, after, index) => (before[index] ?? 0) + areaIn(piece, zone, after)),
    edges: [startMin, ...pieces.map(({ startMin: at, lengthMin }) => at + lengthMin), end.atMin],
  };
}

/** The last piece that has started; -1 where none has. */
function lastStarted(pieces: readonly VapourPiece[], atMin: number): number {
  let [from, to] = [0, pieces.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((pieces[middle]?.startMin ?? 0) <= atMin) from = middle + 1;
    else to = middle;
  }
  return from - 1;
}
