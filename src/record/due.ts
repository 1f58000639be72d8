import { dayAfter } from "./day-after.ts";
import { inOrder } from "./in-order.ts";
import { type Part, type PartOf, partsOf } from "./parts.ts";

/** What a case can owe, in the order in which it is listed. The rules D1 to D6 stand in docs/due.md. */
export const dueKinds = ["visit", "medicament", "restoration", "recall", "painAfterDay", "painAfterWeek"] as const;
/** One of {@link dueKinds}. */
export type DueKind = (typeof dueKinds)[number];

/** One thing that a case owes: on which day, and the part that says so. */
export interface Due {
  readonly kind: DueKind;
  readonly on: string;
  readonly partId: string;
  /** The last day on which it is asked for; null where it stays until it is done. */
  readonly askedUntil: string | null;
}

/** What is due with the case that owes it. */
export interface DueOfCase extends Omit<Due, "askedUntil"> {
  readonly caseId: string;
  /** How often the part that says so was changed. */
  readonly revision: number;
  readonly pseudonym: string;
  readonly tooth: string;
  readonly demo: boolean;
}

/** Pain is asked about for so many days after a visit; what is remembered later is no record of that day. */
const painAskedDays = 31;

/** What a case owes by its parts, by day; nothing once its tooth is lost (D6). */
export function dueOf(parts: readonly Part[]): Due[] {
  const visits = inOrder(partsOf(parts, "visit"));
  const recalls = inOrder(partsOf(parts, "recall"));
  const handbacks = inOrder(partsOf(parts, "handback"));
  if (recalls.at(-1)?.body.retained === "lost") return [];
  const due = [
    ...visitDue(visits.at(-1), handbacks, recalls),
    ...recallDue(visits, handbacks, recalls),
    ...medicamentDue(visits),
    ...restorationDue(handbacks.at(-1), recalls),
    ...visits.flatMap(painDue),
  ];
  const place = ({ on, kind, partId }: Due) => `${on} ${dueKinds.indexOf(kind)} ${partId}`;
  return due.sort((a, b) => (place(a) < place(b) ? -1 : 1));
}

/** The day on which the patient is expected next, for a visit or a recall; undefined where none was named. */
export const nextDueOf = (parts: readonly Part[]): Due | undefined =>
  dueOf(parts).find(({ kind }) => kind === "visit" || kind === "recall");

type Parts<Kind extends Part["kind"]> = readonly PartOf<Kind>[];

const stays = (kind: DueKind, on: string | undefined, { id }: Pick<Part, "id">): Due[] =>
  on === undefined ? [] : [{ kind, on, partId: id, askedUntil: null }];

/** The next visit (D1) that the last one names, until the tooth was handed back or seen at a recall. */
function visitDue(visit: PartOf<"visit"> | undefined, handbacks: Parts<"handback">, recalls: Parts<"recall">): Due[] {
  if (visit === undefined) return [];
  const isDone =
    handbacks.some(({ body }) => body.on >= visit.body.on) || recalls.some(({ body }) => body.on > visit.body.on);
  return isDone ? [] : stays("visit", visit.body.nextOn, visit);
}

/** The next recall (D2), as the last hand-back or a recall after it names it. */
function recallDue(visits: Parts<"visit">, handbacks: Parts<"handback">, recalls: Parts<"recall">): Due[] {
  const [handback, recall] = [handbacks.at(-1), recalls.at(-1)];
  const seenAfter = (part: PartOf<"visit"> | PartOf<"handback">) => (recall?.body.on ?? "") > part.body.on;
  const ofRecall = recall === undefined ? [] : stays("recall", recall.body.nextOn, recall);
  if (handback === undefined || seenAfter(handback)) return ofRecall;
  if (handback.body.recallOn !== undefined) return stays("recall", handback.body.recallOn, handback);
  const last = visits.filter(({ body }) => body.on <= handback.body.on).at(-1);
  return last?.body.nextOn === undefined || seenAfter(last) ? ofRecall : stays("recall", last.body.nextOn, last);
}

/** The medicament that was left last (D3), until it is out or the canals are filled. */
function medicamentDue(visits: Parts<"visit">): Due[] {
  const left = visits.filter(({ body }) => body.medicament !== undefined).at(-1);
  if (left === undefined || left.body.medicament?.kind === "none") return [];
  const later = visits.slice(visits.indexOf(left) + 1);
  const isOut = later.some(({ body }) => body.medicamentOut === "removed");
  return isOut || areFilled(visits, later) ? [] : stays("medicament", left.body.medicament?.changeBy, left);
}

/** Whether a later visit filled a canal and none is left with a medicament in it. */
function areFilled(visits: Parts<"visit">, later: Parts<"visit">): boolean {
  const states = new Map(visits.flatMap(({ body }) => body.canals.map(({ canal, state }) => [canal, state])));
  const someFilled = later.some(({ body }) => body.canals.some(({ state }) => state === "filled"));
  return someFilled && ![...states.values()].includes("medicated");
}

/** The restoration that the last hand-back asks for (D4), until a recall finds one, be it sound or defective. */
function restorationDue(handback: PartOf<"handback"> | undefined, recalls: Parts<"recall">): Due[] {
  if (handback === undefined) return [];
  const isRestored = recalls.some(
    ({ body }) => body.on >= handback.body.on && (body.restoration === "sound" || body.restoration === "defective"),
  );
  return isRestored ? [] : stays("restoration", handback.body.restoreBy, handback);
}

/** Pain after a day and after a week (D5), of each visit that does not have it. */
function painDue({ id, body }: PartOf<"visit">): Due[] {
  const asked = { partId: id, askedUntil: dayAfter(body.on, painAskedDays) };
  return [
    ...(body.painAfter24h === undefined ? [{ kind: "painAfterDay", on: dayAfter(body.on, 1), ...asked } as const] : []),
    ...(body.painAfter7d === undefined ? [{ kind: "painAfterWeek", on: dayAfter(body.on, 7), ...asked } as const] : []),
  ];
}
