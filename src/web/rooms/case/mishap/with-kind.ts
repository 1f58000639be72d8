import { canonicalJson } from "../../../../record/canonical-json.ts";
import { mishapKinds } from "../../../../record/parts/mishap-kinds.ts";
import type { BodyOf } from "../../../../record/parts.ts";

/** A mishap as the record holds it. */
export type Mishap = BodyOf<"mishap">;
/** A kind of mishap. */
export type MishapKind = Mishap["what"];

/** What each kind asks, before anything is said. */
export const starts = {
  separated: {
    signs: [],
    tipBound: "notKnown",
    stoppedAtTorqueLimit: "notKnown",
    headSeen: "notLooked",
    stage: "notRecorded",
  },
  ledge: { wall: "notKnown", passed: "notTried" },
  perforation: { side: "notKnown", bleeding: "notAsked", pocket: "notAsked" },
  block: { by: "notKnown", passed: "notTried" },
  transportation: { seenOn: "" },
  irrigantExtrusion: { solution: "", needleBound: "notKnown", signs: [] },
  fillingExtrusion: { material: "", near: "notKnown", numbness: "notAsked" },
  missedCanal: { foundBy: "", treated: "notYet" },
  wrongTooth: { noticedBy: "", restored: "" },
  swallowedOrInhaled: { object: "", went: "notKnown", signs: [], found: "notYet" },
} as const satisfies Partial<Mishap>;

/** Where what a kind asks stands in the body. */
export type DetailName = keyof typeof starts;
const everyName: readonly DetailName[] = mishapKinds.flatMap((kind) => detailOf(kind) ?? []);

/** The place of what a kind asks; none where the kind has no name. */
export function detailOf(kind: MishapKind): DetailName | undefined {
  if (kind === "other") return undefined;
  return kind === "separatedInstrument" ? "separated" : kind;
}

/** The kind whose details stand at a place. */
export const kindOf = (detail: DetailName): MishapKind => (detail === "separated" ? "separatedInstrument" : detail);

/** Whether something was said at the place of a kind. */
const isFilled = (mishap: Mishap, detail: DetailName): boolean =>
  mishap[detail] !== undefined && canonicalJson(mishap[detail]) !== canonicalJson(starts[detail]);

/** Places of other kinds at which something was said earlier; it is kept. */
export const keptDetails = (mishap: Mishap): readonly DetailName[] =>
  everyName.filter((name) => name !== detailOf(mishap.what) && isFilled(mishap, name));

/** The mishap with the record of its kind begun. */
export function withDetails(mishap: Mishap): Mishap {
  const detail = detailOf(mishap.what);
  return detail === undefined || mishap[detail] !== undefined ? mishap : { ...mishap, [detail]: starts[detail] };
}

/** The mishap as one of another kind: what was said of the earlier one is kept, an untouched form is not. */
export function withKind(mishap: Mishap, what: MishapKind): Mishap {
  const untouched = everyName.filter((name) => mishap[name] !== undefined && !isFilled(mishap, name));
  return withDetails({ ...untouched.reduce(without, mishap), what });
}

function without(mishap: Mishap, name: DetailName): Mishap {
  const { [name]: _untouched, ...others } = mishap;
  return others;
}
