import { canalNames } from "../core/tooth/canal-root.ts";
import { type Part, type PartOf, partsOf, thePart } from "./parts.ts";

/** How far a canal has come; `with` says what blocks it, and `at` where on the way to the foramen (0 to 1), if that is told. */
export type CanalStanding =
  | { readonly state: "notFound" | "located" | "negotiated" | "shaped" | "medicated" | "filled" }
  | { readonly state: "blocked"; readonly with: string; readonly at?: number };

/** The middle of each third of a root. */
const middles: Readonly<Record<string, number>> = { coronal: 1 / 6, middle: 1 / 2, apical: 5 / 6 };

/**
 * The state of every canal as a day left it, by the canal's name.
 * Takes the parts of a case and a day (YYYY-MM-DD, that day included; without one, everything counts). A canal that no
 * visit names yet is not found, or filled where the anatomy says that it came filled. A canal that is blocked is so in the
 * third that its last mishap up to that day names.
 */
export function canalStatesOn(parts: readonly Part[], day?: string): Readonly<Record<string, CanalStanding>> {
  const anatomy = thePart(parts, "anatomy")?.body;
  const states = new Map<string, CanalStanding>();
  for (const name of (anatomy?.roots ?? []).flatMap((root) => canalNames(root)))
    states.set(name, { state: anatomy?.filledBefore?.includes(name) === true ? "filled" : "notFound" });
  const told = partsOf(parts, "mishap").filter((mishap) => day === undefined || mishap.body.on <= day);
  const visits = partsOf(parts, "visit").filter((visit) => day === undefined || visit.body.on <= day);
  for (const visit of visits.sort((a, b) => (a.body.on < b.body.on ? -1 : 1)))
    for (const { canal, state, blockedBy } of visit.body.canals)
      states.set(
        canal,
        state === "blocked" ? { state, with: blockedBy ?? "not said", ...placeOf(canal, told) } : { state },
      );
  return Object.fromEntries(states);
}

function placeOf(canal: string, mishaps: readonly PartOf<"mishap">[]): { readonly at?: number } {
  const own = mishaps.filter(({ body }) => body.canal === canal && middles[body.third] !== undefined);
  const last = own.sort((a, b) => (a.body.on < b.body.on ? -1 : 1)).at(-1);
  const at = middles[last?.body.third ?? ""];
  return at === undefined ? {} : { at };
}
