import { dayAfter } from "../../../../record/day-after.ts";
import { type DueKind, dueKinds } from "../../../../record/due.ts";
import type { DueView } from "../../../../server/api.ts";
import { daysBetween, spanInWords } from "../../../parts/days-in-words.ts";

/** How far away what is due is, in the order of the page. */
export type DueSpan = "overdue" | "week" | "fourWeeks" | "later";

/** What is due within one span, its last day where it has one. */
export interface DueGroup {
  readonly span: DueSpan;
  readonly name: string;
  readonly to?: string;
  readonly due: readonly DueView[];
}

/** What is shown: some kinds, or all where none is chosen. */
export interface DueFilter {
  readonly kinds: readonly DueKind[];
  readonly origin: "demo" | "own" | "";
}

/** Lets everything through. */
export const everyDue: DueFilter = { kinds: [], origin: "" };

/** The last day of this week: today and the six days after it. */
export const endOfWeek = (today: string): string => dayAfter(today, 6);
const endOfFourWeeks = (today: string): string => dayAfter(today, 27);

/** What a filter lets through. */
export const filteredDue = (due: readonly DueView[], { kinds, origin }: DueFilter): readonly DueView[] =>
  due.filter(
    (one) => (kinds.length === 0 || kinds.includes(one.kind)) && (origin === "" || (origin === "demo") === one.demo),
  );

/** What is due by how far away it is, seen from a day; spans in which nothing is due are left out. */
export function dueGroups(due: readonly DueView[], today: string): readonly DueGroup[] {
  const [week, fourWeeks] = [endOfWeek(today), endOfFourWeeks(today)];
  const between = (from: string, to: string) => due.filter(({ on }) => on >= from && on <= to);
  const groups: DueGroup[] = [
    { span: "overdue", name: "Overdue", due: due.filter(({ on }) => on < today) },
    { span: "week", name: "This week", to: week, due: between(today, week) },
    { span: "fourWeeks", name: "Next four weeks", to: fourWeeks, due: between(dayAfter(week, 1), fourWeeks) },
    { span: "later", name: "Later", due: due.filter(({ on }) => on > fourWeeks) },
  ];
  return groups.filter((group) => group.due.length > 0);
}

/** How many of what is due are over, and how many come this week. */
export interface DueCounts {
  readonly overdue: number;
  readonly week: number;
}

/** See {@link DueCounts}. */
export const dueCounts = (due: readonly DueView[], today: string): DueCounts => ({
  overdue: due.filter(({ on }) => on < today).length,
  week: due.filter(({ on }) => on >= today && on <= endOfWeek(today)).length,
});

/** How many of each kind there are, in the order of the kinds; kinds of which nothing is due are left out. */
export const kindsDue = (due: readonly DueView[]): readonly { readonly kind: DueKind; readonly count: number }[] =>
  dueKinds
    .map((kind) => ({ kind, count: due.filter((one) => one.kind === kind).length }))
    .filter(({ count }) => count > 0);

/** How far away a day is: `12 days over`, `today`, `tomorrow`, `in 9 days`. */
export function distanceOfDue(today: string, on: string): string {
  const days = daysBetween(today, on);
  if (days < 0) return `${spanInWords(-days)} over`;
  if (days < 2) return days === 0 ? "today" : "tomorrow";
  return `in ${spanInWords(days)}`;
}

/** The filter with a kind taken in, or out where it was in. */
export const withKind = (filter: DueFilter, kind: DueKind): DueFilter => ({
  ...filter,
  kinds: filter.kinds.includes(kind) ? filter.kinds.filter((one) => one !== kind) : [...filter.kinds, kind],
});
