import type { PlanInput } from "./plan-input.ts";
import type { PlanOption } from "./plan-output.ts";

/** What to keep in mind with these options; facts that don't go together well are named. */
export function planCautions(input: PlanInput, options: readonly PlanOption[]): string[] {
  const fitting = options.filter(({ standing }) => standing !== "does not fit");
  const recalled = fitting.some(({ outcomes }) => outcomes.some(({ mark }) => mark === "memory"));
  return [
    "Retention is not healing: a tooth in place may still be diseased.",
    "The series come from teaching clinics and specialists: your own results may lie below or above.",
    ...(recalled ? ["Some figures are recalled and not read; each is marked."] : []),
    ...(input.medical === undefined ? ["The medical history is not taken: risks that it calls for are missing."] : []),
    ...(input.pulpal === undefined || input.apical === undefined
      ? ["Without both terms more ways wait than need to."]
      : []),
    ...doubts(input),
  ];
}

function doubts({ apical, lesion, pulpal, narrowDefect, crack }: PlanInput): string[] {
  const texts: [boolean, string][] = [
    [
      apical === "asymptomaticApicalPeriodontitis" && lesion === "none",
      "Asymptomatic apical periodontitis is seen by its lesion, and none is recorded.",
    ],
    [
      lesion === "present" && (pulpal === "normalPulp" || pulpal === "reversiblePulpitis"),
      "A lesion with a pulp that is sound or can recover: look for another cause.",
    ],
    [
      narrowDefect === "yes" && crack !== "present",
      "A narrow deep defect: look for a crack or a vertical root fracture before any of these.",
    ],
  ];
  return texts.flatMap(([holds, says]) => (holds ? [says] : []));
}
