import { z } from "zod";
import { definePart } from "../part.ts";
import { between, canalName, mmBetween, otherPart } from "../values.ts";

const row = z
  .array(between(0, 1, "share of a trace's length, counted from its first point"))
  .min(2)
  .max(6);
const rows = z
  .array(row)
  .max(18)
  .describe("Rows of places that are one level: a share for each film, in their order; rows grow on every film.");

/** A person's choice of films for a canal's course in space, and corrections of which places on them are one level. */
export const pairingPart = definePart({
  kind: "pairing",
  version: 1,
  single: false,
  migrations: [],
  body: z
    .strictObject({
      canal: canalName,
      films: z.array(otherPart).min(2).max(6).describe("The films, each once."),
      levels: rows.optional(),
      angleSigmaDeg: between(0, 20, "degrees, standard deviation of a horizontal angle").optional(),
      sourceToToothMm: mmBetween(50, 5000).optional(),
      toothToDetectorMm: mmBetween(0, 200).optional(),
    })
    .superRefine(({ films, levels = [] }, { addIssue }) => {
      const fault = (path: (string | number)[], message: string) => addIssue({ code: "custom", path, message });
      films.forEach((film, at) => {
        if (films.indexOf(film) < at) fault(["films", at], "names a film twice");
      });
      levels.forEach((shares, at) => {
        if (shares.length !== films.length)
          fault(["levels", at], `holds ${shares.length} shares for ${films.length} films`);
        const before = levels[at - 1] ?? [];
        shares.forEach((share, film) => {
          if (share <= (before[film] ?? -1)) fault(["levels", at, film], "is not beyond the row before it");
        });
      });
    }),
});
