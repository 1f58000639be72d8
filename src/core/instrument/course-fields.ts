import { z } from "zod";
import { curvatureInput } from "../radiograph/curvature/curvature-input.ts";

const traced = z
  .strictObject({
    points: curvatureInput.shape.points,
    sigmaMm: curvatureInput.shape.sigmaMm,
  })
  .describe("A course by its points in mm, orifice first, foramen last; all of a plane or all of space.");

const arc = z
  .strictObject({
    radiusMm: z.number().gt(0).max(1_000).describe("Radius of the arc, in mm."),
    turnDeg: z.number().min(0).max(180).describe("Turn from its beginning to its end, in degrees."),
    startMm: z.number().min(0).max(45).describe("Where the arc begins, in mm from the orifice; straight before it."),
    lengthMm: z.number().gt(0).max(45).describe("Length of the canal from orifice to foramen, in mm."),
  })
  .describe("A course of a straight part, one arc and what is straight after it.");

/** The course of a canal as an input of topics: traced points, or one arc by its numbers. */
export const courseSchema = z.union([traced, arc]).describe("The course of the canal: points, or one arc.");
/** See {@link courseSchema}. */
export type CanalCourse = z.infer<typeof courseSchema>;
/** One arc by its numbers. */
export type ArcCourse = z.infer<typeof arc>;
/** Traced points. */
export type TracedCourse = z.infer<typeof traced>;
