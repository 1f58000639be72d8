import { percent } from "../../percent.ts";
import type { TestStrengthInput } from "./test-strength-input.ts";
import type { Chance, StrengthStep } from "./test-strength-output.ts";

/** What the steps came to, as far as cautions speak of it. */
export interface FoundStrength {
  readonly steps: readonly StrengthStep[];
  readonly conditions: readonly (string | undefined)[];
  readonly bounds: { readonly independent: number; readonly redundant: number };
  readonly prior: Chance;
}

const callOf = ({ test, name }: Pick<StrengthStep, "test" | "name">): string => name ?? wordOf[test];
const wordOf: Readonly<Record<StrengthStep["test"], string>> = {
  ...{ cold: "cold", heat: "heat", electric: "the electric test", percussion: "percussion", palpation: "palpation" },
  ...{ pulseOximetry: "pulse oximetry", laserDoppler: "laser Doppler flowmetry", custom: "the custom test" },
};

/** What speaks against taking the probability as it stands. */
export function cautionsOfStrength(input: TestStrengthInput, found: FoundStrength): string[] {
  return [
    ...cautionsOfCertainty(found),
    ...cautionsOfDependence(input, found),
    ...cautionsOfPooling(found),
    ...cautionsOfReference(found),
    ...cautionsOfPercussion(found),
    ...cautionsOfReplies(input, found),
  ];
}

/** Exact 0 and 1 come of small samples, and no later result can move them. */
function cautionsOfCertainty({ steps, prior }: FoundStrength): string[] {
  const certain = steps.filter(
    ({ sensitivity, specificity, counts, result }) =>
      counts === undefined && (result === "positive" ? specificity === 1 : sensitivity === 1),
  );
  return [
    ...certain.map(
      (step) =>
        `${callOf(step)} is given a ${step.result === "positive" ? "specificity" : "sensitivity"} of exactly 1: its result then ` +
        "settles the matter by itself; no series shows that; give counts",
    ),
    ...(prior.interval === undefined && (prior.mean === 0 || prior.mean === 1)
      ? [`The probability before the tests is given as exactly ${prior.mean}: no result can move it`]
      : []),
  ];
}

function cautionsOfDependence({ dependence }: TestStrengthInput, { steps, bounds }: FoundStrength): string[] {
  const shared = [...new Set(steps.map(({ group }) => group))].flatMap((group) => {
    const own = steps.filter((step) => step.group === group);
    return own.length > 1 ? [own.map(callOf).join(" and ")] : [];
  });
  if (shared.length === 0) return [];
  const taken = dependence === 0 ? "independent given the state of the pulp" : `dependent by ${dependence} of 1`;
  return [
    `${shared.join("; ")}: taken as ${taken}. Independent they would give ${percent(bounds.independent)}, the strongest of ` +
      `each group alone ${percent(bounds.redundant)}`,
  ];
}

const pooled = "mainkar-kim-2018";

function cautionsOfPooling({ steps }: FoundStrength): string[] {
  const own = steps.filter(({ accuracyFrom }) => accuracyFrom === pooled);
  if (own.length === 0) return [];
  return [
    `The pooled accuracy of ${own.map(callOf).join(", ")} was printed without an interval: it is taken as exact, and the ` +
      "interval shown is too narrow; see what the single studies give. All but three of its 28 studies were of low quality",
  ];
}

function cautionsOfReference({ steps, conditions }: FoundStrength): string[] {
  return steps.flatMap((step, index) => {
    const condition = conditions[index];
    if (condition === undefined || condition === "non-vital pulp") return [];
    return [`The accuracy taken for ${callOf(step)} was held against ${condition}, not against a non-vital pulp`];
  });
}

/** In 708 teeth percussion pain was nearly as frequent over vital as over non-vital pulps (Pigg 2016, seen). */
function cautionsOfPercussion({ steps }: FoundStrength): string[] {
  return steps.some(({ test, accuracyFrom }) => test === "percussion" && accuracyFrom === "pigg-2016")
    ? [
        "Percussion says next to nothing about the pulp (a ratio of 1.22 for pain, 0.69 for none): it speaks of the ligament",
      ]
    : [];
}

const failures = {
  openApex: "an open apex",
  trauma: "a recent injury",
  calcified: "a calcified canal",
} as const;

const repliedNotHealthy =
  "A reply speaks for a vital pulp, not for a healthy one: it does not tell whether an inflammation will settle, and in a tooth of " +
  "several roots another canal may be necrotic";

function cautionsOfReplies({ controls, replyMayFailFor = [] }: TestStrengthInput, { steps }: FoundStrength): string[] {
  const sensed = steps.filter(({ test }) => test === "cold" || test === "heat" || test === "electric");
  const silent = sensed.some(({ result }) => result === "positive");
  if (sensed.length === 0) return [];
  return [
    ...(sensed.some(({ result }) => result === "negative") ? [repliedNotHealthy] : []),
    ...(controls === "noneReplied"
      ? [
          "No control tooth replied: the lack of a reply in this tooth then says little or nothing, and the result is unreferenced",
        ]
      : []),
    ...(controls === "notTested" ? ["No control tooth was tested: the replies are unreferenced"] : []),
    ...(silent && replyMayFailFor.length > 0
      ? [
          `With ${replyMayFailFor.map((why) => failures[why]).join(" and ")} a vital pulp may not reply: the published ` +
            "specificity is of teeth without that, and the probability is likely too high",
        ]
      : []),
  ];
}
