import { canalNames } from "../core/tooth/canal-root.ts";
import { type BodyOf, type Part, type PartOf, partsOf, thePart } from "./parts.ts";

/**
 * How far a canal has come; `looked` is false while nobody has opened the tooth, `with` says what blocks it, and `at` where on
 * the way to the foramen (0 to 1), if that is told.
 */
export type CanalStanding =
  | { readonly state: "notFound"; readonly looked?: false }
  | { readonly state: "located" | "negotiated" | "shaped" | "medicated" | "filled" }
  | { readonly state: "blocked"; readonly with: string; readonly at?: number };

/** The middle of each third of a root. */
const middles: Readonly<Record<string, number>> = { coronal: 1 / 6, middle: 1 / 2, apical: 5 / 6 };

/**
 * The state of every canal as a day left it, by the canal's name.
 * Takes the parts of a case and a day (YYYY-MM-DD, that day included; without one, everything counts). A canal that no
 * visit or examination names yet is not found, or filled where the anatomy says that it came filled; until somebody has opened
 * the tooth it is one that nobody has looked for. A canal that is blocked is so in the third that its last mishap up to that day
 * names.
 */
export function canalStatesOn(parts: readonly Part[], day?: string): Readonly<Record<string, CanalStanding>> {
  const anatomy = thePart(parts, "anatomy")?.body;
  const steps = stepsOf(parts).filter(({ on }) => day === undefined || on <= day);
  const filled = anatomy?.filledBefore ?? [];
  const atFirst: CanalStanding =
    filled.length > 0 || steps.some(({ opened }) => opened)
      ? { state: "notFound" }
      : { state: "notFound", looked: false };
  const states = new Map<string, CanalStanding>();
  for (const name of (anatomy?.roots ?? []).flatMap((root) => canalNames(root)))
    states.set(name, filled.includes(name) ? { state: "filled" } : atFirst);
  const told = partsOf(parts, "mishap").filter((mishap) => day === undefined || mishap.body.on <= day);
  for (const { canals } of steps)
    for (const { canal, becomes } of canals)
      states.set(canal, becomes(states.get(canal) ?? atFirst, placeOf(canal, told)));
  return Object.fromEntries(states);
}

/** What one part says of canals: how each stands after it. */
interface Step {
  readonly on: string;
  /** Somebody was in the tooth, then or before. */
  readonly opened: boolean;
  readonly canals: readonly {
    readonly canal: string;
    readonly becomes: (before: CanalStanding, place: { readonly at?: number }) => CanalStanding;
  }[];
}

/** Examinations and visits in order by day; what an examination met comes before what a visit of that day did. */
function stepsOf(parts: readonly Part[]): readonly Step[] {
  const met = partsOf(parts, "findings").map(
    ({ body }): Step => ({
      on: body.takenOn,
      opened: (body.existing ?? []).some(({ is }) => is !== "untouched"),
      canals: (body.existing ?? []).map(({ canal, is }) => ({ canal, becomes: (before) => metAs(is, before) })),
    }),
  );
  const done = partsOf(parts, "visit").map(
    ({ body }): Step => ({
      on: body.on,
      opened: body.canals.length > 0,
      canals: body.canals.map(({ canal, state, blockedBy }) => ({
        canal,
        becomes: (_, place) => (state === "blocked" ? { state, with: blockedBy ?? "not said", ...place } : { state }),
      })),
    }),
  );
  return [...met, ...done].sort((a, b) => (a.on === b.on ? 0 : a.on < b.on ? -1 : 1));
}

type Met = NonNullable<BodyOf<"findings">["existing"]>[number]["is"];

/** A canal that an examination met opened is located at least; one that it met untouched says nothing new. */
function metAs(is: Met, before: CanalStanding): CanalStanding {
  if (is === "filled" || is === "medicated") return { state: is };
  return is === "opened" && before.state === "notFound" ? { state: "located" } : before;
}

function placeOf(canal: string, mishaps: readonly PartOf<"mishap">[]): { readonly at?: number } {
  const own = mishaps.filter(({ body }) => body.canal === canal && middles[body.third] !== undefined);
  const last = own.sort((a, b) => (a.body.on < b.body.on ? -1 : 1)).at(-1);
  const at = middles[last?.body.third ?? ""];
  return at === undefined ? {} : { at };
}
