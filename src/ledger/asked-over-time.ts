import { canonicalJson } from "../record/canonical-json.ts";
import { type PartOf, partsOf, thePart } from "../record/parts.ts";
import { partsOn } from "../record/parts-on.ts";
import type { BindingContext, Gap, Question } from "./binding.ts";
import { latestOf } from "./latest-of.ts";

type Ask = (subject: string, about: PartOf<"case">, context: BindingContext) => Question | Gap;

/**
 * What a topic asks about a tooth over time: for each plan with what was known on its day, as `plan of plan-1`, and for
 * the case as it stands now, as `plan of case-1`; that one is left out as long as it says what the last plan's does.
 */
export function askedOverTime(topic: string, context: BindingContext, ask: Ask): (Question | Gap)[] {
  const about = thePart(context.parts, "case");
  if (about === undefined) return [];
  const plans = partsOf(context.parts, "plan");
  const planned = plans.map((plan) => ask(`${topic} of ${plan.id}`, about, knownTo(plan, context)));
  const last = planned[plans.findIndex(({ id }) => id === latestOf(plans)?.id)];
  const now = ask(`${topic} of ${about.id}`, about, context);
  return last !== undefined && sumOf(last) === sumOf(now) ? planned : [...planned, now];
}

/** The record as the day of a plan left it, without the other plans: each is weighed on what it says itself. */
function knownTo(plan: PartOf<"plan">, context: BindingContext): BindingContext {
  const parts = partsOn(context.parts, plan.body.madeOn).filter(({ kind, id }) => kind !== "plan" || id === plan.id);
  return { ...context, parts };
}

const sumOf = (asked: Question | Gap): string => canonicalJson("input" in asked ? asked.input : { missing: asked.why });
