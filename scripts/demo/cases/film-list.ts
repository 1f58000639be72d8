import { z } from "zod";

const point = z.tuple([z.number(), z.number()]);

/** One film as data/demo/films/films.json lists it: how it was made, and what is true of it in its own pixels. */
export const filmOnList = z.object({
  file: z.string(),
  case: z.enum(["A", "B", "C"]),
  dayFromFirstVisit: z.int(),
  kind: z.enum(["diagnostic", "angled", "workingLength", "masterCone", "final", "recall"]),
  horizontalAngleDeg: z.number(),
  verticalAngleDeg: z.number(),
  receptor: z.enum(["turnsWithBeam", "fixed"]),
  uRunsTo: z.enum(["distal", "mesial"]),
  apexIs: z.enum(["up", "down"]),
  detectorSpacingMm: z.number(),
  magnification: z.number(),
  columns: z.int(),
  rows: z.int(),
  bitsStored: z.int(),
  sha256: z.string(),
  truth: z.object({
    canals: z.record(z.string(), z.array(point).min(2)),
    knownLengths: z.record(z.string(), z.object({ lengthMm: z.number(), from: point, to: point })).optional(),
    lesionRadiusMm: z.number(),
  }),
});
/** See {@link filmOnList}. */
export type FilmOnList = z.infer<typeof filmOnList>;

/** The films of the demo from their list as it was read from disk; none where there is no list yet. */
export function filmsOnList(raw: unknown): FilmOnList[] {
  return raw === undefined ? [] : z.array(filmOnList).parse(raw);
}
