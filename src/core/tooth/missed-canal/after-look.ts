import type { LookResult } from "./look.ts";

/** The chances of a look's result in a tooth with the feature, and in one without it. */
export interface Chances {
  readonly present: number;
  readonly absent: number;
}

/** The chances of a result, from sensitivity and specificity, each 0 to 1. */
export function chancesOf(result: LookResult, sensitivity: number, specificity: number): Chances {
  const positive = result === "seen" || result === "yes";
  return positive
    ? { present: sensitivity, absent: 1 - specificity }
    : { present: 1 - sensitivity, absent: specificity };
}

/** By what a result multiplies the odds; undefined where it can't be had without the feature. */
export const likelihoodRatio = ({ present, absent }: Chances): number | undefined =>
  absent === 0 ? undefined : present / absent;

/**
 * The chance of the feature after a result; undefined where the result could not have been had at all.
 * Takes the chance before, 0 to 1.
 * @source Bayes' rule; docs/methods/missed-canal, C6
 */
export function afterLook(chance: number, { present, absent }: Chances): number | undefined {
  const together = chance * present + (1 - chance) * absent;
  return together === 0 ? undefined : (chance * present) / together;
}
