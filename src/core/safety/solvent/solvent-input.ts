import { z } from "zod";
import { share } from "../../share.ts";

/** The solvents whose numbers are published in data/. */
export const solventNames = ["chloroform", "xylene", "tetrachloroethylene", "limonene", "eucalyptol"] as const;
/** One of {@link solventNames}. */
export type SolventName = (typeof solventNames)[number];

/** How long a limit averages, in minutes; 0 is a ceiling. */
export const averagingSchema = z.union([z.literal(0), z.literal(15), z.literal(60), z.literal(480)]);

const ownLimit = z.strictObject({
  authority: z.string().min(1).max(120).describe("Who set it."),
  year: z.int().min(1900).max(2200).optional(),
  ppm: z.number().gt(0).max(1_000_000).optional().describe("Or mgM3."),
  mgM3: z.number().gt(0).max(10_000_000).optional().describe("Or ppm."),
  averagingMin: averagingSchema.describe("0 for a ceiling, 15, 60 or 480 min."),
  source: z.string().min(1).max(300).describe("Where it is printed."),
});
/** A limit that a person gives. */
export type OwnLimit = z.infer<typeof ownLimit>;

const ownSolvent = z
  .strictObject({
    own: z.string().min(1).max(80).describe("Its name."),
    molarMassGMol: z.number().min(16).max(1_000).describe("In g/mol."),
    densityGMl: z.number().min(0.4).max(4).describe("In g/ml; 1478 kg/m3 is written 1.478."),
    vapourPressureKPa: z.number().gt(0).max(100).describe("At the room's temperature, in kPa."),
    limits: z.array(ownLimit).max(20).describe("Limits that hold for it; empty where none is set."),
  })
  .describe("A solvent by its own numbers.");
const amount = (text: string, most: number) =>
  z
    .union([
      z.number().gt(0).max(most),
      z.strictObject({ low: z.number().gt(0).max(most), high: z.number().gt(0).max(most) }),
    ])
    .describe(`${text} A number, or a range of low and high.`);
/** A number, or a range that it lies in. */
export type RangeOrNumber = number | { readonly low: number; readonly high: number };

const evaporation = z
  .strictObject({
    kind: z
      .enum(["instant", "constant", "firstOrder"])
      .describe("At once; evenly over a time; or by a constant share of what is left."),
    ratePerMin: amount("Share of a dose that goes in a minute: of what is left, or (constant) of the whole.", 10_000)
      .optional()
      .describe("For firstOrder, or for constant in place of overMin; a number or a range."),
    overMin: amount("Minutes that a dose takes.", 1_440).optional().describe("For constant; a number or a range."),
  })
  .describe("How a dose evaporates; first order over an assumed range of rates where absent.");
/** How a dose evaporates. */
export type EvaporationAsked = z.infer<typeof evaporation>;

const extrusion = z.strictObject({
  volumeMl: z.number().min(1e-9).max(50).optional().describe("What passed the foramen, in ml. Or massMg."),
  massMg: z.number().min(1e-6).max(50_000).optional().describe("What passed the foramen, in mg. Or volumeMl."),
  bodyMassKg: z.number().min(2).max(400),
  toxicDoses: z
    .array(
      z.strictObject({
        mgPerKg: z.number().min(1e-9).max(100_000),
        kind: z.enum(["acuteLethal", "acuteEffect", "dailyReference"]),
        source: z.string().min(1).max(300),
      }),
    )
    .max(20)
    .optional()
    .describe("Doses to hold it against, each with its source; what is published for the solvent where absent."),
});
/** What passed the foramen, and into whom. */
export type ExtrusionAsked = z.infer<typeof extrusion>;

/** What the vapour of a solvent, and what passed the foramen, are computed from. */
export const solventInput = z.strictObject({
  solvent: z.union([
    z.enum(solventNames, {
      error: `is none of ${solventNames.join(", ")}; another is given by its own numbers: own, molarMassGMol, densityGMl, vapourPressureKPa, limits`,
    }),
    ownSolvent,
  ]),
  temperatureC: z.number().min(5).max(45).optional().describe("Of the room; 25 where absent."),
  pressureKPa: z.number().min(50).max(110).optional().describe("Of the air; 101.325 where absent."),
  doses: z
    .array(
      z.strictObject({
        atMin: z.number().min(0).max(720).describe("Minutes from the start of the visit."),
        volumeMl: z.number().min(0).max(50).describe("In ml; 100 microlitres are 0.1."),
        recoveredFraction: share
          .optional()
          .describe("Share that suction takes before it evaporates; none where absent."),
      }),
    )
    .max(40)
    .describe("In any order."),
  evaporation: evaporation.optional(),
  room: z.strictObject({
    volumeM3: z.number().min(2).max(5_000).describe("The whole room, in m3."),
    airChangesPerHour: z.number().min(0).max(200).describe("Fresh air a hour in room volumes; 0 is a closed room."),
  }),
  nearField: z
    .strictObject({
      radiusM: z.number().min(0.05).max(2).describe("Of the half sphere round the mouth, in m."),
      airSpeedMPerMin: z.number().gt(0).max(120).describe("Of the air in the room, in m/min; 0.1 m/s is 6."),
    })
    .optional()
    .describe("Air near the mouth apart from the room's; without it the room is mixed throughout."),
  furtherLimits: z
    .array(ownLimit)
    .max(20)
    .optional()
    .describe("Limits that bind where one works, beside the published."),
  otherCases: z
    .array(
      z.strictObject({
        ppm: z.number().min(0).max(10_000).describe("Mean of that time, as breathed."),
        minutes: z.number().gt(0).max(720),
      }),
    )
    .max(40)
    .optional()
    .describe("What else was breathed on this day; enters the 8-hour mean alone."),
  extrusion: extrusion.optional(),
});
/** See {@link solventInput}. */
export type SolventInput = z.infer<typeof solventInput>;
