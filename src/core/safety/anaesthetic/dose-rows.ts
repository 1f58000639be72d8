import { agentLimit } from "./agent-limit.ts";
import type { AgentRow, VasoconstrictorRow } from "./anaesthetic-output.ts";
import { partsIn, unitOf } from "./dose-amounts.ts";
import type { AgentState, Measure, VasoconstrictorState } from "./dose-state.ts";
import { exactRatio, numberOf } from "./exact-ratio.ts";
import { publishedSets } from "./limit-sets.ts";

/** The limit of an agent as it is told. */
export const limitTold = ({ limit, rule, printed }: AgentState) => ({
  limitMg: limit / 1_000,
  limitRule: rule,
  source: printed.source,
  mark: printed.mark,
});

/** One agent as it is told, with what the other published sets would allow this person. */
export function agentRow(state: AgentState, { set, massKg, grown }: Measure): AgentRow {
  const { agent, given, limit } = state;
  const otherSets = publishedSets.flatMap((other) => {
    const printed = other.name === set.name ? undefined : other.limits.get(agent);
    if (printed?.mgPerKg === undefined && !grown) return [];
    return printed === undefined ? [] : [{ set: other.name, limitMg: agentLimit(printed, massKg).micrograms / 1_000 }];
  });
  return {
    ...{ agent, givenMg: given / 1_000 },
    ...limitTold(state),
    fraction: numberOf(exactRatio(given, limit)),
    otherSets: [...otherSets].sort((a, b) => a.limitMg - b.limitMg),
  };
}

/** One vasoconstrictor as it is told; without a limit where none is known. */
export function vasoconstrictorRow({ name, given, limit, printed }: VasoconstrictorState): VasoconstrictorRow {
  const amount = { name, given: given / partsIn(name), unit: unitOf(name) };
  if (limit === undefined || printed === undefined) return amount;
  return { ...amount, fraction: numberOf(exactRatio(given, limit)), ...printed };
}
