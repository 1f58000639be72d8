import { z } from "zod";
import { definePart } from "../part.ts";
import { canalName, line } from "../values.ts";

const root = z.strictObject({
  name: canalName,
  side: z.enum(["buccal", "lingual"]).optional(),
  levels: z
    .array(z.int().min(1).max(6))
    .min(1)
    .max(12)
    .describe("Number of separate canals at each level, orifice to foramen."),
  orifices: z
    .array(canalName)
    .max(6)
    .optional()
    .describe("Names of the canals at the orifice; default: the root's name, numbered."),
  cShape: z
    .array(z.enum(["C1", "C2", "C3", "C4", "C5"]))
    .max(12)
    .optional()
    .describe("Section by level (Fan 2004)."),
});

/** The roots of the tooth and the canals in them, level by level from orifice to foramen. */
export const anatomyPart = definePart({
  kind: "anatomy",
  version: 1,
  single: true,
  migrations: [],
  body: z.strictObject({
    roots: z.array(root).min(1).max(5),
    foundBy: z.array(z.enum(["film", "angledFilm", "cbct", "microscope", "troughing", "instrument"])).max(6),
    unusualBecause: line.optional().describe("Why a form that is unusual for this tooth is right."),
  }),
});
