import { z } from "zod";
import { outputParts } from "../../basis.ts";
import { averagingSchema } from "./solvent-input.ts";

const level = { mgM3: z.number().describe("In mg/m3."), ppm: z.number() };
const mark = z.enum(["seen", "memory", "own"]);

/** The least and the most over the rates of evaporation. */
const within = z
  .strictObject({ low: z.strictObject(level), high: z.strictObject(level) })
  .optional()
  .describe("Least and most over the range of rates; absent where one rate is given.");

const mean = z.strictObject({ ...level, within });
/** A concentration, or the worst running mean of one. */
export type Level = z.infer<typeof mean>;

const zone = z.strictObject({
  peak: z.strictObject({ ...level, atMin: z.number().describe("When, in minutes."), within }),
  mean15: mean.describe("The worst running mean over 15 min."),
  mean60: mean.describe("Over 60 min."),
  mean480: mean.describe("Over 480 min, nothing before the first dose; with the day's other cases."),
  upperBound: z.boolean().describe("Whether a dose enters at once, so that the peak can only be lower."),
  series: z.array(
    z.strictObject({
      tMin: z.number(),
      mgM3: z.number(),
      lowMgM3: z.number().optional().describe("Over the range of rates."),
      highMgM3: z.number().optional(),
    }),
  ),
  means: z
    .array(
      z.strictObject({
        averagingMin: z.union([z.literal(15), z.literal(60), z.literal(480)]),
        series: z.array(
          z.strictObject({
            tMin: z.number(),
            ...level,
            lowPpm: z.number().optional().describe("Over the range of rates."),
            highPpm: z.number().optional(),
          }),
        ),
      }),
    )
    .describe(
      "Each running mean over the minutes before a time, at as many times as straight lines need to be within 2 %, to seven figures.",
    ),
});
/** One zone of the room. */
export type Zone = z.infer<typeof zone>;

/** How a zone stands to one limit. */
export const limitRowSchema = z.strictObject({
  authority: z.string(),
  year: z.int().optional().describe("Of the table that was read; absent where it states none."),
  ...level,
  averagingMin: averagingSchema.describe("0 for a ceiling."),
  kind: z.enum(["ceiling", "shortTerm", "timeWeighted"]),
  zone: z.enum(["far", "near"]),
  value: z.strictObject(level).describe("Peak or worst running mean of that averaging time."),
  ratio: z.number().describe("Value in the limit."),
  ratioWithin: z.strictObject({ low: z.number(), high: z.number() }).optional(),
  passed: z.boolean().describe("Whether the value is above the limit; over a range of rates, its upper end."),
  stands: z.enum(["below", "at", "above", "dependsOnRate"]),
  source: z.string().describe("A folder of data/, or what the person named."),
  mark,
  note: z.string().optional(),
});
/** See {@link limitRowSchema}. */
export type LimitRow = z.infer<typeof limitRowSchema>;

const sided = z.strictObject({
  says: z.string(),
  source: z.string(),
  mark: z.enum(["seen", "memory", "common practice"]),
});

const extrusion = z.strictObject({
  massMg: z.number(),
  doseMgPerKg: z.number(),
  margins: z
    .array(
      z.strictObject({
        kind: z.enum(["acuteLethal", "acuteEffect", "dailyReference"]),
        mgPerKg: z.number(),
        margin: z.number().describe("How many times the dose lies below; under 1 it lies above."),
        source: z.string(),
        mark,
      }),
    )
    .describe("The lowest first."),
  tradition: z
    .strictObject({
      says: z.string(),
      impliedMgPerKg: z.strictObject({ low: z.number(), high: z.number() }),
      mark: z.literal("common practice"),
    })
    .describe("What is often said, and the toxic dose that it would imply for this amount."),
  measured: z.array(sided).describe("What was measured in extracted teeth."),
});

const massBalance = z.strictObject({
  dispensedMg: z.number(),
  ventilatedMg: z.number().describe("Left with the air."),
  inAirMg: z.number().describe("Still in the room's air."),
  recoveredMg: z.number().describe("Taken by suction."),
  notEvaporatedMg: z.number(),
  atMin: z.number().describe("When this holds, in minutes."),
});

/** What the vapour of a solvent, and what passed the foramen, come to. */
export const solventOutput = z.strictObject({
  far: zone.describe("The room; without a near field all of it."),
  near: zone.optional().describe("The air near the mouth: dentist, assistant and patient."),
  limits: z.array(limitRowSchema).describe("Every limit in each zone, the strictest first."),
  volumeAtFirstLimitMl: z
    .number()
    .optional()
    .describe("Dispensed in all, at the same times, when the first limit is met."),
  firstLimit: z
    .strictObject({
      authority: z.string(),
      averagingMin: averagingSchema,
      zone: z.enum(["far", "near"]),
      volumeWithinMl: z.strictObject({ low: z.number(), high: z.number() }).optional(),
    })
    .optional()
    .describe("Which limit that is, and the volume over the range of rates."),
  carcinogen: z.array(sided).describe("How the solvent is classed, by whom."),
  extrusion: extrusion.optional(),
  massBalance,
  evaporation: z.strictObject({
    kind: z.enum(["instant", "constant", "firstOrder"]),
    ratePerMin: z.number().optional().describe("The middle of the range, or the one given."),
    within: z.strictObject({ low: z.number(), high: z.number() }).optional(),
    origin: z.enum(["given", "assumed"]),
  }),
  saturationMgM3: z.number().describe("The most that the air can hold."),
  practicePoints: z
    .array(z.strictObject({ says: z.string(), conflicting: z.boolean(), evidence: z.array(sided) }))
    .describe("To be known beside the sums."),
  ...outputParts,
});
/** See {@link solventOutput}. */
export type SolventOutput = z.infer<typeof solventOutput>;
