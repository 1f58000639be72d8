import type { Fault } from "../../refusal.ts";
import type { AnaestheticInput } from "./anaesthetic-input.ts";
import { isTooYoung, tooYoung } from "./dose-stops.ts";
import { type LimitSet, publishedSets } from "./limit-sets.ts";

/** Below this age a maximum for adults alone is no limit. */
export const grownYears = 18;
/** Nor is it below this mass, in kg. */
export const grownKg = 50;

/** Whether a maximum without mg/kg is a limit for this person: neither a child nor light. */
export const isGrown = ({ ageYears = grownYears, bodyMassKg }: AnaestheticInput, massKg: number): boolean =>
  ageYears >= grownYears && Math.min(massKg, bodyMassKg) >= grownKg;

/**
 * The agents that the chosen set has no limit for, or none by mass where the person is a child or light: then the lowest
 * mg/kg of the other sets is offered by name.
 * @source docs/methods/anaesthetic.md C9
 */
export function withoutLimit(input: AnaestheticInput, set: LimitSet, massKg: number): Fault[] {
  const { given, planned, ageYears } = input;
  const doses = [
    ...given.map(({ agent }, index) => ({ agent, path: `given[${index}].agent` })),
    ...(planned === undefined ? [] : [{ agent: planned.agent, path: "planned.agent" }]),
  ];
  const grown = isGrown(input, massKg);
  const who = ageYears !== undefined && ageYears < grownYears ? `under ${grownYears} years` : `under ${grownKg} kg`;
  return doses.flatMap(({ agent, path }): Fault[] => {
    const limit = set.limits.get(agent);
    if (limit === undefined)
      return [
        {
          path,
          says: `${agent} has no limit ${set.name === "own" ? "among those that were given" : `in ${set.name}`}; ${wayOut(agent)}`,
        },
      ];
    if (limit.mgPerKg !== undefined || grown) return [];
    const stop = isTooYoung(agent, ageYears) ? `; ${tooYoung}` : "";
    return [
      {
        path,
        says: `${set.name === "own" ? "the limit that was given has" : `${set.name} prints`} no mg/kg for ${agent}, needed ${who}; ${wayOut(agent)}${stop}`,
      },
    ];
  });
}

/** The lowest mg/kg of the published sets by name, or a limit of one's own. */
function wayOut(agent: string): string {
  const rows = publishedSets.flatMap(({ name, limits }) => {
    const mgPerKg = limits.get(agent)?.mgPerKg;
    return mgPerKg === undefined || name === "conservative" ? [] : [{ name, mgPerKg }];
  });
  const [lowest] = rows.sort((a, b) => a.mgPerKg - b.mgPerKg);
  if (lowest !== undefined) return `the lowest of the other sets is ${lowest.mgPerKg} mg/kg (${lowest.name})`;
  return "use the international name, or give limits of your own with their source";
}
