import { z } from "zod";
import { intervalSchema, outputParts } from "../basis.ts";
import { breakSigns } from "./break-signs.ts";
import { courseSchema } from "./course-fields.ts";
import { instrumentSchema } from "./instrument-fields.ts";
import { useSchema } from "./life-input.ts";
import { measuredMm } from "./measured.ts";

/** The explanations of a break, in the order in which they are told. */
export const explanationNames = ["bendingFatigue", "torsionalOverload", "flawOrJoint"] as const;
/** One of {@link explanationNames}. */
export type ExplanationName = (typeof explanationNames)[number];

const share = z.number().gt(0).lt(1);
const factor = z.number().gt(0).max(1_000);
const shareRange = (text: string) => z.strictObject({ low: share, high: share }).optional().describe(text);
const factorRange = (text: string) => z.strictObject({ low: factor, high: factor }).optional().describe(text);

/** What a person may put in place of the assumptions: the range of each; the page of the method names all of them. */
const assumptionFields = z.strictObject({
  deformedInTorsion: shareRange("Share of torsional breaks whose flutes are seen to be unwound or wound tighter."),
  deformedInFatigue: shareRange("Share of fatigue breaks whose flutes are; breaks by a flaw are taken alike."),
  bound: factorRange("A bound tip is how many times likelier before a torsional break than before another."),
  notBound: factorRange("A tip that was not bound is how many times likelier; below 1."),
  stopped: factorRange("A stop at the torque limit is how many times likelier before a torsional break."),
  notStopped: factorRange("No stop at the torque limit is how many times likelier; below 1."),
  elsewhere: shareRange("Share of breaks by bending or twisting that lie elsewhere than they are expected."),
  flawHigh: shareRange("Share of breaks by a flaw that lie in the third of the instrument next to its handle."),
  lifeScatter: shareRange("Standard deviation of life between like instruments, as a share of the mean."),
  hardlyBent: factorRange("Fatigue is how many times likelier where the stated canals hardly bend it; below 1."),
  striations: factorRange("Striations are how many times likelier on a fatigue break than on another."),
  severalOrigins: factorRange("Several origins are how many times likelier on a fatigue break."),
  dimples: factorRange("Dimples are how many times likelier on a torsional break."),
  circularAbrasion: factorRange("Circular marks of abrasion are how many times likelier on a torsional break."),
  inclusionOrPore: factorRange("An inclusion or pore at the origin is how many times likelier on a break by a flaw."),
  slope: z
    .strictObject({ strong: z.number().min(-2).max(-0.1), weak: z.number().min(-2).max(-0.1) })
    .optional()
    .describe("Range of the strain-life slope c; the published one, -0.56 to -0.40, where absent."),
  clearanceMm: z
    .strictObject({ low: z.number().min(0).max(1), high: z.number().min(0).max(1) })
    .optional()
    .describe("How much wider than the instrument the canal is where it bends, in mm; 0 to 0.1 where absent."),
  depthSigmaMm: z.number().min(0).max(3).optional().describe("Standard deviation of a depth of the tip, in mm; 0.5."),
});

/** What the explanation of a break is computed from. */
export const fractureInput = z.strictObject({
  instrument: instrumentSchema,
  uses: z
    .array(useSchema)
    .min(1)
    .max(200)
    .optional()
    .describe("Every use of this one instrument, in their order, the one in which it broke among them."),
  course: courseSchema.optional().describe("The course of the canal in which it broke: points, or one arc."),
  tipDepthMm: z
    .number()
    .gt(0)
    .max(45)
    .optional()
    .describe("Depth of the tip along that canal from where the course starts when it broke, in mm."),
  courseStarts: z
    .enum(["orifice", "referencePoint"])
    .optional()
    .describe("Where the course and the depth begin; at the orifice where absent."),
  fragment: z
    .strictObject({
      lengthMm: measuredMm.optional().describe("Length of the piece."),
      brokenEndDiameterMm: measuredMm.optional().describe("Diameter at its broken end."),
      remainingLengthMm: measuredMm
        .optional()
        .describe("What is left of the instrument, from the break to its handle."),
    })
    .describe("How the break's place is known; without a measure only prior and signs weigh."),
  signs: z.array(z.enum(breakSigns)).max(20).describe("What was seen on the piece or on what is left; may be empty."),
  tipBound: z.boolean().optional().describe("Whether the tip was bound when it broke; absent: not known."),
  stoppedAtTorqueLimit: z.boolean().optional().describe("Whether the motor stopped at its limit; absent: not known."),
  flawPrior: shareRange("Share of all breaks that come from a flaw or a joint: an assumption; 0.01 to 0.15."),
  assumed: assumptionFields.optional().describe("A person's own ranges in place of the assumptions."),
});
/** See {@link fractureInput}. */
export type FractureInput = z.infer<typeof fractureInput>;

const ofEach = (text: string) =>
  z.strictObject({ bendingFatigue: z.number(), torsionalOverload: z.number(), flawOrJoint: z.number() }).describe(text);

const explanation = z.strictObject({
  name: z.enum(explanationNames),
  predictedFromTipMm: z
    .strictObject({ mean: z.number(), sd: z.number() })
    .nullable()
    .describe(
      "Where along the instrument it would break, mm from the tip, but for the share elsewhere; null where nothing tells.",
    ),
  places: z
    .array(z.strictObject({ fromTipMm: z.number(), density: z.number() }))
    .describe("The same as a curve, each 0.2 mm, with what lies elsewhere: share of such breaks per mm."),
  fromOrificeMm: z
    .number()
    .optional()
    .describe("Where in the canal the mean would lie, mm from the orifice; absent without a depth of the tip."),
  fromReferenceMm: z.number().optional().describe("The same from the reference point, where the course starts there."),
  likelihood: z.number().describe("Of all that was seen; 1 under the explanation that makes it most likely."),
  prior: z
    .strictObject({
      mean: z.number(),
      n: z.number().optional().describe("Such breaks in the published series together; absent: none counted them."),
      N: z.number().optional().describe("All breaks in those series."),
      source: z.string(),
    })
    .describe("Before anything of this break is seen."),
  posterior: z.strictObject({ mean: z.number(), interval: intervalSchema }),
});

/** What the explanation of a break comes to. */
export const fractureOutput = z.strictObject({
  explanations: z.array(explanation).length(explanationNames.length),
  weighsMost: z.string().describe("The fact that moves the answer most, in one sentence."),
  wouldDecide: z
    .array(z.string())
    .describe("What examination would decide, in sentences; what is told already is left out."),
  fragmentLength: z
    .strictObject({
      mm: z.number(),
      sigmaMm: z.number(),
      percentile: z.number().describe("Share of published lengths that are shorter, 0 to 1, all series weighed alike."),
      source: z.string(),
      measures: z
        .array(
          z.strictObject({
            name: z.enum(["lengthMm", "brokenEndDiameterMm", "remainingLengthMm"]),
            mm: z.number().describe("Length that it gives."),
            sigmaMm: z.number(),
          }),
        )
        .describe("Each measure as a length; `mm` weighs them by how sure they are."),
      series: z.array(
        z.strictObject({
          name: z.string(),
          meanMm: z.number(),
          sdMm: z.number(),
          n: z.number().optional(),
          percentile: z.number().describe("Share of that series that is shorter, were it normal."),
          source: z.string(),
        }),
      ),
    })
    .optional()
    .describe("How long the piece is, and how it stands among published lengths; absent without a measure."),
  breakFromOrificeMm: z
    .number()
    .optional()
    .describe("Where in the canal it broke, mm from the orifice; below 0 above it."),
  breakFromReferenceMm: z
    .number()
    .optional()
    .describe("The same from the reference point, where the course starts there."),
  facts: z
    .array(
      z.strictObject({
        name: z.string(),
        says: z.string(),
        factor: ofEach("Likelihood of this fact under each explanation; 1 under the one it fits best."),
        source: z.string().describe("Id of a source, or what is assumed."),
      }),
    )
    .describe("Every fact that weighs, and what it weighs."),
  priors: z
    .array(
      z.strictObject({
        series: z.string(),
        n: z.number().describe("Torsional breaks."),
        N: z.number().describe("Breaks that the series split into torsional and bending ones."),
        source: z.string(),
        verification: z.enum(["seen", "memory"]),
        posterior: ofEach("What it would be by this series alone."),
      }),
    )
    .describe("The published series, which conflict, each with the answer it alone would give."),
  sensitivity: z
    .array(
      z.strictObject({
        assumption: z.string(),
        says: z.string().describe("What is assumed, with its range."),
        middle: z.number().describe("The value that is halved and doubled."),
        halved: ofEach("Posterior with half of it."),
        doubled: ofEach("Posterior with twice of it; a share stays below 1."),
      }),
    )
    .describe("How the answer moves when each assumption is halved or doubled, all others at their middle."),
  atMiddle: ofEach("Posterior with every assumption at its middle: what the sensitivity starts from."),
  twist: z
    .strictObject({
      usualMm: z.number().describe("Where torsional breaks usually lie, mm from the tip."),
      ofUsualPlace: z.number().describe("Twisting stress at the break as a share of that at the usual place."),
      perNmmMPa: z.number().optional().describe("Twisting stress at the break for each N mm, MPa, elastic."),
      atLimitMPa: z.number().optional().describe("The same at the motor's limit."),
    })
    .optional()
    .describe("What twisting would have done at the break; absent without its place."),
  shifts: z
    .array(
      z.strictObject({
        against: z.string().describe("Another instrument in the same uses."),
        longerMm: z.number().describe("How much longer a fatigue fragment of this instrument is to be expected."),
      }),
    )
    .describe("How the instrument's own geometry shifts its fragments; empty where nothing bends it."),
  ...outputParts,
});
/** See {@link fractureOutput}. */
export type FractureOutput = z.infer<typeof fractureOutput>;
/** A number of each explanation. */
export type OfEach = FractureOutput["atMiddle"];
