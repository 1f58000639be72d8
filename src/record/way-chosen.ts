import type { BodyOf } from "./parts.ts";

/**
 * The way that a person chose in a plan.
 * Takes the body of a plan. Gives undefined for a plan that was only begun: it stands at "watch", and nobody has chosen,
 * weighed, reasoned or named a risk in it. No document may print that as advice.
 */
export function wayChosen(plan: BodyOf<"plan">): BodyOf<"plan">["chosen"] | undefined {
  const { chosen, options, planEntry, because, saidPlainly = "", risksNamed } = plan;
  const isTouched =
    options.length > 0 || planEntry !== undefined || because + saidPlainly !== "" || risksNamed.length > 0;
  return chosen === "watch" && !isTouched ? undefined : chosen;
}
