import { z } from "zod";
import { definePart } from "../part.ts";
import { between, day, line, mmBetween, moment, otherPart, words } from "../values.ts";

const wall = z.strictObject({
  side: z.enum(["furcation", "mesial", "distal", "buccal", "lingual"]),
  mm: mmBetween(0.05, 6).optional().describe("Absent until it is measured."),
});

const tool = z.enum(["ultrasonicTip", "handFile", "tube", "loop", "forceps", "bypassFile", "solvent", "other"]);
const tip = line.describe("Kind, size and setting.");

/** One attempt at a separated instrument, by the clock. */
const removalAttempt = z.strictObject({
  at: moment,
  minutes: between(0, 600, "min"),
  ...{ tool, tip },
  moved: z.enum(["nothing", "loosened", "movedUp", "bypassed", "out", "pushedDown", "brokeAgain", "notRecorded"]),
  note: line,
});

/** The weighing of a separated instrument's removal, the rules set before, what was tried and what came of it. */
export const removalPart = definePart({
  kind: "removal",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    mishap: otherPart,
    on: day,
    headDepthMm: mmBetween(0, 40).optional().describe("Top of the piece along the canal from the orifice."),
    headDiameterMm: mmBetween(0.05, 2).optional(),
    canalDiameterMm: mmBetween(0.05, 3).optional().describe("Of the canal at the head."),
    walls: z.array(wall).max(5).optional().describe("Dentine around the canal at the head."),
    thinnestAlong: z
      .array(z.strictObject({ atMm: mmBetween(0, 40).optional(), side: wall.shape.side, mm: wall.shape.mm }))
      .max(20)
      .optional()
      .describe("Dentine between orifice and head."),
    wallsConfirmed: z.boolean().optional().describe("The person stands by walls thinner than the canal."),
    clearanceMm: mmBetween(0, 1).optional().describe("Room that a tip needs on each side of the head."),
    offCentreMm: mmBetween(0, 2).optional(),
    orificeShiftMm: mmBetween(0, 3).optional().describe("Away from the inner wall of the bend."),
    innerSide: wall.shape.side.optional().describe("Of the bend: where a straight line from the orifice runs to."),
    courseEnds: z.enum(["foramen", "head"]).optional().describe("Where the traced course of the canal ends."),
    stopRules: z
      .strictObject({
        setAt: moment,
        minutes: between(1, 600, "min").optional(),
        attempts: z.int().min(1).max(100).optional(),
        wallLeftMm: mmBetween(0.05, 3).optional(),
        other: line.optional(),
      })
      .optional(),
    attempts: z.array(removalAttempt).max(100),
    running: z
      .strictObject({ since: moment, tool, tip })
      .optional()
      .describe("The attempt that the clock runs for; the record holds its start, so that no closed window loses it."),
    result: z
      .strictObject({
        is: z.enum(["removed", "bypassed", "left", "surgery", "extraction", "referred"]),
        on: day,
        because: words,
      })
      .optional(),
    told: words.optional().describe("What was said to the patient about the ways."),
  }),
});
