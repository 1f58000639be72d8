import { z } from "zod";
import fan from "../../../data/fan-2004/source.json" with { type: "json" };

/** The five forms of a C-shaped section. */
const cShapes = ["C1", "C2", "C3", "C4", "C5"] as const;
/** One form of a C-shaped section. */
export type CShape = (typeof cShapes)[number];

/**
 * The least and greatest number of separate canals that each form of a C-shaped section can hold.
 * @source Fan B et al., C-shaped canal system in mandibular second molars: part I, J Endod, 2004, 899-903 (memory)
 */
export const canalsOfCShape = (shape: CShape): { readonly least: number; readonly most: number } => {
  const [least = 0, most = 0] = fan.categories[shape].canals;
  return { least, most };
};

const plainLevel = z.number().int().min(1).max(6);
const shapedLevel = z.strictObject({
  canals: z.number().int().min(0).max(6).describe("Separate canals at this level; 0 only for C5."),
  cShape: z.enum(cShapes).optional().describe("Form of a C-shaped section (Fan 2004)."),
});
const name = z.string().regex(/^[A-Z][A-Za-z0-9]{0,7}$/, "a capital and up to seven letters or digits, as MB or DL");

/** One root: its name, and the number of separate canals at each level from orifice to foramen. */
export const canalRootSchema = z.strictObject({
  name: name.describe("The root's name, as MB, P, M; a lone root's name does not enter the code."),
  side: z.enum(["buccal", "lingual"]).optional().describe("The side that the root lies on; decides on an extra root."),
  levels: z
    .array(z.union([plainLevel, shapedLevel]))
    .min(1)
    .max(12)
    .describe("Canals at each level, orifice first."),
  orifices: z.array(name).min(1).optional().describe("Names of the canals; the root's name, numbered, if left out."),
});
/** See {@link canalRootSchema}. */
export type CanalRoot = z.infer<typeof canalRootSchema>;
/** One level of a root: a number of canals, or that number with the form of the section. */
export type CanalLevel = CanalRoot["levels"][number];

/** The number of separate canals at a level. */
export const canalsAt = (level: CanalLevel): number => (typeof level === "number" ? level : level.canals);

/** The form of a C-shaped section at a level, where it has one. */
export const cShapeAt = (level: CanalLevel): CShape | undefined =>
  typeof level === "number" ? undefined : level.cShape;

/**
 * The names of a root's canals at the orifice.
 * Takes a root; gives one name for each canal of its first level: those given, or the root's name (numbered from 1 where it holds several).
 * @source docs/methods/canals, C2
 */
export function canalNames(root: Pick<CanalRoot, "name" | "levels" | "orifices">): readonly string[] {
  if (root.orifices !== undefined) return root.orifices;
  const [first = 1] = root.levels;
  const count = canalsAt(first);
  return count === 1 ? [root.name] : Array.from({ length: count }, (_, at) => `${root.name}${at + 1}`);
}
