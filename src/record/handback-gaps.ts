import { inOrder } from "./in-order.ts";
import { type BodyOf, type Part, partsOf } from "./parts.ts";
import { partsOn } from "./parts-on.ts";

type Handback = BodyOf<"handback">;

/** Something that a letter of hand-back should say and the record does not hold. */
export interface HandbackGap {
  /** The field of the hand-back; absent where another moment holds it. */
  readonly at?: keyof Handback;
  /** The kind of moment that holds it, where it is another. */
  readonly of?: "visit" | "diagnosis" | "case" | "handback";
  readonly says: string;
}

/**
 * What is missing for a letter of hand-back.
 * Takes the parts of a case and the hand-back that the letter is of; what came after it is not in the letter. Gives one line for each thing that is not recorded, in the
 * order of the letter; a letter can be made with all of them open, and prints them.
 */
export function handbackGaps(parts: readonly Part[], handback: Handback | undefined): readonly HandbackGap[] {
  const stood = handback === undefined ? parts : partsOn(parts, handback.on);
  return [...ofCase(stood), ...(handback === undefined ? [noHandback] : ofHandback(handback))];
}

const noHandback: HandbackGap = { of: "handback", says: "The hand-back itself: no such moment is recorded" };

function ofCase(parts: readonly Part[]): HandbackGap[] {
  const visits = inOrder(partsOf(parts, "visit")).map(({ body }) => body);
  const [about] = partsOf(parts, "case");
  const filled = visits.some(({ canals }) => canals.some(({ state }) => state === "filled"));
  const closed = visits.some(({ temporary, buildUp = "" }) => temporary !== undefined || buildUp !== "");
  const lots = visits.some((visit) => visit.lots.length > 0);
  return [
    ...(about === undefined || about.body.referredFor === "" ? [gap("case", "Why the patient was sent")] : []),
    ...(partsOf(parts, "diagnosis").length === 0 ? [gap("diagnosis", "The diagnosis")] : []),
    ...(visits.length === 0 ? [gap("visit", "What was done: no visit is recorded")] : []),
    ...(visits.length > 0 && !filled ? [gap("visit", "A filled canal: none is recorded")] : []),
    ...(visits.length > 0 && !closed ? [gap("visit", "How the tooth is closed: temporary filling or build-up")] : []),
    ...(visits.length > 0 && !lots ? [gap("visit", "Lots of what stays in the tooth")] : []),
  ];
}

const gap = (of: NonNullable<HandbackGap["of"]>, says: string): HandbackGap => ({ of, says });

const fields: readonly (readonly [keyof Handback, string])[] = [
  ["to", "To whom the letter goes"],
  ["restoreWith", "What it is to be restored with"],
  ["restoreBy", "By when it is to be restored"],
  ["orificesMarkedBy", "How the orifices are marked"],
  ["warnings", "What whoever enters again must know"],
  ["prognosis", "The outlook, in own words"],
  ["figure", "A published figure for the outlook, with its n/N"],
  ["recallOn", "When the tooth is seen again"],
  ["painAdvice", "Which pain is to be expected and when to call"],
];

const ofHandback = (handback: Handback): HandbackGap[] =>
  fields.flatMap(([at, says]) => (handback[at] === undefined || handback[at] === "" ? [{ at, says }] : []));
