import { z } from "zod";
import { outputParts } from "../../basis.ts";

const total = z.strictObject({
  solution: z.string(),
  volumeMl: z.number(),
  minutes: z.number(),
  activatedMinutes: z.number().describe("Of these, with activation."),
});
/** All of one solution. */
export type Total = z.infer<typeof total>;

const clash = z.strictObject({
  first: z.string(),
  second: z.string(),
  steps: z.tuple([z.int(), z.int()]).describe("Their places in the sequence, from 0."),
  rinse: z
    .strictObject({ volumeMl: z.number(), minutes: z.number() })
    .describe("What lay between, too little to keep them apart; 0 and 0 where nothing did."),
  what: z.string(),
  remedy: z.string(),
  source: z.string().describe("Folders of data/, or common practice."),
  mark: z.enum(["seen", "memory", "common practice"]),
  worstCase: z
    .strictObject({ chlorineMg: z.number(), chlorineMl: z.number().describe("As gas at 25 C and 101.325 kPa.") })
    .optional()
    .describe("Chlorine of hypochlorite with acid, were all of it to react."),
});
/** Two solutions that met. */
export type Clash = z.infer<typeof clash>;

const protocol = z.strictObject({
  solution: z.string(),
  what: z.enum(["minutesAtLeast", "minutesAtMost", "volumeMlAtLeast"]),
  wanted: z.number(),
  found: z.number(),
  stands: z.enum(["below", "at", "above"]),
  met: z.boolean(),
});
/** How a total stands to the clinic's protocol. */
export type ProtocolRow = z.infer<typeof protocol>;

const setting = z.strictObject({ value: z.number(), from: z.enum(["input", "default"]) });
/** A setting and where it is from. */
export type Setting = z.infer<typeof setting>;

/** What met, what was used, and what to keep in mind. */
export const irrigationOutput = z.strictObject({
  totals: z.array(total).describe("In the order of their first use."),
  clashes: z.array(clash),
  protocol: z.array(protocol).optional(),
  settings: z
    .strictObject({
      rinseVolumeMl: setting,
      rinseMinutes: setting,
      openEndedMm: setting,
      sideVentedMm: setting,
      flowMlPerMin: setting,
    })
    .describe("What was used."),
  ...outputParts,
});
/** See {@link irrigationOutput}. */
export type IrrigationOutput = z.infer<typeof irrigationOutput>;
