import { z } from "zod";
import { outputParts } from "../../basis.ts";
import { pictureNumbers } from "../picture-numbers.ts";

const size = z.int().min(1).max(20_000);

/** A place on a film as [u, v], pixels to the right and down; (0,0) is the centre of the first pixel. */
const filmPlace = z.tuple([z.number(), z.number()]);

/** Where a course begins and ends, and what it passes. */
export const tracePlaces = {
  from: filmPlace.describe("Where the course begins, [u,v] in px: the orifice."),
  to: filmPlace.describe("Where it ends: the apex."),
  via: z.array(filmPlace).max(60).default([]).describe("Places that it passes, in order."),
};

/** A course to find, and the picture of costs that it is found over. */
export const traceInput = z.strictObject({
  cost: pictureNumbers("What each pixel costs, row by row: 1 beside every line, less on one.", {
    least: 1e-9,
    most: 1e9,
  }),
  columns: size,
  rows: size,
  ...tracePlaces,
});
/** See {@link traceInput}. */
export type TraceInput = z.infer<typeof traceInput>;

/** The course and what its path costs. */
export const traceOutput = z.strictObject({
  points: z.array(filmPlace).describe("The course, [u,v] in px, about 3 px apart, from the first place to the last."),
  path: z.array(filmPlace).describe("The chain of neighbouring pixels that the course was smoothed from."),
  cost: z.number().min(0).describe("Of the path: the mean of two neighbours' costs times their distance, added up."),
  ...outputParts,
});
/** See {@link traceOutput}. */
export type TraceOutput = z.infer<typeof traceOutput>;
