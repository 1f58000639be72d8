import { type Part, partsOf } from "./parts.ts";

/**
 * The ledger entries on which the decisions of a case were made, whether they still hold or not.
 * Takes the parts of a case.
 * Gives the id of each entry once, in the order of the parts.
 */
export function decidedOn(parts: readonly Part[]): readonly string[] {
  const plans = partsOf(parts, "plan").flatMap(({ body }) => [body.planEntry, body.difficultyEntry]);
  const diagnoses = partsOf(parts, "diagnosis").map(({ body }) => body.suggestion);
  const told = partsOf(parts, "handback").map(({ body }) => body.figure?.entry);
  return [...new Set([...diagnoses, ...plans, ...told].filter((id) => id !== undefined))];
}
