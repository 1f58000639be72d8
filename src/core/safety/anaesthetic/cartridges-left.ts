import type { PlannedDose } from "./anaesthetic-input.ts";
import type { Bound } from "./anaesthetic-output.ts";
import { agentMicrograms, vasoconstrictorParts } from "./dose-amounts.ts";
import type { AgentState, DoseState, VasoconstrictorState } from "./dose-state.ts";
import { type ExactRatio, exactRatio, isLess, numberOf, wholePart } from "./exact-ratio.ts";

/** What is left of a solution. */
export interface CartridgesLeft {
  readonly whole: number;
  readonly boundBy: Bound["by"];
  readonly bounds: readonly Bound[];
}

interface Left {
  readonly by: Bound["by"];
  readonly cartridges: ExactRatio;
}

/**
 * Whole cartridges of a solution that every limit leaves, and the limit that leaves the fewest.
 * Takes the doses so far, and the state of the planned agent and vasoconstrictor in them.
 * @source docs/methods/anaesthetic.md C8
 */
export function cartridgesLeft(
  planned: PlannedDose,
  state: DoseState,
  agent: AgentState,
  vasoconstrictor?: VasoconstrictorState,
): CartridgesLeft {
  const perCartridge = agentMicrograms(planned);
  const others = state.agents.some((one) => one.agent !== agent.agent && one.given > 0);
  const all: readonly Left[] = [
    { by: "agent", cartridges: exactRatio(agent.limit - agent.given, perCartridge) },
    ...vasoconstrictorLeft(planned, vasoconstrictor),
    ...(others ? [{ by: "sum" as const, cartridges: sumLeft(state.sum, agent.limit, perCartridge) }] : []),
  ];
  const left = [...all].sort((a, b) =>
    isLess(a.cartridges, b.cartridges) ? -1 : isLess(b.cartridges, a.cartridges) ? 1 : 0,
  );
  const [fewest] = left;
  return {
    whole: fewest === undefined ? 0 : wholePart(fewest.cartridges),
    boundBy: fewest?.by ?? "agent",
    bounds: left.map(({ by, cartridges }) => ({ by, cartridges: Math.max(0, numberOf(cartridges)) })),
  };
}

/** What the sum of fractions leaves of 1 is that share of the planned agent's own limit. */
const sumLeft = ({ over, under }: ExactRatio, limit: number, perCartridge: number): ExactRatio => ({
  over: (under - over) * BigInt(limit),
  under: under * BigInt(perCartridge),
});

function vasoconstrictorLeft({ vasoconstrictor, cartridgeMl }: PlannedDose, state?: VasoconstrictorState): Left[] {
  if (vasoconstrictor === undefined || state?.limit === undefined) return [];
  const parts = vasoconstrictorParts(vasoconstrictor, cartridgeMl);
  return [{ by: "vasoconstrictor", cartridges: exactRatio(state.limit - state.given, parts) }];
}
