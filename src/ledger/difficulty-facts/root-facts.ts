import { z } from "zod";
import type { DifficultyInput } from "../../core/diagnosis/difficulty/difficulty-input.ts";
import { canalNames } from "../../core/tooth/canal-root.ts";
import { usualRoots } from "../../core/tooth/usual-roots.ts";
import { thePart } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { earlierRead } from "../earlier-read.ts";
import { type FactTold, factTold } from "../fact-told.ts";

const roots = z.looseObject({ canalCount: z.number(), extraRoot: z.string().nullable().optional() });

/** An extra root by its name, and more canals than the tooth usually has; nothing before the roots are recorded. */
export function rootFacts(context: BindingContext): FactTold<keyof DifficultyInput>[] {
  const [about, anatomy] = [thePart(context.parts, "case"), thePart(context.parts, "anatomy")];
  const [found] = earlierRead(context, roots, anatomy === undefined ? [] : [`canals of ${anatomy.id}`]);
  if (about === undefined || found === undefined) return [];
  const { read, record } = found;
  const usual = usualRoots(about.body.tooth).roots.flatMap(canalNames).length;
  const extra = read.canalCount > usual ? `${read.canalCount} canals, ${usual} are usual` : "none";
  return [
    ...factTold("extraRoot", read.extraRoot === null ? "none" : read.extraRoot, record("extraRoot")),
    ...factTold("extraCanal", extra, record("canalCount")),
  ];
}
