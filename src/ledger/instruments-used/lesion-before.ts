import { partsOf } from "../../record/parts.ts";
import { partsOn } from "../../record/parts-on.ts";
import type { BindingContext } from "../binding.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { findingsTold } from "../plan-facts/findings-told.ts";
import { measuresTold } from "../plan-facts/measures-told.ts";

/** Whether there was a lesion before treatment, as the ways of the tooth are told it: what the first visit met. */
export function lesionBefore(context: BindingContext): FactTold<"lesion">[] {
  const days = partsOf(context.parts, "visit").map(({ body }) => body.on);
  const [first] = days.sort();
  const parts = first === undefined ? context.parts : partsOn(context.parts, first);
  const facts = [...measuresTold({ ...context, parts }), ...findingsTold(parts)];
  const found = facts.find(({ field }) => field === "lesion");
  const records = found?.paths.map(({ record }) => record) ?? [];
  return found === undefined ? [] : factTold("lesion", found.value === "none" ? "absent" : found.value, ...records);
}
