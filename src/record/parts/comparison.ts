import { z } from "zod";
import { definePart } from "../part.ts";
import { filmPoint, line, otherPart, words } from "../values.ts";

const landmark = z.strictObject({
  name: line.optional().describe("What is there, as: distobuccal cusp."),
  before: filmPoint,
  after: filmPoint,
});

/** Two films of the tooth at two dates, and the places that a person found on both. */
export const comparisonPart = definePart({
  kind: "comparison",
  version: 1,
  single: false,
  migrations: [],
  body: z
    .strictObject({
      before: otherPart.describe("The earlier film."),
      after: otherPart.describe("The later film."),
      landmarks: z.array(landmark).max(60).describe("At least 4 before the films can be compared."),
      hardParts: z
        .array(z.array(filmPoint).min(3).max(2_000))
        .max(40)
        .optional()
        .describe("Outlines on the earlier film of what can't have changed; the whole film where none is given."),
      note: words.optional(),
    })
    .refine(({ before, after }) => before !== after, { path: ["after"], message: "is the same film as before" }),
});
