import type { Interval } from "../../basis.ts";
import type { BendInTooth } from "./course-reading.ts";
import type { SolvedFilms } from "./solve-films.ts";
import type { BendSideInTooth, LiesSide } from "./two-view-output.ts";

/** A bend nearer to the film's plane than this has no side. */
const leastOutDeg = 10;
/** Two bends that turn opposite ways are both named only where each turns by more than this. */
const leastMixedDeg = 15;
/** A side is told only where this share of what the films allow turns to it. */
const sureShare = 0.8;

type OneSide = Exclude<BendSideInTooth, "mixed">;

/** The side of each bend, and of the course: the largest bend's, or mixed. */
export interface Sides {
  readonly side: BendSideInTooth;
  readonly each: readonly OneSide[];
  /** Which share of what the films allow turns the largest bend to the side to which it is read to turn. */
  readonly sureness: number;
}

/**
 * To which side the bends of a course turn.
 * @source docs/methods/two-view.md C10
 */
export function sidesOf({ reading, draws }: SolvedFilms): Sides {
  const { bends, largest } = reading;
  const sureness = surenessOf(largest, draws);
  const each = bends.map((bend) => (bend === largest && sureness < sureShare ? "undetermined" : sideOf(bend)));
  const clear = bends.flatMap((bend, index) => (bend.angleDeg > leastMixedDeg ? [each[index] ?? "undetermined"] : []));
  const mixed = clear.includes("buccal") && clear.includes("lingual");
  return { side: mixed ? "mixed" : (each[bends.indexOf(largest)] ?? "undetermined"), each, sureness };
}

function sideOf({ planeDeg, outOfFilmDeg }: BendInTooth): OneSide {
  if (planeDeg < leastOutDeg) return "undetermined";
  return outOfFilmDeg > 0 ? "buccal" : "lingual";
}

function surenessOf(largest: BendInTooth, draws: SolvedFilms["draws"]): number {
  const total = draws.reduce((sum, { counts }) => sum + counts, 0);
  const same = draws.filter(({ reading }) => reading.largest.outOfFilmDeg > 0 === largest.outOfFilmDeg > 0);
  return total === 0 ? 1 : same.reduce((sum, { counts }) => sum + counts, 0) / total;
}

/** Where a canal lies whose distance to buccal of a landmark is known by this interval. */
export function liesOf({ low, high }: Interval): LiesSide {
  if (low > 0) return "buccal";
  return high < 0 ? "lingual" : "undetermined";
}
