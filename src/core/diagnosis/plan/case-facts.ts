import type { ToothFacts } from "../../tooth/teeth.ts";
import { type PlanInput, planFlags } from "./plan-input.ts";

/** Facts of a case by the names that the rows ask for; a fact that is not recorded is absent. */
export type CaseFacts = ReadonlyMap<string, string | number>;

/**
 * The facts that the rows of the plan ask for, those that follow from others among them.
 * @source docs/methods/plan.md C1
 */
export function caseFacts(input: PlanInput, tooth: ToothFacts): CaseFacts {
  const { medical, own: _, tooth: __, earlierFillingEndMm: ___, ...plain } = input;
  const flags = planFlags.map((flag) => [flag, medical?.includes(flag) === true ? "yes" : "no"] as const);
  const all: Readonly<Record<string, string | number | undefined>> = {
    ...plain,
    ...inferred(input),
    type: tooth.type,
    arch: tooth.arch,
    medicalTaken: medical === undefined ? undefined : "yes",
    ...(medical === undefined ? {} : Object.fromEntries(flags)),
  };
  return new Map(
    Object.entries(all).flatMap(([fact, value]): [string, string | number][] =>
      value === undefined || value === "unknown" ? [] : [[fact, value]],
    ),
  );
}

/** What follows from other facts where it is not given itself. */
function inferred(input: PlanInput): Record<string, string | number | undefined> {
  const { pulpal, caries, earlierFillingEndMm: end } = input;
  const given = <Value>(value: Value | "unknown" | undefined) => (value === "unknown" ? undefined : value);
  return {
    pulpal: pulpal === "notDetermined" ? undefined : pulpal,
    apical: input.apical === "notDetermined" ? undefined : input.apical,
    undetermined: pulpal === "notDetermined" ? "pulp" : pulpal && "no",
    earlierFilling: given(input.earlierFilling) ?? (pulpal === "previouslyTreated" ? "present" : undefined),
    earlierFillingIs: given(input.earlierFillingIs) ?? (end === undefined ? undefined : byLength(end)),
    exposure: given(input.exposure) ?? exposureOf(caries),
    lesion: given(input.lesion) ?? ((input.lesionMm ?? 0) > 0 ? "present" : undefined),
    perforation: given(input.perforation) ?? ((input.perforationMm ?? 0) > 0 ? "present" : undefined),
    morphology: given(input.morphology) ?? (input.perforation === "present" ? "altered" : undefined),
    complication: complicationOf(input),
  };
}

/** An end within 2 mm of the apex and not beyond it. */
const byLength = (endMm: number): string => (endMm >= 0 && endMm <= 2 ? "adequate" : "inadequate");

function exposureOf(caries: PlanInput["caries"]): string | undefined {
  if (caries === undefined || caries === "unknown") return undefined;
  return caries === "exposed" ? "caries" : "none";
}

function complicationOf({ fragment, perforation }: PlanInput): string | undefined {
  if (fragment === "present" || perforation === "present") return "present";
  return fragment === "none" && perforation === "none" ? "none" : undefined;
}
