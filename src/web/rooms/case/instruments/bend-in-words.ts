import type { BendTold } from "../../../../ledger/bend-told.ts";

/** Where a course begins, in words. */
export const startWords: Readonly<Record<BendTold["startsAt"], string>> = {
  orifice: "the orifice",
  referencePoint: "the reference point",
};

/** What a value says about the true one. */
export const boundWords: Readonly<Record<BendTold["bounds"][number]["bound"], string>> = {
  asMeasured: "as measured, within its interval",
  lower: "no less than this",
  upper: "no more than this",
  none: "no bound",
};

/** What the largest strain says about the true one, with its reason. */
export function boundOfStrain({ bounds }: Pick<BendTold, "bounds">): string {
  const found = bounds.find(({ name }) => name === "peakStrain");
  return found === undefined ? "no bound" : `${boundWords[found.bound]}: ${found.why}`;
}
