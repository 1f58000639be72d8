import { type Alignment, alignFilms } from "./align-films.ts";
import { type AnswerValues, answerValues } from "./answer-values.ts";
import type { Receptor } from "./camera.ts";
import { holdLevels } from "./hold-levels.ts";
import { type Paired, pairPoints } from "./pair-points.ts";
import { type AngleKnown, type LevelView, readyViews } from "./ready-views.ts";
import { receptorCautions } from "./receptor-check.ts";
import { type Sides, sidesOf } from "./sides.ts";
import { type SolvedFilms, solveFilms } from "./solve-films.ts";
import type { TwoViewInput } from "./two-view-input.ts";

/** A film shift under which no side is told, in degrees. */
export const leastVerdictDeg = 10;
const usualSigmaMm = 0.05;

/** The values of the output that one kind of receptor gives. */
export interface ReceptorAnswer {
  readonly receptor: Receptor;
  readonly solved: SolvedFilms;
  readonly sides: Sides;
  readonly alignments: readonly Alignment[];
  readonly paired: Paired;
  /** How far heights were moved for the levels that a person fixed, in mm. */
  readonly mostMovedMm: number;
  readonly anglesDeg: readonly number[];
  readonly shiftDeg: number;
  readonly receptorCautions: readonly string[];
  readonly values: AnswerValues;
}

/** Everything that the films give for one kind of receptor. */
export function answerFor(
  input: TwoViewInput,
  level: readonly LevelView[],
  angles: readonly AngleKnown[],
  { receptor, sources }: { receptor: Receptor; sources: readonly string[] },
): ReceptorAnswer {
  const sigmaMm = input.sigmaMm ?? usualSigmaMm;
  const { films, alignments } = alignFilms(readyViews(input, level, angles, receptor), sigmaMm);
  const held = holdLevels(films);
  const paired = pairPoints(held.films, sigmaMm);
  const solved = solveFilms(paired.films, input.sigmaMm);
  const anglesDeg = angles.map(({ angleDeg }) => angleDeg);
  const shiftDeg = Math.max(...anglesDeg) - Math.min(...anglesDeg);
  const sides = sidesOf(solved);
  const values = answerValues(input, solved, { anglesDeg, sides, verdict: shiftDeg >= leastVerdictDeg, sources });
  return {
    ...{ receptor, solved, sides, alignments, paired, anglesDeg, shiftDeg, mostMovedMm: held.mostMovedMm },
    receptorCautions: receptorCautions(paired.films, input, solved.sigmaMm),
    values,
  };
}
