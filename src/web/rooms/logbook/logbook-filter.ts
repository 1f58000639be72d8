import type { CaseFacts } from "../../../record/facts.ts";
import { daysBetween } from "../../parts/days-in-words.ts";
import type { ToothView } from "../../record/readings.ts";

/** What the logbook shows of all cases; every field narrows further, an empty one lets everything through. */
export interface LogbookFilter {
  readonly text: string;
  readonly type: ToothView["type"] | "";
  readonly arch: ToothView["arch"] | "";
  readonly treatment: string;
  readonly pulpal: string;
  readonly apical: string;
  readonly mishap: "yes" | "no" | "";
  readonly recall: "due" | "overdue" | "none" | "";
  readonly origin: "demo" | "own" | "";
}

/** Lets everything through. */
export const everyCase: LogbookFilter = {
  ...{ text: "", type: "", arch: "", treatment: "", pulpal: "", apical: "", mishap: "", recall: "", origin: "" },
};

/** A case with its tooth in every notation and how its next day stands. */
export interface LogbookRow extends CaseFacts {
  readonly toothView: ToothView | undefined;
  /** The tooth as the person writes it. */
  readonly written: string;
  readonly recall: RecallState;
}

/** How a case stands towards its next day: nothing planned, later, within two months, or past. */
export type RecallState = "none" | "later" | "due" | "overdue";

const dueWithinDays = 61;

/** See {@link RecallState}. */
export function recallState({ nextOn }: Pick<CaseFacts, "nextOn">, today: string): RecallState {
  if (nextOn === null) return "none";
  const days = daysBetween(today, nextOn);
  if (days < 0) return "overdue";
  return days <= dueWithinDays ? "due" : "later";
}

/** The rows that a filter lets through. */
export function filteredRows(rows: readonly LogbookRow[], filter: LogbookFilter): readonly LogbookRow[] {
  const wanted = filter.text.trim().toLowerCase();
  return rows.filter(
    (row) =>
      (wanted === "" || textOf(row).includes(wanted)) &&
      is(filter.type, row.toothView?.type) &&
      is(filter.arch, row.toothView?.arch) &&
      is(filter.treatment, row.treatment) &&
      is(filter.pulpal, row.pulpal) &&
      is(filter.apical, row.apical) &&
      is(filter.mishap, row.mishaps > 0 ? "yes" : "no") &&
      isRecall(filter.recall, row.recall) &&
      is(filter.origin, row.demo ? "demo" : "own"),
  );
}

const is = (wanted: string, value: string | null | undefined): boolean => wanted === "" || wanted === value;

/** What is overdue is due as well. */
const isRecall = (wanted: LogbookFilter["recall"], state: RecallState): boolean =>
  is(wanted, state) || (wanted === "due" && state === "overdue");

const textOf = ({ pseudonym, tooth, toothView }: LogbookRow): string =>
  [pseudonym, tooth, toothView?.universal, toothView?.quadrant, toothView?.name].join(" ").toLowerCase();

/** What the table can be ordered by. */
export type SortKey =
  | "tooth"
  | "pseudonym"
  | "treatment"
  | "diagnosis"
  | "presentedOn"
  | "filling"
  | "mishaps"
  | "score"
  | "nextOn";
/** An order and its direction. */
export interface Sorting {
  readonly by: SortKey;
  readonly down: boolean;
}

const keyOf: Readonly<Record<SortKey, (row: LogbookRow) => string | number | null>> = {
  tooth: ({ tooth }) => tooth,
  pseudonym: ({ pseudonym }) => pseudonym,
  treatment: ({ treatment }) => treatment,
  diagnosis: ({ pulpal, apical }) => (pulpal === null ? null : `${pulpal} ${apical ?? ""}`),
  presentedOn: ({ presentedOn }) => presentedOn,
  filling: ({ fillingEndMm }) => fillingEndMm,
  mishaps: ({ mishaps }) => mishaps,
  score: ({ lastScore }) => lastScore,
  nextOn: ({ nextOn }) => nextOn,
};

/** The rows in an order; what has no value comes last whichever way. */
export function sortedRows(rows: readonly LogbookRow[], { by, down }: Sorting): readonly LogbookRow[] {
  const key = keyOf[by];
  return [...rows].sort((a, b) => {
    const [left, right] = [key(a), key(b)];
    if (left === right) return a.pseudonym < b.pseudonym ? -1 : 1;
    if (left === null || right === null) return left === null ? 1 : -1;
    return (left < right ? -1 : 1) * (down ? -1 : 1);
  });
}

/** What the rows come to, as counts. */
export interface LogbookSummary {
  readonly cases: number;
  /** Cases whose filling ends are known. */
  readonly filled: number;
  /** Of these, cases whose worst filling end lies 0 to 2 mm short of the apex. */
  readonly within: number;
}

/** Counts over rows. */
export function logbookSummary(rows: readonly LogbookRow[]): LogbookSummary {
  const ends = rows.flatMap(({ fillingEndMm }) => fillingEndMm ?? []);
  return {
    cases: rows.length,
    filled: ends.length,
    within: ends.filter((end) => end >= 0 && end <= 2).length,
  };
}
