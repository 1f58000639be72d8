import epinephrine from "../../../../data/epinephrine-limits/source.json" with { type: "json" };
import type { AnaestheticInput, HistoryName, Solution, VasoconstrictorName } from "./anaesthetic-input.ts";
import type { Question } from "./anaesthetic-output.ts";

interface Asked {
  readonly about: HistoryName;
  readonly asks: string;
  /** Asked only where it was told: any history of allergies asks for it beforehand. */
  readonly onlyIfTold?: true;
  /** Whether it is asked of these solutions. */
  readonly of: (solutions: readonly Solution[]) => boolean;
}

const holds =
  (...names: readonly VasoconstrictorName[]) =>
  (solutions: readonly Solution[]): boolean =>
    solutions.some(({ vasoconstrictor }) => vasoconstrictor !== undefined && names.includes(vasoconstrictor.name));
const amine = holds("epinephrine", "levonordefrin");
const always = (): boolean => true;

/** All of it from memory: asked, and never told as more than a question. */
const askedOf: readonly Asked[] = [
  {
    about: "unselectiveBetaBlocker",
    asks: "An unselective beta blocker? The vasoconstrictor's limit may have to be lower.",
    of: amine,
  },
  {
    about: "tricyclic",
    asks: "A tricyclic antidepressant? The vasoconstrictor's limit may have to be lower.",
    of: amine,
  },
  {
    about: "cocaineWithinADay",
    asks: "Cocaine within the last 24 hours? Is a vasoconstrictor to be given at all?",
    of: amine,
  },
  {
    about: "uncontrolledBloodPressure",
    asks: "Blood pressure out of control? Does treatment have to wait?",
    of: always,
  },
  {
    about: "uncontrolledThyroid",
    asks: "A thyroid out of control? The vasoconstrictor's limit may have to be lower.",
    of: amine,
  },
  {
    about: "sulphiteAllergy",
    asks: "An allergy to sulphites? Solutions with a vasoconstrictor may hold them.",
    of: amine,
  },
  {
    about: "anaestheticAllergy",
    asks: "An allergy to a local anaesthetic is told. To which agent, and is any of these to be given at all?",
    onlyIfTold: true,
    of: always,
  },
  {
    about: "methaemoglobinRisk",
    asks: "A risk of methaemoglobin (inherited, or by another medicine)? Is prilocaine the agent to give?",
    of: (solutions) => solutions.some(({ agent }) => agent === "prilocaine"),
  },
  { about: "pregnancy", asks: "Pregnant? Agent and vasoconstrictor may have to be chosen anew.", of: always },
  { about: "liverFailure", asks: "Failure of the liver? Limits of amides may have to be lower.", of: always },
];

/**
 * What a person is asked before the sum is relied on: what was answered with no is left out.
 * @source from memory; docs/methods/anaesthetic.md C11
 */
export function doseQuestions(input: AnaestheticInput): Question[] {
  const { given, planned, history = {}, cardiacRisk, ageYears } = input;
  const solutions: readonly Solution[] = planned === undefined ? given : [...given, planned];
  const asked = askedOf.filter(
    ({ about, onlyIfTold, of }) =>
      of(solutions) && (onlyIfTold === true ? history[about] === "yes" : history[about] !== "no"),
  );
  return [
    ...(ageYears === undefined ? [{ about: "ageYears" as const, asks: ageText, mark: "memory" as const }] : []),
    ...(cardiacRisk === undefined && holds("epinephrine")(solutions)
      ? [{ about: "cardiacRisk" as const, asks: cardiacText, mark: "seen" as const }]
      : []),
    ...asked.map(({ about, asks }) => ({
      ...{ about, asks, mark: "memory" as const },
      ...(history[about] === "yes" ? { answered: "yes" as const } : {}),
    })),
  ];
}

const ageText =
  "How old? Under 12 years bupivacaine is a stop; the limits held here are those of adults where no mg/kg is printed.";
const cardiacText = `Significant disease of the heart? Then epinephrine is limited to ${epinephrine.cardiacMicrograms} micrograms in a visit, not ${epinephrine.healthyMicrograms}.`;
