import { type Fault, Refusal } from "../../refusal.ts";
import type { AnaestheticInput, OwnDoseLimit } from "./anaesthetic-input.ts";
import type { LimitSet } from "./limit-sets.ts";
import { type Unlikely, unlikelyMass } from "./unlikely-mass.ts";
import { unlikelySolution } from "./unlikely-solution.ts";
import { withoutLimit } from "./without-limit.ts";

/** From here on a number of cartridges of one entry is asked for. */
const manyCartridges = 20;

/**
 * Refuses what can't be, what nobody has confirmed, and agents without a limit that holds for this person.
 * @throws Refusal `input.impossible` with a fault for each.
 * @source docs/methods/anaesthetic.md C9, C10
 */
export function refuseFaults(input: AnaestheticInput, set: LimitSet, massKg: number): void {
  const faults = [
    ...unlikelyMass(input),
    ...input.given.flatMap((dose, index) => [
      ...unlikelySolution(dose, `given[${index}]`),
      ...unlikelyCount(dose.cartridges, `given[${index}].cartridges`),
    ]),
    ...(input.planned === undefined ? [] : unlikelySolution(input.planned, "planned")),
    ...unlikelyCount(input.planned?.cartridges ?? 0, "planned.cartridges"),
  ].filter((fault) => !isConfirmed(fault, input));
  const all: Fault[] = [
    ...faults.map(({ path, says }) => ({ path, says })),
    ...ownLimitFaults(input.limitSet),
    ...repeatedVasoconstrictors(input),
    ...withoutLimit(input, set, massKg),
  ];
  if (all.length === 0) return;
  throw new Refusal("input.impossible", "Cannot compute what is left of the anaesthetic", {}, all);
}

const unlikelyCount = (cartridges: number, path: string): Unlikely[] =>
  cartridges <= manyCartridges
    ? []
    : [
        {
          path,
          says: `${cartridges} is unusual (up to ${manyCartridges} at a time): cartridges, not ml? confirm cartridges if it is so`,
          confirmable: true,
        },
      ];

function isConfirmed({ path, confirmable }: Unlikely, input: AnaestheticInput): boolean {
  const [, index] = /^given\[(\d+)\]\./.exec(path) ?? [];
  const dose =
    index === undefined ? (path.startsWith("planned.") ? input.planned : undefined) : input.given[Number(index)];
  const confirmed = [...(input.confirmed ?? []), ...(dose?.confirmed ?? [])];
  return confirmable && confirmed.some((name) => path === name || path.endsWith(`.${name}`));
}

function ownLimitFaults(limitSet: AnaestheticInput["limitSet"]): Fault[] {
  if (limitSet === undefined || typeof limitSet === "string") return [];
  return limitSet.flatMap((limit, index): Fault[] => {
    const path = `limitSet[${index}]`;
    if (limit.mgPerKg === undefined && limit.maxMg === undefined)
      return [{ path, says: `gives no figure for ${limit.agent}; give mgPerKg, maxMg or both` }];
    return isRepeated(limit, limitSet.slice(0, index))
      ? [{ path: `${path}.agent`, says: `${limit.agent} has a limit already` }]
      : [];
  });
}

/** Of two limits of one vasoconstrictor nobody could tell which counts. */
const repeatedVasoconstrictors = ({ vasoconstrictorLimits = [] }: AnaestheticInput): Fault[] =>
  vasoconstrictorLimits.flatMap(({ name }, index) =>
    vasoconstrictorLimits.slice(0, index).some((before) => before.name === name)
      ? [{ path: `vasoconstrictorLimits[${index}].name`, says: `${name} has a limit already` }]
      : [],
  );

const isRepeated = ({ agent }: OwnDoseLimit, before: readonly OwnDoseLimit[]): boolean =>
  before.some((limit) => limit.agent === agent);
