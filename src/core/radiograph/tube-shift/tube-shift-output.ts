import { z } from "zod";
import { outputParts } from "../../basis.ts";

const reach = {
  outOfFilmHalfWidthDeg: z
    .number()
    .describe("Half of the 95 % interval of how far the largest bend turns out of the film's plane; 90 at the most."),
  hiddenHalfWidthDeg: z
    .number()
    .describe("The same of the hidden part: true angle less the one that the straightest film shows."),
  sideToldShare: z.number().describe("Share of such bends whose side would be told, and rightly: 0 to 1."),
  settles: z
    .boolean()
    .describe("Whether the interval of a bend of the wanted size stays off zero and its side is told in 95 % or more."),
};

/** What each angle of a further film would tell: see docs/methods/tube-shift.md. */
export const tubeShiftOutput = z.strictObject({
  now: z.strictObject(reach).optional().describe("What the films at hand tell already; of one film nothing."),
  candidates: z
    .array(
      z.strictObject({
        horizontalAngleDeg: z.number().describe("0 straight on, above 0 with the tube moved to mesial."),
        ...reach,
      }),
    )
    .describe("By five degrees, from distal to mesial; angles of films at hand are left out."),
  recommended: z
    .strictObject({
      horizontalAngleDeg: z.number(),
      alsoDeg: z.number().optional().describe("The same angle to the other side, where it settles it too."),
      why: z.string(),
    })
    .optional()
    .describe("The angle nearest to straight on that settles it."),
  separation: z
    .array(z.strictObject({ canals: z.string(), atLeastPercent: z.number(), angleDeg: z.number(), source: z.string() }))
    .describe("Published: from which angle so many of canals lying behind each other stand apart."),
  overlap: z
    .array(
      z.strictObject({
        what: z.string(),
        towards: z.enum(["mesial", "distal"]),
        fromDeg: z.number(),
        sdDeg: z.number(),
        source: z.string(),
      }),
    )
    .describe("Published: from which angle a neighbour lies over the root."),
  ...outputParts,
});
/** See {@link tubeShiftOutput}. */
export type TubeShiftOutput = z.infer<typeof tubeShiftOutput>;
/** What films of given angles tell of the bend that is looked for. */
export type ShiftReach = Omit<TubeShiftOutput["candidates"][number], "horizontalAngleDeg">;
