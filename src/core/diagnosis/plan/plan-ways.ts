/** The ways a tooth can go, in the order in which they are weighed: from the least done to the most. */
export const planWays = [
  "watch",
  "indirectCapping",
  "directCapping",
  "partialPulpotomy",
  "fullPulpotomy",
  "treat",
  "apicalBarrier",
  "regeneration",
  "retreat",
  "surgery",
  "replantation",
  "extraction",
] as const;
/** One of {@link planWays}. */
export type PlanWay = (typeof planWays)[number];
