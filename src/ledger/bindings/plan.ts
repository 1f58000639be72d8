import { planTopic } from "../../core/diagnosis/plan-topic.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import { askedOverTime } from "../asked-over-time.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { type FactTold, factsAsked, factTold } from "../fact-told.ts";
import { findingsTold } from "../plan-facts/findings-told.ts";
import { measuresTold } from "../plan-facts/measures-told.ts";
import { recordTold } from "../plan-facts/record-told.ts";

/** The ways of the tooth, from the clinician's terms, the findings, what was measured and the history: then and now. */
export const planBinding: Binding = {
  topic: planTopic,
  ask: (context) => askedOverTime("plan", context, waysOf),
};

function waysOf(subject: string, about: PartOf<"case">, context: BindingContext): Question | Gap {
  const tooth = { input: "tooth", record: `${about.id}/tooth` };
  if (partsOf(context.parts, "findings").length + partsOf(context.parts, "diagnosis").length === 0)
    return { subject, why: "there are neither findings nor a diagnosis yet; record one of them", inputPaths: [tooth] };
  const told = lastTold([
    ...factTold("tooth", about.body.tooth, `${about.id}/tooth`),
    ...findingsTold(context.parts),
    ...measuresTold(context),
    ...recordTold(context.parts),
  ]);
  return { subject, ...factsAsked(told) };
}

/** Of a fact that is told twice the later telling: a measure stands above an estimate. */
const lastTold = (told: readonly FactTold[]): FactTold[] => [...new Map(told.map((one) => [one.field, one])).values()];
