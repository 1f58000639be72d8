import label from "../../../../data/lidocaine-label-2018/source.json" with { type: "json" };
import plain from "../../../../data/lidocaine-plain-recalled/source.json" with { type: "json" };
import { standingCaution } from "../standing-caution.ts";
import type { AnaestheticInput, Solution } from "./anaesthetic-input.ts";
import type { AnaestheticOutput, Stop } from "./anaesthetic-output.ts";
import type { DosingMass } from "./dosing-mass.ts";
import { type LimitSet, publishedSets } from "./limit-sets.ts";

/** Above this mass a height is asked for. */
const heavyKg = 100;

/** What the cautions are told of. */
export interface Told {
  readonly input: AnaestheticInput;
  readonly set: LimitSet;
  readonly mass: DosingMass;
  readonly stops: readonly Stop[];
  readonly vasoconstrictors: AnaestheticOutput["vasoconstrictors"];
}

/**
 * What a person has to keep in mind beside the numbers; the standing caution last.
 * @source docs/methods/anaesthetic.md C12
 */
export function anaestheticCautions({ input, set, mass, stops, vasoconstrictors }: Told): string[] {
  const { given, planned } = input;
  const solutions: readonly Solution[] = planned === undefined ? given : [...given, planned];
  return [
    ...stops.map(({ says }) => says),
    `Limits differ by source and country; these are ${set.says}.`,
    ...(set.name === "own" ? aboveEverySet(set) : []),
    ...plainLidocaine(solutions),
    ...ofAChild(input, solutions),
    ...(input.cardiacRisk === true ? cardiacFigures(solutions) : []),
    ...vasoconstrictors.flatMap(({ name, mark }) =>
      mark === "memory" ? [`The limit of ${name} is a value from memory.`] : [],
    ),
    ...(mass.byFormula ? ["The ideal mass is formed by a formula that is recalled from memory."] : []),
    ...(input.bodyMassKg > heavyKg && input.heightCm === undefined && input.idealMassKg === undefined
      ? [`At ${input.bodyMassKg} kg ask for the height: in obesity limits go by the lower, ideal mass (from memory).`]
      : []),
    ...(new Set(solutions.map(({ agent }) => agent)).size > 1
      ? ["That agents add up as fractions of their limits is recalled from memory."]
      : []),
    standingCaution,
  ];
}

function aboveEverySet({ limits }: LimitSet): string[] {
  return [...limits].flatMap(([agent, { mgPerKg = 0, maxMg = 0 }]) => {
    const rows = publishedSets.flatMap((set) => set.limits.get(agent) ?? []);
    if (rows.length === 0)
      return [`No published set that is held here has a limit for ${agent}: the person's own counts alone.`];
    const [kg, mg] = [rows.map((row) => row.mgPerKg ?? 0), rows.map((row) => row.maxMg ?? 0)].map((all) =>
      Math.max(...all),
    );
    const higher = mgPerKg > (kg ?? 0) || maxMg > (mg ?? 0);
    return higher ? [`The limit that was given for ${agent} is above every published one that is held here.`] : [];
  });
}

const plainLidocaine = (solutions: readonly Solution[]): string[] =>
  solutions.some(({ agent, vasoconstrictor }) => agent === "lidocaine" && vasoconstrictor === undefined)
    ? [
        `The limits of lidocaine are printed for solutions with a vasoconstrictor; for a plain one ${plain.plainMgPerKg} mg/kg is recalled (from memory).`,
      ]
    : [];

function ofAChild({ ageYears }: AnaestheticInput, solutions: readonly Solution[]): string[] {
  if (ageYears === undefined || ageYears >= 18) return [];
  const { low, high } = label.childMg;
  return [
    ...(solutions.some(({ vasoconstrictor }) => vasoconstrictor !== undefined)
      ? ["The limits of vasoconstrictors are those of adults: none for a child was found."]
      : []),
    ...(ageYears < label.childUnderYears && solutions.some(({ agent }) => agent === "lidocaine")
      ? [
          `A label says that a child under ${label.childUnderYears} rarely needs more than half a cartridge of lidocaine (${low} to ${high} mg).`,
        ]
      : []),
  ];
}

const cardiacFigures = (solutions: readonly Solution[]): string[] => {
  const others = new Set(solutions.flatMap(({ vasoconstrictor }) => vasoconstrictor?.name ?? []));
  others.delete("epinephrine");
  return [...others].map((name) => `For ${name} no lower limit with cardiac risk was found: ask.`);
};
