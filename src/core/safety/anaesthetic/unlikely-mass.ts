import type { Fault } from "../../refusal.ts";
import type { AnaestheticInput } from "./anaesthetic-input.ts";

/** A fault that a person can confirm to be no fault. */
export interface Unlikely extends Fault {
  /** Whether `confirmed` can let it pass. */
  readonly confirmable: boolean;
}

/** Below this no grown person is believed, whoever confirms it. */
const leastAdultKg = 20;

/** What a mass is asked for: between these, by age. Common practice; at 1 to 10 years half and twice of 2 x (age + 4). */
function usualMass(ageYears: number | undefined): { readonly low: number; readonly high: number } {
  if (ageYears === undefined) return { low: 2, high: 250 };
  if (ageYears < 1) return { low: 2, high: 15 };
  if (ageYears <= 10) return { low: ageYears + 4, high: 4 * (ageYears + 4) };
  if (ageYears < 18) return { low: 20, high: 150 };
  return { low: 30, high: 250 };
}

/**
 * What is unlikely of a mass at an age: kilograms and pounds mixed up, a digit lost.
 * @source common practice; docs/methods/anaesthetic.md C10
 */
export function unlikelyMass({ bodyMassKg, ageYears, idealMassKg }: AnaestheticInput): Unlikely[] {
  const path = "bodyMassKg";
  if (ageYears !== undefined && ageYears >= 18 && bodyMassKg < leastAdultKg)
    return [
      {
        path,
        says: `${bodyMassKg} kg is not the mass of a person of ${ageYears} years; give kilograms, or correct the age`,
        confirmable: false,
      },
    ];
  if (idealMassKg !== undefined && ageYears !== undefined && ageYears >= 18 && idealMassKg < leastAdultKg)
    return [{ path: "idealMassKg", says: `${idealMassKg} kg is not the ideal mass of an adult`, confirmable: false }];
  const { low, high } = usualMass(ageYears);
  if (bodyMassKg >= low && bodyMassKg <= high) return [];
  const at = ageYears === undefined ? "" : ` at ${ageYears} years`;
  return [
    {
      path,
      says: `${bodyMassKg} kg is unusual${at} (${low} to ${high} is usual): kilograms, not pounds? confirm bodyMassKg if it is so`,
      confirmable: true,
    },
  ];
}
