import { offeredPrior } from "../core/diagnosis/test-strength/offered-prior.ts";
import type { BodyOf } from "./parts.ts";

type Prior = NonNullable<BodyOf<"findings">["prior"]>;

/** A prior that a person can take with one press, and what it is. */
export interface PriorOffer {
  readonly says: string;
  readonly prior: Pick<Prior, "share" | "from"> & { readonly share: number };
}

/**
 * The published shares that are offered as a prior for the strength of tests; none is taken by itself.
 * @source Balevi B, Evid Based Dent 2019;20(1):22-23 (seen)
 */
export const priorOffers: readonly PriorOffer[] = [
  {
    says: "the share of non-vital pulps at which a review of 28 studies put its predictive values on one footing",
    prior: { share: offeredPrior.share, from: `${offeredPrior.reference} (${offeredPrior.verification})` },
  },
];
