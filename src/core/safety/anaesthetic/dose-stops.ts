import type { AnaestheticInput } from "./anaesthetic-input.ts";
import type { Stop } from "./anaesthetic-output.ts";
import { partsIn, unitOf } from "./dose-amounts.ts";
import type { DoseState, VasoconstrictorState } from "./dose-state.ts";
import { numberOf } from "./exact-ratio.ts";

/** Under this age bupivacaine is a stop (from memory). */
const bupivacaineYears = 12;

/** What is said of bupivacaine at a child's age. */
export const tooYoung = `under ${bupivacaineYears} years bupivacaine is a stop (from memory)`;

/** Whether an agent is a stop at an age. */
export const isTooYoung = (agent: string, ageYears?: number): boolean =>
  agent.endsWith("bupivacaine") && ageYears !== undefined && ageYears < bupivacaineYears;

/**
 * Why nothing more should be given without a decision: the sum above 1, a vasoconstrictor above its limit, an age.
 * @source docs/methods/anaesthetic.md C7, C9
 */
export function doseStops({ given, planned, ageYears }: AnaestheticInput, state: DoseState): Stop[] {
  const agents = [...given.map(({ agent }) => agent), ...(planned === undefined ? [] : [planned.agent])];
  return [
    ...overLimits(state).map(({ by, says, mark }) => ({ by, says, mark })),
    ...(agents.some((agent) => isTooYoung(agent, ageYears))
      ? [{ by: "age" as const, says: `${sentence(tooYoung)}.`, mark: "memory" as const }]
      : []),
  ];
}

/** The limits that doses are above, by how much. */
export function overLimits({ sum, sumIsOver, over, agents }: DoseState): Stop[] {
  const [only] = agents;
  const says = `The fractions of the agents' limits add up to ${aboveOne(numberOf(sum))}: above 1.`;
  const one = `What was given of ${only?.agent} is ${aboveOne(numberOf(sum))} of its limit: above 1.`;
  return [
    ...(sumIsOver
      ? [
          {
            by: "sum" as const,
            says: agents.length === 1 ? one : says,
            mark: agents.length === 1 ? (only?.printed.mark ?? "own") : ("memory" as const),
          },
        ]
      : []),
    ...over.map((row) => ({ by: "vasoconstrictor" as const, says: overText(row), mark: row.printed?.mark ?? "own" })),
  ];
}

/** To as many digits as tell that it is above 1: 1.00007 is not told as 1.000. */
const aboveOne = (sum: number): string =>
  [3, 6, 9].map((digits) => sum.toFixed(digits)).find((text) => Number(text) > 1) ?? "barely more than 1";

function overText({ name, given, printed }: VasoconstrictorState): string {
  const amount = given / partsIn(name);
  const by = amount - (printed?.limit ?? 0);
  const more = by < 0.01 ? by.toPrecision(2) : String(Number(by.toFixed(2)));
  return `${sentence(name)}: ${amount} ${unitOf(name)} are above the limit of ${printed?.limit} ${unitOf(name)} by ${more}.`;
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
