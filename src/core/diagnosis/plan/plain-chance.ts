import type { ShownOutcome } from "./option-outcomes.ts";
import type { PlanOption } from "./plan-output.ts";

type Chance = PlanOption["plain"]["chances"][number];

/**
 * A share as people say it: of 10 from 5 % to below 95 %, else of 100; rounded to the nearest whole.
 * @source docs/methods/plan.md C11
 */
export function outOfWords(share: number): string {
  if (share >= 0.995) return "almost all";
  if (share < 0.005) return "almost none";
  if (share >= 0.05 && share < 0.95) return `about ${Math.round(share * 10)} out of 10`;
  return `about ${Math.round(share * 100)} out of 100`;
}

const levels = ["nearest", "near", "wider"] as const;

/**
 * What a patient is told of the published series: of each kind the nearest group, and where series differ the lowest and
 * the highest; implants and bridges apart. A group that differs from this case is never told.
 * @source docs/methods/plan.md C11
 */
export function plainChances(outcomes: readonly ShownOutcome[]): Chance[] {
  const told = outcomes.filter(({ shown, plain }) => shown.nearest !== "other" && plain !== undefined);
  return [...new Set(told.map(groupOf))].flatMap((group) => {
    const those = told.filter((one) => groupOf(one) === group);
    const level = levels.find((one) => those.some(({ shown }) => shown.nearest === one));
    return chancesOf(those.filter(({ shown }) => shown.nearest === level));
  });
}

const groupOf = ({ shown, plain }: ShownOutcome): string =>
  shown.kind === "replacement" ? `${shown.kind} ${plain?.things}` : shown.kind;

/** Series that lie nearer together than 5 points, or are said in the same words, are told as one, by the lowest. */
const apart = 0.05;

function chancesOf(series: readonly ShownOutcome[]): Chance[] {
  const sorted = [...series].sort((a, b) => a.shown.proportion - b.shown.proportion);
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (low === undefined || high === undefined) return [];
  if (high.shown.proportion - low.shown.proportion < apart || outOf(low) === outOf(high))
    return [{ outcome: low.shown.id, says: `${capital(said(low))}.${ending(low)}` }];
  return [
    { outcome: low.shown.id, says: `Studies differ. In one, ${said(low)}.` },
    { outcome: high.shown.id, says: `In another, ${said(high)}.${ending(high)}` },
  ];
}

const outOf = ({ shown }: ShownOutcome): string => outOfWords(shown.proportion);

function said({ shown, plain }: ShownOutcome): string {
  const { things = "teeth", had = shown.what, later = shown.followUp } = plain ?? {};
  const like = shown.nearest === "nearest" && shown.kind !== "replacement" ? " like yours" : "";
  return `${outOfWords(shown.proportion)} ${things}${like} ${had} ${later}`;
}

function ending({ shown }: ShownOutcome): string {
  const unlike = shown.nearest === "nearest" || shown.kind === "replacement" ? "" : " They were not all like yours.";
  if (shown.kind === "retention") return `${unlike} That does not mean that all of them were well.`;
  return shown.kind === "notWorse" ? `${unlike} That does not mean that they had healed.` : unlike;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
