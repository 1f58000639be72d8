import type { TubeShiftInput } from "./tube-shift-input.ts";
import type { TubeShiftOutput } from "./tube-shift-output.ts";

type Candidate = TubeShiftOutput["candidates"][number];

/**
 * The angle nearest to straight on that settles what is wanted; of two, the surer by a degree, else that from mesial; undefined where none does.
 * @source own rule, docs/methods/tube-shift.md C5
 */
export function adviseShift(
  candidates: readonly Candidate[],
  { wanted }: Pick<TubeShiftInput, "wanted">,
): TubeShiftOutput["recommended"] {
  const serving = candidates.filter(({ settles }) => settles);
  const [best] = serving.toSorted(
    (a, b) => turnOf(a) - turnOf(b) || roundedHalf(a) - roundedHalf(b) || b.horizontalAngleDeg - a.horizontalAngleDeg,
  );
  if (best === undefined) return undefined;
  const also = serving.find((one) => one !== best && turnOf(one) === turnOf(best));
  const smaller = candidates.findLast(
    (one) =>
      Math.sign(one.horizontalAngleDeg) === Math.sign(best.horizontalAngleDeg) && turnOf(one) === turnOf(best) - 5,
  );
  const told = `a bend of ${wanted.outOfFilmDeg} degrees out of the film's plane would be read to ${half(best)} degrees, and its side told in ${percent(best)} of such bends`;
  const less =
    smaller === undefined ? "" : `; ${turnOf(smaller)} degrees leave ${half(smaller)} and ${percent(smaller)}`;
  return {
    horizontalAngleDeg: best.horizontalAngleDeg,
    ...(also === undefined ? {} : { alsoDeg: also.horizontalAngleDeg }),
    why: `At ${turnOf(best)} degrees ${told}${less}.`,
  };
}

const turnOf = ({ horizontalAngleDeg }: Candidate): number => Math.abs(horizontalAngleDeg);
const roundedHalf = ({ outOfFilmHalfWidthDeg }: Candidate): number => Math.round(outOfFilmHalfWidthDeg);
const half = ({ outOfFilmHalfWidthDeg }: Candidate): string => `\u00b1 ${outOfFilmHalfWidthDeg.toFixed(0)}`;
const percent = ({ sideToldShare }: Candidate): string => `${Math.floor(100 * sideToldShare)} %`;
