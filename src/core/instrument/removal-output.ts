import { z } from "zod";
import { intervalSchema, outputParts } from "../basis.ts";
import { rootSides } from "./removal-input.ts";

/** The ways that can be gone with a separated instrument. */
export const removalWays = ["remove", "bypass", "leave", "surgery", "extraction"] as const;
/** One of {@link removalWays}. */
export type RemovalWay = (typeof removalWays)[number];

const mark = z.enum(["seen", "memory", "common practice"]);
/** How much dentine is left, by the published limits. */
export const gradeSchema = z
  .enum(["through", "critical", "thin", "recommended"])
  .describe("through: none left; critical: below 0.3 mm; thin: from there to below 1 mm; recommended: 1 mm and more.");

const sideOfPath = z.strictObject({
  side: z.enum(rootSides),
  dentineToCutMm: z.number().describe("The most that the straight path takes off this wall."),
  wallMm: z.number().optional().describe("Dentine before, where least is left."),
  wallLeftMm: z.number().optional().describe("The least that is left; below 0 the path leaves the root."),
  atMm: z.number().describe("Where, along the canal from the orifice."),
  grade: gradeSchema.optional(),
});

const sightLine = z.strictObject({
  maxOffsetMm: z.number().describe("Largest distance of the course from the straight line between orifice and head."),
  offsetAtMm: z.number().describe("Where, along the canal from the orifice."),
  dentineToCutMm: z.number().describe("On the side with the least wall left; where no wall is known, the most."),
  wallLeftMm: z.number().optional(),
  atMm: z.number(),
  side: z.enum(rootSides),
  sides: z.array(sideOfPath).describe("Every side of which something is known; the furcation's first."),
  shiftThatLeavesMost: z
    .strictObject({ orificeShiftMm: z.number(), wallLeftMm: z.number() })
    .optional()
    .describe("Of shifts from 0 to 2 mm by 0.1, the smallest that leaves the most of the thinnest wall."),
  path: z.strictObject({
    verdict: z.enum(["refused", "above the limit", "no limit set", "wall not known"]),
    says: z.string(),
  }),
  profile: z
    .array(z.strictObject({ atMm: z.number(), offsetMm: z.number() }))
    .describe("Distance of the line from the canal's axis; above 0 towards the inner wall."),
});

const platform = z.strictObject({
  widthMm: z.number().describe("Head and twice the clearance."),
  wallLeftMm: z.number().optional().describe("The least of all sides."),
  side: z.enum(rootSides).optional(),
  grade: gradeSchema.optional(),
  sides: z.array(
    z.strictObject({ side: z.enum(rootSides), wallMm: z.number(), wallLeftMm: z.number(), grade: gradeSchema }),
  ),
  limits: z.array(
    z.strictObject({
      source: z.string().describe("A folder of data/, or own for the person's."),
      limitMm: z.number(),
      mark: z.enum(["seen", "memory", "own"]),
      stands: z.enum(["below", "above"]).optional().describe("The wall left; from the limit on it is above."),
    }),
  ),
  ring: z
    .strictObject({
      outerMm: z.number().describe("Canal and twice the mean of the known walls."),
      before: z.number().describe("Moment of inertia of the ring, in mm^4."),
      after: z.number(),
      lostShare: z.number().describe("Of it; a platform off the centre takes the wall first and hardly this."),
    })
    .optional(),
});

/** What a group of a published series came to. */
export const chanceSchema = z.strictObject({
  series: z.string().describe("A folder of data/."),
  by: z.enum(["all", "third", "visibility", "bend", "tooth", "curvature", "length", "instrument", "time"]),
  group: z.string(),
  success: z.enum(["removed", "removedOrBypassed", "bypassed", "notStated"]).describe("What the series counted."),
  events: z.int().optional(),
  n: z.int().optional(),
  share: z.number().optional().describe("Absent where only a direction is printed."),
  interval: intervalSchema.optional().describe("Wilson's, where n is known."),
  implied: z.boolean().describe("Whether the counts are the ones that give the printed share."),
  matches: z.enum(["yes", "no", "notKnown"]).describe("Whether this case belongs to the group."),
  inSum: z.boolean().describe("Whether the ways are computed with it."),
  note: z.string().optional(),
  mark,
});

/** A published figure that a way rests on, or that stands beside it. */
export const fromSchema = z.strictObject({
  source: z.string().describe("A folder of data/."),
  says: z.string(),
  column: z.enum(["healed", "kept"]),
  events: z.int().optional(),
  n: z.int().optional(),
  share: z.number(),
  inSum: z.boolean().describe("Whether the sum draws from it, or it only stands beside."),
  note: z.string().optional(),
  mark,
});

const estimate = z.strictObject({ mean: z.number(), interval: intervalSchema });

const way = z.strictObject({
  way: z.enum(removalWays),
  steps: z.string().describe("What it is taken to be, and what follows where it fails."),
  healed: estimate.optional().describe("Periapical healing; none after extraction."),
  kept: estimate.optional().describe("The tooth is still there; 0 after extraction by definition."),
  from: z.array(fromSchema),
});

const driver = z.strictObject({
  way: z.enum(["remove", "bypass", "surgery"]),
  against: z.literal("leave"),
  difference: estimate.describe("Healed by the way less healed by leaving it, as shares."),
  overlap: z.boolean().describe("Whether the intervals of both ways overlap."),
  inputs: z
    .array(
      z.strictObject({
        name: z.string(),
        low: z.number(),
        high: z.number(),
        differenceAtLow: z.number(),
        differenceAtHigh: z.number(),
      }),
    )
    .describe("Each input moved over its own interval, the others at their means; the widest first."),
});

/** What the weighing of a separated instrument's removal comes to. */
export const removalOutput = z.strictObject({
  sightLine: sightLine.optional(),
  platform: platform.optional(),
  place: z
    .strictObject({
      third: z.enum(["coronal", "middle", "apical"]).optional(),
      bend: z.enum(["before", "in", "beyond", "none"]).optional(),
      readFromCourse: z.array(z.enum(["third", "bend"])),
    })
    .describe("Where the head lies, as given or as the course says."),
  removalChance: z.array(chanceSchema).describe("Every published series; the rows that match this case first."),
  visibility: z
    .strictObject({ differencePoints: z.number(), chiSquare: z.number(), p: z.number(), printedP: z.number() })
    .describe("Seen against hidden in the one series that counted both; its P recomputed beside the printed one."),
  perforation: z.strictObject({
    chance: estimate,
    healed: estimate.describe("Of teeth with a sealed perforation."),
    from: z.array(fromSchema),
  }),
  ways: z.array(way).length(removalWays.length),
  figuresDecide: z.boolean().describe("False where the intervals of healing overlap."),
  figuresSay: z.string(),
  drivers: z.array(driver),
  reasons: z.strictObject({ for: z.array(z.string()), against: z.array(z.string()) }).describe("For taking it out."),
  tellPatient: z.array(z.string()),
  ...outputParts,
});
/** See {@link removalOutput}. */
export type RemovalOutput = z.infer<typeof removalOutput>;
