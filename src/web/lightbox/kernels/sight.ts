import { z } from "zod";

/** How many times the loupe can enlarge. */
const loupeTimes = [2, 3, 4, 6] as const;

const sight = z.object({
  grid: z.boolean().default(false),
  /** 0 without a loupe. */
  loupe: z.union([z.literal(0), ...loupeTimes.map((times) => z.literal(times))]).default(0),
  marks: z.boolean().default(true),
  /** The films of several panes are moved together. */
  linked: z.boolean().default(true),
  /** The films of several panes are shown under the like of one window and look. */
  oneWindow: z.boolean().default(false),
});

/** What lies over the films for the person who looks, whichever film it is. */
export type Sight = z.infer<typeof sight>;

/** Films and marks, and nothing over them. */
export const usualSight: Sight = sight.parse({});

/** What was kept, or the usual where it is not readable; hidden marks are shown again, so that nobody misses them. */
export function sightFrom(kept: string | null): Sight {
  try {
    return { ...sight.parse(JSON.parse(kept ?? "{}")), marks: true };
  } catch {
    return usualSight;
  }
}

/** The next strength of the loupe, and after the strongest none. */
export function nextLoupe(now: Sight["loupe"]): Sight["loupe"] {
  return loupeTimes.find((times) => times > now) ?? 0;
}
