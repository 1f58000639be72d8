import balevi2019 from "../../../data/balevi-2019/source.json" with { type: "json" };

/**
 * A published share of teeth with a non-vital pulp before any test, to be offered and never taken by itself.
 * Gives the share, where it was read and whether it was seen.
 * @source Balevi B. Cold pulp testing is the simplest and most accurate of all dental pulp sensibility tests (commentary). Evid Based Dent 2019;20(1):22-23 (seen)
 */
export const publishedPrior = {
  share: balevi2019.prevalence,
  reference: balevi2019.reference,
  verification: balevi2019.verification,
} as const;
