import { z } from "zod";
import { outputParts } from "../../basis.ts";

const published = z.strictObject({
  riseCelsius: z.number().describe("Mean rise over the start, in degrees C."),
  sd: z.number().optional(),
  where: z.enum(["fragment", "post", "rootSurface"]).describe("Where it was measured."),
  seconds: z.strictObject({ low: z.number(), high: z.number() }).describe("How long it was worked."),
  conditions: z.string(),
  differs: z.array(z.string()).describe("What of this burst is other than there; empty where all of it is the same."),
  source: z.string(),
  mark: z.enum(["seen", "memory"]),
});
/** What a published table says for a condition near a burst's. */
export type PublishedRise = z.infer<typeof published>;

const run = z.strictObject({
  seconds: z.number(),
  bursts: z.array(z.int()).describe("Places in the input, from 0; more than one where no rest lay between."),
});
/** Bursts with no rest between. */
export type Run = z.infer<typeof run>;

/** How long the tip worked, and what published tables say of conditions near by; no temperature of this tooth. */
export const ultrasonicHeatOutput = z.strictObject({
  totals: z.strictObject({
    bursts: z.int(),
    activeSeconds: z.number(),
    drySeconds: z.number().describe("Of these, without a coolant."),
    restSeconds: z.number().describe("Between the bursts; not after the last."),
  }),
  longestBurst: run.optional().describe("With or without a coolant; absent without a burst."),
  longestDryBurst: run.optional().describe("Without a coolant; absent where each had one."),
  bursts: z.array(z.strictObject({ published: z.array(published) })).describe("One for each burst, the nearest first."),
  threshold: z
    .strictObject({ celsius: z.number(), seconds: z.number(), riseCelsius: z.number() })
    .describe("From which bone was injured, and the rise from 37 degrees that it is."),
  ...outputParts,
});
/** See {@link ultrasonicHeatOutput}. */
export type UltrasonicHeatOutput = z.infer<typeof ultrasonicHeatOutput>;
