import { z } from "zod";
import type { DifficultyInput } from "../../core/diagnosis/difficulty/difficulty-input.ts";
import { canalNames } from "../../core/tooth/canal-root.ts";
import { usualRoots } from "../../core/tooth/usual-roots.ts";
import { thePart } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { type FactTold, factTold } from "../fact-told.ts";

const roots = z.looseObject({ canalCount: z.number(), extraRoot: z.string().nullable().optional() });

/** An extra root by its name, and more canals than the tooth usually has; nothing before the roots are recorded. */
export function rootFacts({ parts, earlier }: BindingContext): FactTold<keyof DifficultyInput>[] {
  const [about, anatomy] = [thePart(parts, "case"), thePart(parts, "anatomy")];
  const found = anatomy === undefined ? undefined : earlier(`canals of ${anatomy.id}`);
  const read = roots.safeParse(found?.output).data;
  if (about === undefined || found === undefined || read === undefined) return [];
  const usual = usualRoots(about.body.tooth).roots.flatMap(canalNames).length;
  const extra = read.canalCount > usual ? `${read.canalCount} canals, ${usual} are usual` : "none";
  const at = (field: string): string => `ledger/${found.entryId}/${field}`;
  return [
    ...factTold("extraRoot", read.extraRoot === null ? "none" : read.extraRoot, at("extraRoot")),
    ...factTold("extraCanal", extra, at("canalCount")),
  ];
}
