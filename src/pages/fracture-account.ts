import { chanceText, percentText } from "../figures/chance-text.ts";
import type { ExplanationTold, FractureTold } from "../ledger/fracture-told.ts";
import { explanationWords } from "../record/words/mishap-words.ts";
import { withSourceNames } from "./source-name.ts";

/** The explanations of a break, what fits the facts most first. */
export const byPosterior = ({ explanations }: FractureTold): readonly ExplanationTold[] =>
  [...explanations].sort((a, b) => b.posterior.mean - a.posterior.mean);

/** Whether the facts part the first explanation from the next: their intervals do not overlap. */
export function explanationsDecide(told: FractureTold): boolean {
  const [first, second] = byPosterior(told);
  return first !== undefined && second !== undefined && first.posterior.interval.low > second.posterior.interval.high;
}

/**
 * What an entry of the ledger speaks for, in sentences that a resident may take as a beginning of the own account.
 * Takes what the ledger says of a break. Gives whole sentences, each with its numbers; what was not computed is left out.
 */
export function fractureAccount(told: FractureTold): readonly string[] {
  return [
    ...lengthSentence(told),
    consistentSentence(told),
    ...placeSentence(told),
    `What weighs most: ${withSourceNames(told.weighsMost)}`,
    overlapSentence(told),
    ...moved(told),
    ...told.wouldDecide.slice(0, 1).map((what) => `What would decide: ${what}`),
  ];
}

function lengthSentence({ fragmentLength }: FractureTold): string[] {
  if (fragmentLength === undefined) return [];
  const { mm, sigmaMm, percentile } = fragmentLength;
  const among = `${percentText(percentile)} % of published lengths are shorter`;
  return [`The piece is ${mm.toFixed(1)} mm long (SD ${sigmaMm.toFixed(1)} mm); ${among}.`];
}

/** `What was seen is consistent with bending fatigue, 63 % (41 to 82 %), then with ..`. */
function consistentSentence(told: FractureTold): string {
  const [first, ...others] = byPosterior(told).map(
    ({ name, posterior }) => `${explanationWords[name]}, ${chanceText(posterior)}`,
  );
  return `What was seen is consistent most with ${first ?? "no explanation"}; then with ${others.join("; then with ")}.`;
}

function placeSentence({ explanations }: FractureTold): string[] {
  const places = explanations.flatMap(({ name, predictedFromTipMm: at }) =>
    at === null ? [] : [`${explanationWords[name]} ${at.mean.toFixed(1)} mm from the tip (SD ${at.sd.toFixed(1)} mm)`],
  );
  return places.length === 0 ? [] : [`It was to be expected by ${places.join(", by ")}.`];
}

const overlapSentence = (told: FractureTold): string =>
  explanationsDecide(told)
    ? "The interval of the first explanation lies above that of the next, under the assumptions made."
    : "The intervals of the first two explanations overlap: these facts do not decide between them.";

/** Whether another explanation comes first where one assumption is halved or doubled. */
function moved({ sensitivity, atMiddle }: FractureTold): string[] {
  if (sensitivity.length === 0) return [];
  const first = largest(atMiddle);
  const turning = sensitivity.filter(({ halved, doubled }) => largest(halved) !== first || largest(doubled) !== first);
  const all = sensitivity.length;
  return [
    turning.length === 0
      ? `Halving or doubling any one of ${all} assumptions puts no other explanation first.`
      : `Halving or doubling one assumption puts another explanation first for ${turning.length} of ${all}.`,
  ];
}

const largest = (of: FractureTold["atMiddle"]): string | undefined =>
  Object.entries(of).sort(([, a], [, b]) => b - a)[0]?.[0];
