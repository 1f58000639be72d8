import type { Interval } from "../../basis.ts";
import type { BendInTooth, CourseReading } from "./course-reading.ts";
import type { BendSideInTooth, LiesSide } from "./two-view-output.ts";

/** A bend nearer to the film's plane than this, by its plane and by its deflection, has no side. */
export const leastOutDeg = 10;
/** It is taken to be nearer where less than this share of what the films allow turns its plane as far. */
export const likelyShare = 0.25;
/** Two bends that turn opposite ways are both named only where each turns by more than this. */
const leastMixedDeg = 15;
/** A side is told only where this share of what the films allow turns to it. */
const sureShare = 0.8;

type OneSide = Exclude<BendSideInTooth, "mixed">;

/** The bends of a course, and the largest bend of each course that the films allow with how much it counts. */
export interface SidesAsked {
  readonly reading: Pick<CourseReading, "bends" | "largest">;
  readonly draws: readonly { readonly counts: number; readonly reading: Pick<CourseReading, "largest"> }[];
}

/** The side of each bend, and of the course: the largest bend's, or mixed. */
export interface Sides {
  readonly side: BendSideInTooth;
  readonly each: readonly OneSide[];
  /** Which share of what the films allow turns the largest bend to the side to which it is read to turn. */
  readonly sureness: number;
  /** Which share of it turns the largest bend so far out of the film's plane that it has a side. */
  readonly outShare: number;
}

/**
 * To which side the bends of a course turn.
 * @source docs/methods/two-view.md C10
 */
export function sidesOf({ reading, draws }: SidesAsked): Sides {
  const { bends, largest } = reading;
  const sureness = shareOf(draws, (drawn) => drawn.outOfFilmDeg > 0 === largest.outOfFilmDeg > 0);
  const outShare = shareOf(draws, isOut);
  const told = sureness >= sureShare && outShare >= likelyShare;
  const each = bends.map((bend) => sideOf(bend, bend === largest ? told : isOut(bend)));
  const clear = bends.flatMap((bend, index) => (bend.angleDeg > leastMixedDeg ? [each[index] ?? "undetermined"] : []));
  const mixed = clear.includes("buccal") && clear.includes("lingual");
  return { side: mixed ? "mixed" : (each[bends.indexOf(largest)] ?? "undetermined"), each, sureness, outShare };
}

const isOut = ({ planeDeg, outOfFilmDeg }: BendInTooth): boolean =>
  Math.max(planeDeg, Math.abs(outOfFilmDeg)) >= leastOutDeg;

function sideOf({ outOfFilmDeg }: BendInTooth, told: boolean): OneSide {
  if (!told) return "undetermined";
  return outOfFilmDeg > 0 ? "buccal" : "lingual";
}

/** The share of drawn courses whose largest bend is as asked; 1 where none was drawn. */
function shareOf(draws: SidesAsked["draws"], holds: (largest: BendInTooth) => boolean): number {
  const sum = (among: SidesAsked["draws"]): number => among.reduce((all, { counts }) => all + counts, 0);
  const total = sum(draws);
  return total === 0 ? 1 : sum(draws.filter(({ reading }) => holds(reading.largest))) / total;
}

/** Where a canal lies whose distance to buccal of a landmark is known by this interval. */
export function liesOf({ low, high }: Interval): LiesSide {
  if (low > 0) return "buccal";
  return high < 0 ? "lingual" : "undetermined";
}
