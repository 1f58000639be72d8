import { type Part, partsOf } from "../parts.ts";

/**
 * The medicament that the visit before left in the tooth.
 * Takes the parts of a case and the id of the visit that is asked about. Gives undefined where the visit before left none, or
 * where there is none before.
 */
export function medicamentBefore(parts: readonly Part[], visitId: string) {
  const visits = partsOf(parts, "visit");
  const on = visits.find(({ id }) => id === visitId)?.body.on ?? "";
  const before = visits
    .filter(({ id, body }) => id !== visitId && body.on < on)
    .sort((a, b) => a.body.on.localeCompare(b.body.on))
    .at(-1)?.body.medicament;
  return before === undefined || before.kind === "none" ? undefined : before;
}
