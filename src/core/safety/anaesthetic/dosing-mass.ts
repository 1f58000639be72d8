import devine from "../../../../data/devine-1974/source.json" with { type: "json" };
import type { AnaestheticInput } from "./anaesthetic-input.ts";
import { roundedDown } from "./dose-amounts.ts";

/** From where obesity is taken to begin: kg in the square of metres (from memory). */
const obeseFrom = 30;

/** What limits by mass are reckoned with, and why. */
export interface DosingMass {
  readonly kg: number;
  readonly says: string;
  /** Whether the recalled formula of an ideal mass was used. */
  readonly byFormula: boolean;
  /** Whether there is obesity and no ideal mass could be formed. */
  readonly asksIdeal?: boolean;
}

type Person = Pick<AnaestheticInput, "bodyMassKg" | "ageYears" | "heightCm" | "sex" | "idealMassKg">;

/**
 * The mass that doses are reckoned by: in obesity the lower of actual and ideal mass.
 * @source Devine 1974 (memory); docs/methods/anaesthetic.md C4
 */
export function dosingMass(person: Person): DosingMass {
  const { bodyMassKg, idealMassKg } = person;
  const actual = { kg: bodyMassKg, byFormula: false };
  if (idealMassKg !== undefined)
    return idealMassKg < bodyMassKg
      ? { kg: idealMassKg, byFormula: false, says: `ideal mass as given, below the actual ${bodyMassKg} kg` }
      : { ...actual, says: `actual mass, not above the ideal ${idealMassKg} kg that was given` };
  const index = massIndex(person);
  if (index === undefined) return { ...actual, says: "actual mass; without a height obesity is not looked at" };
  if (index < obeseFrom)
    return { ...actual, says: `actual mass; ${index.toFixed(1)} kg/m2 is below ${obeseFrom} (from memory)` };
  const ideal = idealMass(person);
  if (ideal === undefined || ideal >= bodyMassKg)
    return {
      ...actual,
      asksIdeal: true,
      says: `actual mass at ${index.toFixed(1)} kg/m2: no ideal mass below it can be formed`,
    };
  return {
    kg: ideal,
    byFormula: true,
    says: `ideal mass for the height, below the actual ${bodyMassKg} kg at ${index.toFixed(1)} kg/m2 (from memory)`,
  };
}

const massIndex = ({ bodyMassKg, heightCm }: Person): number | undefined =>
  heightCm === undefined ? undefined : bodyMassKg / (heightCm / 100) ** 2;

/** To a tenth of a kg, downwards; the formula is for adults of at least its own height. */
function idealMass({ ageYears = 0, heightCm = 0, sex }: Person): number | undefined {
  if (sex === undefined || ageYears < 18 || heightCm < devine.atCm) return undefined;
  const start = sex === "female" ? devine.femaleKg : devine.maleKg;
  return roundedDown((start + (devine.stepKg * (heightCm - devine.atCm)) / devine.stepCm) * 10) / 10;
}
