import { z } from "zod";

const point = z.tuple([z.number(), z.number()]);

/** One film as data/demo/films/films.json lists it: how it was made, and what is true of it in its own pixels. */
export const filmOnList = z.object({
  file: z.string(),
  case: z.string(),
  dayFromFirstVisit: z.int(),
  kind: z.enum(["diagnostic", "angled", "workingLength", "masterCone", "final", "recall", "other"]),
  horizontalAngleDeg: z.number().optional(),
  verticalAngleDeg: z.number().optional(),
  receptor: z.enum(["turnsWithBeam", "fixed", "unknown"]),
  uRunsTo: z.enum(["distal", "mesial", "unknown"]).optional(),
  detectorSpacingMm: z.number().optional(),
  magnification: z.number().optional(),
  columns: z.int(),
  rows: z.int(),
  bitsStored: z.int().optional(),
  sha256: z.string(),
  truth: z.object({
    canals: z.record(z.string(), z.array(point)),
    knownLength: z.object({ lengthMm: z.number(), from: point, to: point }).optional(),
  }),
});
/** See {@link filmOnList}. */
export type FilmOnList = z.infer<typeof filmOnList>;

/** The films of the demo from their list as it was read from disk. */
export const filmsOnList = (raw: unknown): FilmOnList[] => z.array(filmOnList).parse(raw);
