import { canalNames } from "../core/tooth/canal-root.ts";
import { type Part, partsOf, thePart } from "./parts.ts";

/** How far a canal has come; `with` says what blocks it. */
export type CanalStanding =
  | { readonly state: "notFound" | "located" | "negotiated" | "shaped" | "medicated" | "filled" }
  | { readonly state: "blocked"; readonly with: string };

/**
 * The state of every canal as a day left it, by the canal's name.
 * Takes the parts of a case and a day (YYYY-MM-DD, that day included; without one, everything counts). A canal that no
 * visit names yet is not found, or filled where the anatomy says that it came filled.
 */
export function canalStatesOn(parts: readonly Part[], day?: string): Readonly<Record<string, CanalStanding>> {
  const anatomy = thePart(parts, "anatomy")?.body;
  const states = new Map<string, CanalStanding>();
  for (const name of (anatomy?.roots ?? []).flatMap((root) => canalNames(root)))
    states.set(name, { state: anatomy?.filledBefore?.includes(name) === true ? "filled" : "notFound" });
  const visits = partsOf(parts, "visit").filter((visit) => day === undefined || visit.body.on <= day);
  for (const visit of visits.sort((a, b) => (a.body.on < b.body.on ? -1 : 1)))
    for (const { canal, state, blockedBy } of visit.body.canals)
      states.set(canal, state === "blocked" ? { state, with: blockedBy ?? "not said" } : { state });
  return Object.fromEntries(states);
}
