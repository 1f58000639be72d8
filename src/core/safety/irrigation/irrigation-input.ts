import { z } from "zod";

/** Solutions whose clashes are known. */
export const solutionNames = [
  "sodium hypochlorite",
  "EDTA",
  "chlorhexidine",
  "citric acid",
  "maleic acid",
  "phosphoric acid",
  "hydrogen peroxide",
  "iodine",
  "saline",
  "ethanol",
  "sterile water",
] as const;
/** One of {@link solutionNames}. */
export type SolutionName = (typeof solutionNames)[number];

const solution = z
  .union([z.enum(solutionNames), z.strictObject({ own: z.string().min(1).max(80) })])
  .describe("By name; another one as own, whose clashes are not known.");
/** A solution by its name. */
export type SolutionAsked = z.infer<typeof solution>;

const needle = z
  .strictObject({
    depthFromStopMm: z.number().min(0).max(30).describe("How far its tip stays short of the stop, in mm."),
    sideVented: z.boolean().describe("true: closed end with a side vent; false: open end."),
    gauge: z.int().min(18).max(36).optional(),
    flowMlPerMin: z
      .number()
      .min(0)
      .max(120)
      .optional()
      .describe("As it was pressed; else at least volume over minutes."),
    freeMovement: z.boolean().optional().describe("false: it was locked in the canal."),
  })
  .describe("Where and how the needle stood.");
/** How a needle stood. */
export type Needle = z.infer<typeof needle>;

const step = z.strictObject({
  solution,
  percent: z.number().gt(0).max(100).optional().describe("5.25 for 5.25 %."),
  volumeMl: z.number().min(0).max(200),
  minutes: z.number().min(0).max(240).describe("Minutes of contact."),
  activated: z.boolean().optional(),
  needle: needle.optional(),
});
/** One solution in the sequence. */
export type Step = z.infer<typeof step>;

const protocolLine = z.strictObject({
  solution,
  minutesAtLeast: z.number().min(0).max(240).optional(),
  minutesAtMost: z.number().min(0).max(240).optional(),
  volumeMlAtLeast: z.number().min(0).max(500).optional(),
});
/** What the clinic wants of one solution. */
export type ProtocolLine = z.infer<typeof protocolLine>;

/** What irrigants that must not meet, needles and contact times are judged from. */
export const irrigationInput = z.strictObject({
  sequence: z.array(step).max(100).describe("In the order of use."),
  settings: z
    .strictObject({
      rinse: z
        .strictObject({ volumeMl: z.number().min(0).max(100), minutes: z.number().min(0).max(60) })
        .optional()
        .describe("What a rinse needs at least to keep two solutions apart; 2 ml over 1 min where absent."),
      openEndedMm: z.number().min(0).max(20).optional().describe("Least distance of an open needle; 3 where absent."),
      sideVentedMm: z.number().min(0).max(20).optional().describe("Of a closed, side-vented one; 2 where absent."),
      flowMlPerMin: z.number().gt(0).max(60).optional().describe("Flow that is not to be passed; 3 where absent."),
      protocol: z.array(protocolLine).max(20).optional().describe("Contact times and volumes of the clinic."),
    })
    .optional()
    .describe("The clinic's own; no published figure settles them."),
  root: z
    .strictObject({
      openApex: z.boolean().optional(),
      resorption: z.boolean().optional(),
      perforation: z.boolean().optional(),
    })
    .optional(),
  bondingNext: z.boolean().optional().describe("Whether dentine is bonded after the last solution."),
  iodineAllergy: z.boolean().optional(),
});
/** See {@link irrigationInput}. */
export type IrrigationInput = z.infer<typeof irrigationInput>;
