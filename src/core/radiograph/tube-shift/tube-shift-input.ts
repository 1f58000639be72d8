import { z } from "zod";
import { viewInput } from "../two-view/two-view-input.ts";

const reach = (side: string) =>
  z
    .number()
    .min(0)
    .max(40)
    .default(40)
    .describe(`How far the tube can be moved to ${side} of straight on, in degrees.`);

/** What the next film's angle is worked out from: the films at hand, and what is to be settled. */
export const tubeShiftInput = z.strictObject({
  views: z
    .array(viewInput)
    .max(11)
    .describe("The films at hand, at least 1, each with its horizontal angle; as twoView takes them."),
  receptor: z
    .enum(["turnsWithBeam", "fixed", "unknown"])
    .default("turnsWithBeam")
    .describe("How the receptor was held, and will be for the next film."),
  sigmaMm: z.number().gt(0).max(5).describe("Standard deviation of a point in u and in v."),
  scaleRelativeSigma: z.number().min(0).max(0.5).default(0).describe("Standard deviation of a scale as a share of it."),
  angleSigmaDeg: z.number().min(0).max(20).default(1).describe("Standard deviation of a horizontal angle."),
  wanted: z
    .strictObject({
      outOfFilmDeg: z
        .number()
        .min(10)
        .max(60)
        .default(20)
        .describe("A bend that turns so far out of the film's plane is to be told from none, and its side named."),
    })
    .prefault({}),
  reachDeg: z.strictObject({ mesial: reach("mesial"), distal: reach("distal") }).prefault({}),
});
/** See {@link tubeShiftInput}. */
export type TubeShiftInput = z.infer<typeof tubeShiftInput>;
