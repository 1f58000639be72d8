import { agentLimit } from "./agent-limit.ts";
import type { AnaestheticInput, GivenDose, VasoconstrictorName } from "./anaesthetic-input.ts";
import { agentMicrograms, partsIn, roundedDown, vasoconstrictorParts } from "./dose-amounts.ts";
import { type ExactRatio, exactRatio, isLess, sumOfRatios } from "./exact-ratio.ts";
import type { DoseLimit, LimitSet } from "./limit-sets.ts";
import { type VasoconstrictorLimit, vasoconstrictorLimit } from "./vasoconstrictor-limits.ts";

/** Against what doses are held: the set, the mass, and the person's limits of vasoconstrictors. */
export interface Measure {
  readonly set: LimitSet;
  readonly massKg: number;
  /** Whether a maximum without mg/kg is a limit for this person. */
  readonly grown: boolean;
  readonly asked: Pick<AnaestheticInput, "cardiacRisk" | "vasoconstrictorLimits">;
}

/** One agent: what was given and what may be, in whole micrograms. */
export interface AgentState {
  readonly agent: string;
  readonly given: number;
  readonly limit: number;
  readonly rule: string;
  readonly printed: DoseLimit;
}

/** One vasoconstrictor: what was given and what may be, in whole parts of its unit. */
export interface VasoconstrictorState {
  readonly name: VasoconstrictorName;
  readonly given: number;
  readonly limit?: number;
  readonly printed?: VasoconstrictorLimit;
}

/** How doses stand to their limits. */
export interface DoseState {
  readonly agents: readonly AgentState[];
  readonly vasoconstrictors: readonly VasoconstrictorState[];
  readonly sum: ExactRatio;
  readonly sumIsOver: boolean;
  /** The vasoconstrictors that are above their limit. */
  readonly over: readonly VasoconstrictorState[];
}

/**
 * Doses against their limits: agents added as fractions of their own limits, each vasoconstrictor against its own.
 * Takes doses whose agents all stand in the set.
 * @source Malamed 2013 (memory); docs/methods/anaesthetic.md C5 to C7
 */
export function doseState(given: readonly GivenDose[], measure: Measure): DoseState {
  const agents = [...new Set(given.map(({ agent }) => agent))].map((agent) => agentState(agent, given, measure));
  const names = [...new Set(given.flatMap(({ vasoconstrictor }) => vasoconstrictor?.name ?? []))];
  const vasoconstrictors = names.map((name) => vasoconstrictorState(name, given, measure));
  const sum = sumOfRatios(agents.map((one) => exactRatio(one.given, one.limit)));
  return {
    ...{ agents, vasoconstrictors, sum },
    sumIsOver: isLess(exactRatio(1, 1), sum),
    over: vasoconstrictors.filter((one) => one.limit !== undefined && one.given > one.limit),
  };
}

/** One agent, given or not. */
export function agentState(agent: string, given: readonly GivenDose[], { set, massKg }: Measure): AgentState {
  const printed = set.limits.get(agent) ?? { source: "", mark: "own" };
  const { micrograms, rule } = agentLimit(printed, massKg);
  const doses = given.filter((dose) => dose.agent === agent);
  return { agent, limit: micrograms, rule, printed, given: total(doses.map((d) => agentMicrograms(d, d.cartridges))) };
}

/** One vasoconstrictor, given or not. */
export function vasoconstrictorState(
  name: VasoconstrictorName,
  given: readonly GivenDose[],
  { asked }: Measure,
): VasoconstrictorState {
  const parts = given.map(({ vasoconstrictor, cartridgeMl, cartridges }) =>
    vasoconstrictor?.name === name ? vasoconstrictorParts(vasoconstrictor, cartridgeMl, cartridges) : 0,
  );
  const printed = vasoconstrictorLimit(name, asked);
  if (printed === undefined) return { name, given: total(parts) };
  return { name, given: total(parts), limit: roundedDown(printed.limit * partsIn(name)), printed };
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
