import type { AnaestheticTold } from "../../../../../ledger/anaesthetic-told.ts";
import { vasoconstrictorWords } from "../../../../../record/words/visit-words.ts";
import { decimalsFor, numberInWords, quantityInWords } from "../../../../parts/figures-in-words.ts";

type Agent = AnaestheticTold["agents"][number];
type Constrictor = AnaestheticTold["vasoconstrictors"][number];

const unitWords: Readonly<Record<Constrictor["unit"], string>> = { micrograms: "µg", IU: "IU" };

/** A share of a limit: `0.42 of the limit, below`, `1.12 of the limit, above`. */
export const fractionInWords = (fraction: number): string =>
  `${shareText(fraction)} of the limit, ${standing(fraction)}`;

/** The shape that goes with a share of a limit: above it, at or below it, or not known. */
export const limitMark = (fraction: number | undefined): string =>
  fraction === undefined ? "◇" : fraction > 1 ? "▲" : "●";

const standing = (fraction: number): string => (fraction > 1 ? "above" : fraction === 1 ? "at it" : "below");

/** To two decimals, to more where two would hide that it lies above 1. */
function shareText(fraction: number): string {
  const rounded = numberInWords(fraction, 2);
  return fraction > 1 && rounded === "1.00" ? numberInWords(fraction, 5) : rounded;
}

/** `epinephrine 36 µg of 200 µg, 0.18 of the limit, below`. */
export function vasoconstrictorInWords({ name, given, limit, unit, fraction }: Constrictor): string {
  const amount = `${vasoconstrictorWords[name]} ${quantity(given, unitWords[unit])}`;
  if (limit === undefined || fraction === undefined) return `${amount}; no limit of it is known here`;
  return `${amount} of ${quantity(limit, unitWords[unit])}, ${fractionInWords(fraction)}`;
}

/** `122 mg of 500 mg, 0.24 of the limit, below`. */
export const agentInWords = ({ givenMg, limitMg, fraction }: Agent): string =>
  `${quantity(givenMg, "mg")} of ${quantity(limitMg, "mg")}, ${fractionInWords(fraction)}`;

/** An amount to as many figures as it deserves. */
export const quantity = (value: number, unit: string): string =>
  unit === "" ? numberInWords(value, decimalsFor(value)) : quantityInWords(value, unit);
