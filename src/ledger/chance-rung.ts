import { z } from "zod";

/** The two ends of an interval as an entry holds them. */
export const ends = z.looseObject({ low: z.number(), high: z.number() });
/** A chance as an entry holds it; without an interval where nothing behind it was counted. */
export const chance = z.looseObject({ mean: z.number(), interval: ends.optional() });

/** One rung of a chance step by step, as its drawing takes it. */
export interface ChanceRung {
  readonly label: string;
  readonly says?: string;
  /** Absent where the step could not be reckoned in. */
  readonly chance?: z.infer<typeof chance>;
}
