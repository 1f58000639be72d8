import type { WayShares } from "./way-inputs.ts";

/** The ways after which the bone may heal. */
export const healingWays = ["remove", "bypass", "leave", "surgery"] as const;
/** One of {@link healingWays}. */
export type HealingWay = (typeof healingWays)[number];

/**
 * The share that heals by each way, from the shares that it rests on.
 * Takes shares, 0 to 1. Each is linear in each of them, so that means give the mean where they are independent.
 * @source docs/methods/removal.md C12
 */
export const healedBy: Readonly<Record<HealingWay, (shares: WayShares) => number>> = {
  remove: ({ gain, perforation, sealed, left, free }) =>
    (1 - perforation) * (left + gain * (free - left)) + perforation * sealed * left,
  bypass: ({ bypass, worth, left, free }) => left + bypass * worth * (free - left),
  leave: ({ left }) => left,
  surgery: ({ surgery }) => surgery,
};

/** The share of teeth that are still there, by each way. @source docs/methods/removal.md C11 */
export const keptBy: Readonly<Record<HealingWay, (shares: WayShares) => number>> = {
  remove: ({ kept }) => kept,
  bypass: ({ kept }) => kept,
  leave: ({ kept }) => kept,
  surgery: ({ keptAfterSurgery }) => keptAfterSurgery,
};
