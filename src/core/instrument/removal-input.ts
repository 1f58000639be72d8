import { z } from "zod";
import { courseSchema } from "./course-fields.ts";
import { instrumentSchema } from "./instrument-fields.ts";

/** Sides of a root; furcation is the one that faces the other roots. */
export const rootSides = ["furcation", "mesial", "distal", "buccal", "lingual"] as const;
/** One of {@link rootSides}. */
export type RootSide = (typeof rootSides)[number];
/** Wall that a straight line from the orifice is taken to run towards where none is told. */
export const assumedInnerSide = "furcation" satisfies RootSide;

const wall = z.strictObject({
  side: z.enum(rootSides),
  mm: z.number().gt(0).max(6).describe("Dentine from the canal to the root's surface, in mm."),
});
const depthMm = z.number().min(0).max(45);

/** What the weighing of a separated instrument's removal is computed from; whatever is absent is told as missing. */
export const removalInput = z.strictObject({
  fragment: z.strictObject({
    lengthMm: z.number().gt(0).max(40).optional(),
    headDepthMm: z
      .number()
      .gt(0)
      .max(45)
      .optional()
      .describe("Its coronal end along the canal from the orifice, in mm."),
    headDiameterMm: z.number().gt(0).max(2).optional(),
  }),
  course: courseSchema.optional(),
  courseEnds: z
    .enum(["foramen", "head"])
    .optional()
    .describe("Where the course ends; at the foramen where absent. Thirds and bend are read from it only then."),
  orificeShiftMm: z
    .number()
    .min(0)
    .max(3)
    .optional()
    .describe("How far the orifice is moved away from the inner wall of the bend, in mm; 0 where absent."),
  innerSide: z
    .enum(rootSides)
    .optional()
    .describe("Wall towards which a straight line from the orifice runs; the furcation's where absent."),
  canalDiameterMm: z.number().gt(0).max(3).optional().describe("Of the canal at the head, and taken along the way."),
  walls: z.array(wall).max(5).optional().describe("Dentine around the canal at the head."),
  thinnestAlong: z
    .array(wall.extend({ atMm: depthMm.describe("Along the canal from the orifice, in mm.") }))
    .max(20)
    .optional()
    .describe("Dentine between orifice and head."),
  wallsConfirmed: z.boolean().optional().describe("Whether a person stands by walls that are thinner than the canal."),
  clearanceMm: z.number().min(0).max(1).optional().describe("Room that a tip needs on each side of the head, in mm."),
  offCentreMm: z.number().min(0).max(2).optional().describe("How far the platform lies off the canal; 0 where absent."),
  limits: z
    .strictObject({
      wallLeftMm: z.number().gt(0).max(3).optional().describe("A path that leaves less is refused."),
      minutes: z.number().gt(0).max(600).optional().describe("The rule set before for the time of an attempt."),
    })
    .optional()
    .describe("What a person has set for this attempt; without them nothing is refused."),
  headSeen: z.enum(["seen", "hidden", "notLooked"]).optional().describe("Under the microscope."),
  third: z.enum(["coronal", "middle", "apical"]).optional().describe("Of the canal, in which the head lies."),
  bend: z.enum(["before", "in", "beyond", "none"]).optional().describe("Where the head lies to the canal's bend."),
  curvatureDeg: z.number().min(0).max(180).optional().describe("Of the canal, as it was measured."),
  stage: z
    .enum(["beforeCleaning", "partlyCleaned", "cleaned", "notRecorded"])
    .optional()
    .describe("Of this canal when the instrument broke."),
  lesion: z.enum(["present", "absent"]).optional().describe("A radiolucency before treatment."),
  minutesSpent: z.number().min(0).max(6_000).optional().describe("On attempts until now."),
  toothType: z.enum(["anterior", "premolar", "molar"]).optional(),
  alloy: instrumentSchema.shape.alloy.describe("Of the fragment."),
  movement: instrumentSchema.shape.movement.describe("Of the instrument."),
  draws: z.int().min(200).max(100_000).optional().describe("Seeded draws for the intervals; 4000 where absent."),
  seed: z.int().min(0).max(4_294_967_295).optional().describe("Of the draws; 1 where absent."),
});
/** See {@link removalInput}. */
export type RemovalInput = z.infer<typeof removalInput>;
