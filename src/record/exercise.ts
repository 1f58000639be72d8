import { z } from "zod";
import { placeKinds } from "./calibration-film.ts";

/** One mark of an exercise: on which film, of which kind, in which round, and where, in the axes of the film as it was made. */
export const exerciseMarkSchema = z.strictObject({
  film: z.string().regex(/^film-\d\d$/),
  kind: z.enum(placeKinds),
  round: z.union([z.literal(1), z.literal(2)]),
  /** Whether the film was shown mirrored. */
  mirrored: z.boolean(),
  at: z.tuple([z.number(), z.number()]).describe("[u,v] in pixels of the film."),
  by: z.enum(["pointer", "keyboard"]),
  zoom: z.number().gt(0).max(1_000).describe("Pixels of the screen for one pixel of the film."),
  markedAt: z.iso.datetime(),
});
/** See {@link exerciseMarkSchema}. */
export type ExerciseMark = z.infer<typeof exerciseMarkSchema>;

/**
 * An exercise of the calibration room: who did it and when, on which films, the seed that orders them, its marks in their order, and,
 * once it is finished, what the topic answered. A finished exercise is never changed.
 */
export const exerciseSchema = z.strictObject({
  id: z.string().regex(/^exercise-[a-z0-9-]{1,40}$/),
  kind: z.literal("clicks"),
  who: z.string().max(80),
  begunAt: z.iso.datetime(),
  films: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .describe("SHA-256 of the list of films that it is done on."),
  seed: z.int().min(0).max(4_294_967_295),
  marks: z.array(exerciseMarkSchema).max(400),
  finished: z
    .strictObject({ at: z.iso.datetime(), topicVersion: z.int().min(1), answer: z.record(z.string(), z.unknown()) })
    .optional(),
});
/** See {@link exerciseSchema}. */
export type Exercise = z.infer<typeof exerciseSchema>;
