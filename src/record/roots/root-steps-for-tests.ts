import type { CanalRoot } from "../../core/tooth/canal-root.ts";
import { teeth } from "../../core/tooth/teeth.ts";
import type { RootStep, RootsInHand } from "./root-step.ts";

const toothOf = (twoDigit: string) => {
  const found = teeth.find((tooth) => tooth.twoDigit === twoDigit);
  if (found === undefined) throw new Error(twoDigit);
  return found;
};

/** Roots in hand, with a level of one of them chosen. */
export const hand = (twoDigit: string, roots: readonly CanalRoot[], root = 0, level = 0): RootsInHand => ({
  tooth: toothOf(twoDigit),
  roots,
  at: { root, level },
});

/** A step that was done. */
export function done(step: RootStep) {
  if ("cannot" in step) throw new Error(step.cannot);
  return step;
}

/** Why a step can't be done; empty where it was. */
export const why = (step: RootStep): string => ("cannot" in step ? step.cannot : "");
