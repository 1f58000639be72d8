import { difficultyTopic } from "../../core/diagnosis/difficulty-topic.ts";
import type { PartOf } from "../../record/parts.ts";
import { askedOverTime } from "../asked-over-time.ts";
import type { Binding, BindingContext, Question } from "../binding.ts";
import { canalFacts } from "../difficulty-facts/canal-facts.ts";
import { rootFacts } from "../difficulty-facts/root-facts.ts";
import { sheetFacts } from "../difficulty-facts/sheet-facts.ts";
import { treatmentFacts } from "../difficulty-facts/treatment-facts.ts";
import { factsAsked, factTold } from "../fact-told.ts";

/** What makes the tooth harder, by what is recorded and measured of it: on the day of each plan, and now. */
export const difficultyBinding: Binding = {
  topic: difficultyTopic,
  ask: (context) => askedOverTime("difficulty", context, factsOf),
};

function factsOf(subject: string, about: PartOf<"case">, context: BindingContext): Question {
  const told = [
    ...factTold("tooth", about.body.tooth, `${about.id}/tooth`),
    ...sheetFacts(context.parts),
    ...rootFacts(context),
    ...canalFacts(context),
    ...treatmentFacts(context),
  ];
  return { subject, ...factsAsked(told) };
}
