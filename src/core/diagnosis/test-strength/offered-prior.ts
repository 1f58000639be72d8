import balevi from "../../../../data/balevi-2019/source.json" with { type: "json" };

/**
 * The share of non-vital pulps at which a review put its predictive values on one footing: a start that may be offered, and
 * is never taken by itself.
 * @source Balevi B, Evid Based Dent 2019;20:22-23 (seen)
 */
export const offeredPrior = {
  share: balevi.prevalence,
  reference: balevi.reference,
  verification: balevi.verification,
} as const;
