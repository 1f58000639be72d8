import plain from "../../../../data/lidocaine-plain-recalled/source.json" with { type: "json" };
import { standingCaution } from "../standing-caution.ts";
import type { AnaestheticInput, Solution } from "./anaesthetic-input.ts";
import type { AnaestheticOutput, Stop } from "./anaesthetic-output.ts";
import { childCautions } from "./child-cautions.ts";
import type { DosingMass } from "./dosing-mass.ts";
import type { LimitSet } from "./limit-sets.ts";
import { aboveEverySet, aboveHeldLimit } from "./own-limit-cautions.ts";
import { isGrown } from "./without-limit.ts";

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
    ...(set.name === "own" ? aboveEverySet(set, { massKg: mass.kg, grown: isGrown(input, mass.kg) }) : []),
    ...aboveHeldLimit(input),
    ...plainLidocaine(solutions),
    ...childCautions(input, solutions, { set, mass }),
    ...(input.cardiacRisk === true ? cardiacFigures(solutions) : []),
    ...vasoconstrictors.flatMap(({ name, mark }) =>
      mark === "memory" ? [`The limit of ${name} is a value from memory.`] : [],
    ),
    ...(mass.byFormula ? ["The ideal mass is formed by a formula that is recalled from memory."] : []),
    ...(input.bodyMassKg > heavyKg && input.heightCm === undefined && input.idealMassKg === undefined
      ? [`At ${input.bodyMassKg} kg ask for the height: in obesity limits go by the lower, ideal mass (from memory).`]
      : []),
    ...(mass.asksIdeal
      ? [
          `${mass.says.charAt(0).toUpperCase()}${mass.says.slice(1)}; in obesity the lower, ideal mass counts (from memory). Give that mass, or sex and age.`,
        ]
      : []),
    ...(new Set(solutions.map(({ agent }) => agent)).size > 1
      ? ["That agents add up as fractions of their limits is recalled from memory."]
      : []),
    standingCaution,
  ];
}

const plainLidocaine = (solutions: readonly Solution[]): string[] =>
  solutions.some(({ agent, vasoconstrictor }) => agent === "lidocaine" && vasoconstrictor === undefined)
    ? [
        `The limits of lidocaine are printed for solutions with a vasoconstrictor; for a plain one ${plain.plainMgPerKg} mg/kg is recalled (from memory).`,
      ]
    : [];

const cardiacFigures = (solutions: readonly Solution[]): string[] => {
  const others = new Set(solutions.flatMap(({ vasoconstrictor }) => vasoconstrictor?.name ?? []));
  others.delete("epinephrine");
  return [...others].map((name) => `For ${name} no lower limit with cardiac risk was found: ask.`);
};
