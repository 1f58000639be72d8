import { z } from "zod";
import { intervalSchema, outputParts } from "../basis.ts";
import { instrumentSchema } from "./instrument-fields.ts";
import { measuredMm } from "./measured.ts";

/** What the fit of a fragment is computed from. */
export const fitInput = z.strictObject({
  fragment: z
    .strictObject({
      lengthMm: measuredMm.optional(),
      tipDiameterMm: measuredMm.optional().describe("Diameter that the taper has at the tip, as measured."),
      brokenEndDiameterMm: measuredMm.optional().describe("Diameter at the broken end, as measured."),
    })
    .describe("The fragment as it was measured; a diameter at least."),
  candidates: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(80).optional().describe("Its name in the answer; its number where absent."),
        instrument: instrumentSchema,
      }),
    )
    .min(1)
    .max(60)
    .describe("The instruments that were used."),
  diameterSigmaMm: z
    .number()
    .min(0)
    .max(0.2)
    .optional()
    .describe("Standard deviation of an instrument's diameter about the nominal one; tolerance / 1.96 where absent."),
});
/** See {@link fitInput}. */
export type FitInput = z.infer<typeof fitInput>;

const compared = z.strictObject({
  name: z.enum(["tipDiameterMm", "brokenEndDiameterMm"]),
  measuredMm: z.number(),
  expectedMm: z.number().describe("By the candidate's geometry, in mm."),
  sigmaMm: z.number().describe("Standard deviation of their difference, in mm."),
});

/** What the fit of a fragment comes to. */
export const fitOutput = z.strictObject({
  candidates: z
    .array(
      z.strictObject({
        name: z.string(),
        misfitSd: z.number().optional().describe("How far the measures lie off, in standard deviations."),
        consistent: z.boolean().describe("Whether 95 % of pieces of that instrument would lie no farther off."),
        compared: z.array(compared),
        lengthFromWidth: z
          .strictObject({ mm: z.number(), sigmaMm: z.number(), interval: intervalSchema })
          .optional()
          .describe("Length that the broken end's width speaks for in this instrument."),
        impossible: z.string().optional().describe("Why the piece can't be from it."),
      }),
    )
    .describe("The best fit first."),
  ...outputParts,
});
/** See {@link fitOutput}. */
export type FitOutput = z.infer<typeof fitOutput>;
