import { z } from "zod";
import { canalRootSchema } from "../../core/tooth/canal-root.ts";
import { definePart } from "../part.ts";
import { canalName, line } from "../values.ts";

/** The roots of the tooth and the canals in them, level by level from orifice to foramen, as the canals topic takes them. */
export const anatomyPart = definePart({
  kind: "anatomy",
  version: 1,
  single: true,
  migrations: [],
  body: z.strictObject({
    roots: z.array(canalRootSchema).min(1).max(6),
    foundBy: z.array(z.enum(["film", "angledFilm", "cbct", "microscope", "troughing", "instrument"])).max(6),
    filledBefore: z.array(canalName).max(10).optional().describe("Canals that came filled."),
    unusualBecause: line.optional().describe("Why a form that is unusual for this tooth is right."),
  }),
});
