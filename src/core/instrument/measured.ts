import { z } from "zod";

/** A length that was measured, with its standard deviation, both in mm. */
export const measuredMm = z
  .strictObject({
    value: z.number().gt(0).max(60).describe("What was measured, in mm."),
    sigma: z.number().gt(0).max(5).describe("Its standard deviation, in mm."),
  })
  .describe("A measured length with its standard deviation, in mm.");
/** See {@link measuredMm}. */
export type Measured = z.infer<typeof measuredMm>;
