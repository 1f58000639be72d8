import { z } from "zod";

const place = z.tuple([z.number().min(-100_000).max(100_000), z.number().min(-100_000).max(100_000)]);
const tool = z.enum(["pointer", "keyboard"]);
const zoom = z.number().gt(0).max(1_000);

/** What a click's error is computed from: places that one person marked twice. */
export const clickErrorInput = z.strictObject({
  pairs: z
    .array(
      z.strictObject({
        film: z.string().min(1).max(80).describe("The film's name."),
        name: z.string().min(1).max(60).describe("The kind of place, as apex; once a film."),
        first: place.describe("[u,v] in pixels of the film, u to the right, v down."),
        second: place.describe("The same place, marked again; in the same axes also where the film was mirrored."),
        truth: place.optional().describe("Where the place truly is, for films that were made."),
        firstBy: tool.optional().describe("What the first mark was made with."),
        secondBy: tool.optional(),
        firstZoom: zoom.optional().describe("Pixels of the screen for one pixel of the film at that mark."),
        secondZoom: zoom.optional(),
      }),
    )
    .max(400)
    .describe("At least 5; 60 make an interval of about 13 % to either side."),
  films: z
    .enum(["made", "taken"])
    .optional()
    .describe("made: of a phantom, so that the true places are known; taken: of patients."),
});
/** See {@link clickErrorInput}. */
export type ClickErrorInput = z.infer<typeof clickErrorInput>;
/** A place that was marked twice. */
export type ClickPair = ClickErrorInput["pairs"][number];
