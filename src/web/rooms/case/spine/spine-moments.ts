import { dayOf } from "../../../../record/day-of.ts";
import { type Part, type PartKind, type PartOf, partsOf, thePart } from "../../../../record/parts.ts";
import { daysBetween, distanceInWords, spanInWords } from "../../../parts/days-in-words.ts";
import { countOf } from "../../../parts/figures-in-words.ts";
import { lineOf } from "./line-of.ts";

/** One moment of the spine. */
export interface Moment {
  /** The part's id; `films-2026-03-12` for films of a day without a moment; `due` for the next one. */
  readonly id: string;
  readonly day: string;
  /** How far into the case it lies: `day 23`, `7 months`. */
  readonly when: string;
  readonly title: string;
  /** What it holds, in one line. */
  readonly line: string;
  readonly shape: "done" | "mishap" | "due";
  readonly part?: Part;
  readonly films: readonly PartOf<"film">[];
}

/** The kinds that stand on the spine, in the order of one day. */
const order: readonly PartKind[] = [
  ...(["case", "medicalHistory", "findings", "diagnosis", "plan", "consent"] as const),
  ...(["visit", "mishap", "handback", "recall", "review"] as const),
];
const standsOnSpine = (kind: PartKind): boolean => order.includes(kind);

const rank = (kind: PartKind): number => order.indexOf(kind);

/** The moments of a case in order by day, with the films that belong to each and what is due next. */
export function spineMoments(parts: readonly Part[], dueOn: string | null, today: string): readonly Moment[] {
  const first = thePart(parts, "case")?.body.presentedOn ?? today;
  const standing = parts.filter((part) => standsOnSpine(part.kind)).sort(byDayAndKind(first));
  const films = partsOf(parts, "film");
  const placed = new Map(films.map((film) => [film.id, homeOf(film, standing, first)]));
  const moments = standing.map((part): Moment => {
    const day = dayOf(part) ?? first;
    const own = films.filter((film) => placed.get(film.id) === part.id);
    const line = [...lineOf(part), ...filmCount(own.length)].join(" · ");
    const shape = part.kind === "mishap" ? "mishap" : "done";
    return {
      id: part.id,
      day,
      when: dayFrom(first, day),
      title: titleOf(part, standing),
      line,
      shape,
      part,
      films: own,
    };
  });
  const loose = films.filter((film) => placed.get(film.id) === undefined);
  return [...moments, ...filmMoments(loose, first), ...dueMoment(standing, dueOn, today)].sort((a, b) =>
    a.day === b.day ? 0 : a.day < b.day ? -1 : 1,
  );
}

function byDayAndKind(first: string) {
  return (a: Part, b: Part): number => {
    const [dayA, dayB] = [dayOf(a) ?? first, dayOf(b) ?? first];
    if (dayA !== dayB) return dayA < dayB ? -1 : 1;
    return rank(a.kind) - rank(b.kind);
  };
}

/** The moment that a film belongs to: the visit that it names, else the fittest of its day. */
function homeOf(film: PartOf<"film">, standing: readonly Part[], first: string): string | undefined {
  if (standing.some((part) => part.id === film.body.visit)) return film.body.visit;
  const named = standing.find((part) => part.kind === "visit" && part.body.films.includes(film.id));
  if (named !== undefined) return named.id;
  const sameDay = standing.filter((part) => (dayOf(part) ?? first) === film.body.takenOn);
  const fit = ["recall", "visit", "findings", "handback", "case"];
  return fit.flatMap((kind) => sameDay.filter((part) => part.kind === kind))[0]?.id;
}

function filmMoments(loose: readonly PartOf<"film">[], first: string): readonly Moment[] {
  const days = [...new Set(loose.map((film) => film.body.takenOn))];
  return days.map((day) => {
    const films = loose.filter((film) => film.body.takenOn === day);
    const line = filmCount(films.length).join("");
    return { id: `films-${day}`, day, when: dayFrom(first, day), title: "Films", line, shape: "done", films };
  });
}

/** The next day on which the patient is expected, unless something stands on or after it. */
function dueMoment(standing: readonly Part[], dueOn: string | null, today: string): readonly Moment[] {
  if (dueOn === null || standing.some((part) => (dayOf(part) ?? "") >= dueOn)) return [];
  const again = standing.some((part) => ["handback", "recall"].includes(part.kind)) || isFilled(standing);
  const title = again ? "Recall due" : "Visit due";
  const late = daysBetween(today, dueOn) < 0;
  const line = late ? `overdue: it was ${distanceInWords(today, dueOn)}` : distanceInWords(today, dueOn);
  return [{ id: "due", day: dueOn, when: "", title, line, shape: "due", films: [] }];
}

const isFilled = (standing: readonly Part[]): boolean =>
  standing.some((part) => part.kind === "visit" && part.body.canals.some(({ state }) => state === "filled"));

/** What a moment is called on the spine and at the head of its page. */
function titleOf(part: Part, standing: readonly Part[]): string {
  if (part.kind === "visit") {
    const visits = standing.filter(({ kind }) => kind === "visit");
    return `Visit ${visits.indexOf(part) + 1}`;
  }
  return part.kind === "recall" ? recallTitle(part, standing) : titles[part.kind];
}

/** A recall is called by the time since the last visit. */
function recallTitle(recall: PartOf<"recall">, standing: readonly Part[]): string {
  const visits = standing.flatMap((part) =>
    part.kind === "visit" && part.body.on <= recall.body.on ? [part.body.on] : [],
  );
  const last = visits.at(-1);
  return last === undefined ? "Recall" : `Recall, ${spanInWords(daysBetween(last, recall.body.on))}`;
}

/** What each kind of part is called. */
export const titles: Readonly<Record<PartKind, string>> = {
  case: "Presenting",
  anatomy: "Roots and canals",
  medicalHistory: "Medical history",
  findings: "Findings",
  diagnosis: "Diagnosis",
  plan: "Plan",
  consent: "Consent",
  film: "Film",
  mark: "Mark",
  pairing: "Films of a canal's course",
  comparison: "Two dates compared",
  search: "Hidden canal",
  visit: "Visit",
  mishap: "Mishap",
  removal: "Removal weighed",
  handback: "Hand-back",
  recall: "Recall",
  reference: "Reference",
  claim: "Claim",
  review: "Review",
};

/** How far into the case a day lies: `day 23`, later `7 months`. */
function dayFrom(first: string, day: string): string {
  const days = daysBetween(first, day);
  return days < 120 ? `day ${String(days).replace("-", "\u2212")}` : spanInWords(days);
}

const filmCount = (count: number): readonly string[] => (count === 0 ? [] : [countOf(count, "film")]);
