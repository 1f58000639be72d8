import { planTopic } from "../../core/diagnosis/plan-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import { askedOverTime } from "../asked-over-time.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { findingsTold } from "../plan-facts/findings-told.ts";
import { measuresTold } from "../plan-facts/measures-told.ts";
import { recordTold } from "../plan-facts/record-told.ts";
import type { Told } from "../plan-facts/told.ts";

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
    { fact: "tooth", value: about.body.tooth, record: [`${about.id}/tooth`] },
    ...findingsTold(context.parts),
    ...measuresTold(context),
    ...recordTold(context.parts),
  ]);
  return {
    subject,
    input: Object.fromEntries(told.map(({ fact, value }) => [fact, value])),
    inputPaths: told.flatMap(({ fact, record }): InputPath[] => record.map((from) => ({ input: fact, record: from }))),
  };
}

/** Of a fact that is told twice the later telling: a measure stands above an estimate. */
const lastTold = (told: readonly Told[]): Told[] => [...new Map(told.map((one) => [one.fact, one])).values()];
