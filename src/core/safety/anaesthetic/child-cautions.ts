import children from "../../../../data/aapd-2023-recalled/source.json" with { type: "json" };
import label from "../../../../data/lidocaine-label-2018/source.json" with { type: "json" };
import { agentLimit } from "./agent-limit.ts";
import type { AnaestheticInput, Solution } from "./anaesthetic-input.ts";
import type { DosingMass } from "./dosing-mass.ts";
import type { LimitSet } from "./limit-sets.ts";
import { grownKg, grownYears } from "./without-limit.ts";

/**
 * What is to be known of limits where the person is a child, or may be one.
 * Takes the doses, given and planned, and the set and mass that they are held to.
 * @source the label of 2018 (seen), a body for children (memory); docs/methods/anaesthetic.md C12
 */
export function childCautions(
  { ageYears, bodyMassKg }: AnaestheticInput,
  solutions: readonly Solution[],
  { set, mass }: { readonly set: LimitSet; readonly mass: DosingMass },
): string[] {
  // Whose age nobody told and who is light may be a child.
  const age = ageYears ?? (bodyMassKg < grownKg ? undefined : grownYears);
  if (age !== undefined && age >= grownYears) return [];
  const { low, high } = label.childMg;
  const lidocaine = solutions.some(({ agent }) => agent === "lidocaine");
  return [
    ...(solutions.some(({ vasoconstrictor }) => vasoconstrictor !== undefined)
      ? ["The limits of vasoconstrictors are those of adults: none for a child was found."]
      : []),
    ...(lidocaine ? lowerForChildren(set, mass) : []),
    ...(age !== undefined && age < label.childUnderYears && lidocaine
      ? [
          `A label says that a child under ${label.childUnderYears} rarely needs more than half a cartridge of lidocaine (${low} to ${high} mg).`,
        ]
      : []),
  ];
}

/** What a body for children is recalled to hold to, where the chosen set allows more. */
function lowerForChildren({ limits }: LimitSet, { kg }: DosingMass): string[] {
  const chosen = limits.get("lidocaine");
  if (chosen === undefined) return [];
  const { micrograms } = agentLimit(children.lidocaine, kg);
  if (agentLimit(chosen, kg).micrograms <= micrograms) return [];
  const { mgPerKg, maxMg } = children.lidocaine;
  return [
    `For children a lower limit of lidocaine is recalled: ${mgPerKg} mg/kg, ${maxMg} mg at most, which is ${micrograms / 1_000} mg here (from memory: look it up).`,
  ];
}
