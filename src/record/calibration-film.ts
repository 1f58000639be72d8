import { z } from "zod";

const place = z.tuple([z.number(), z.number()]);

/** What kind of place is marked on a film of an exercise. */
export const placeKinds = ["apex", "cusp", "crest", "entrance"] as const;
/** See {@link placeKinds}. */
export type PlaceKind = (typeof placeKinds)[number];

/** A film of an exercise as the list beside it describes it: its size, and the places to be marked with their truth. */
export const calibrationFilmSchema = z.object({
  name: z.string().regex(/^film-\d\d$/),
  tooth: z.string(),
  columns: z.int().min(1),
  rows: z.int().min(1),
  /** Where the columns run to. */
  uRunsTo: z.enum(["distal", "mesial"]),
  /** In the order in which they are asked; without a truth where no single place is the true one. */
  places: z.array(z.object({ kind: z.enum(placeKinds), says: z.string(), truth: place.optional() })).min(1),
});
/** See {@link calibrationFilmSchema}. */
export type CalibrationFilm = z.infer<typeof calibrationFilmSchema>;
