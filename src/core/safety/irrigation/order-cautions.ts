import type { IrrigationInput } from "./irrigation-input.ts";
import { isChelator, isRinse, nameOf } from "./solution-kinds.ts";

/**
 * What the order of solutions, what follows, and an allergy speak for.
 * @source from memory and common practice; docs/methods/irrigation.md C7
 */
export function orderCautions({ sequence, bondingNext, iodineAllergy }: IrrigationInput): string[] {
  const active = sequence.filter(({ solution, volumeMl }) => !isRinse(solution) && volumeMl > 0);
  const names = active.map(({ solution }) => nameOf(solution));
  const endsWithHypochlorite = names.at(-1) === "sodium hypochlorite";
  return [
    ...(endsWithHypochlorite && names.some(isChelator)
      ? ["Hypochlorite last after a chelator: some see dentine eroded by it, others want it; contested (from memory)."]
      : []),
    ...(endsWithHypochlorite ? bonding(bondingNext) : []),
    ...(names.includes("iodine") ? iodine(iodineAllergy) : []),
  ];
}

function bonding(next?: boolean): string[] {
  if (next === false) return [];
  const says = "hypochlorite last can weaken a bond to dentine (from memory)";
  return [next === true ? `Dentine is bonded next: ${says}.` : `Is dentine bonded next? ${capital(says)}.`];
}

function iodine(allergy?: boolean): string[] {
  if (allergy === false) return [];
  return [
    allergy === true
      ? "Iodine was used, and an allergy to iodine is recorded: ask before any more of it (from memory)."
      : "An allergy to iodine? Ask before it is used (from memory).",
  ];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
