import type { Entry } from "./diagnosis-output.ts";
import type { Facts } from "./facts-of.ts";
import { findingOf, holds } from "./hold.ts";
import { missing } from "./missing.ts";
import { type Row, rows } from "./rules.ts";

/** One axis as the table decides it. */
export interface AxisDecision {
  readonly term: string;
  readonly status: Row["status"];
  readonly for: Entry[];
  readonly against: Entry[];
  readonly alternatives: { term: string; separatedBy: string }[];
  /** What would raise a possible term to a determined one, or give a term at all. */
  readonly missing: string[];
}

/**
 * The term of one axis: the first row that holds decides; what is missing makes it possible, and leaves other terms open.
 * Takes the axis, the facts, and what speaks against every term that rests on pain (the pain's source, if not this tooth).
 * @source docs/methods/diagnosis, C9 and C10
 */
export function decideAxis(axis: "pulpal" | "apical", facts: Facts, elsewhere: readonly Entry[]): AxisDecision {
  const deciding = rows.filter((row) => row.axis === axis && row.kind === "term");
  const first = deciding.findIndex((row) => holds(row.when, facts) === "yes");
  const row = deciding[first];
  if (row === undefined) return undecided(axis, deciding, facts);
  const unsettled = missing(row.settledBy, facts);
  const doubted = row.restsOnPain && elsewhere.length > 0;
  const status = row.status === "determined" && (unsettled.length > 0 || doubted) ? "possible" : row.status;
  const stillOpen = status === "determined" ? deciding.slice(0, first) : deciding;
  return {
    term: row.term,
    status,
    for: [...deciding.filter((one) => one.term === row.term), ...speaking(axis, "for", row.term)].flatMap((one) =>
      entryIf(one, facts),
    ),
    against: [
      ...speaking(axis, "against", row.term).flatMap((one) => entryIf(one, facts)),
      ...(doubted ? elsewhere : []),
    ],
    alternatives: alternatives(row.term, [...row.open, ...keptOpen(axis, facts), ...opened(stillOpen, facts)]),
    missing: status === "determined" ? [] : row.status === "not determined" ? openFacts(deciding, facts) : unsettled,
  };
}

/** No row holds: every term that what is missing could still give stands as an alternative. */
function undecided(axis: string, deciding: readonly Row[], facts: Facts): AxisDecision {
  const open = alternatives("", [...keptOpen(axis, facts), ...opened(deciding, facts)]);
  const none = "not determined";
  return { term: none, status: none, for: [], against: [], alternatives: open, missing: openFacts(deciding, facts) };
}

const speaking = (axis: string, side: "for" | "against", term: string): Row[] =>
  rows.filter((row) => row.axis === axis && row.kind === "speaks" && row[side].includes(term));

/** A row as an entry, where it holds. */
export function entryIf(row: Row, facts: Facts): Entry[] {
  if (holds(row.when, facts) !== "yes") return [];
  return [{ row: row.id, finding: findingOf(row.when, facts), says: row.says }];
}

type Open = { readonly term: string; readonly separatedBy: string };

const keptOpen = (axis: string, facts: Facts): Open[] =>
  rows.filter((row) => row.axis === axis && row.kind === "open" && holds(row.when, facts) === "yes");

/** The terms of rows that neither hold nor fail, with what would tell. */
const opened = (deciding: readonly Row[], facts: Facts): Open[] =>
  openRows(deciding, facts).map((row) => ({
    term: row.term,
    separatedBy: missing(unknownWanted(facts)(row), facts).join("; "),
  }));

const openRows = (deciding: readonly Row[], facts: Facts): Row[] =>
  deciding.filter((row) => row.status !== "not determined" && holds(row.when, facts) === "unknown");

const openFacts = (deciding: readonly Row[], facts: Facts): string[] =>
  missing(openRows(deciding, facts).flatMap(unknownWanted(facts)), facts);

/** The things that keep a row open: those wanted as yes or no that nobody knows. */
const unknownWanted =
  (facts: Facts) =>
  ({ when }: Row): string[] =>
    Object.entries(when).flatMap(([name, wanted]) =>
      ["yes", "no"].includes(wanted) && facts[name]?.is === "unknown" ? [name] : [],
    );

/** Each term once, with everything that would separate it from the one that was decided. */
function alternatives(decided: string, open: readonly Open[]): Open[] {
  const terms = [...new Set(open.map(({ term }) => term))].filter((term) => term !== decided);
  return terms.map((term) => {
    const by = open.filter((one) => one.term === term).flatMap(({ separatedBy }) => separatedBy.split("; "));
    return { term, separatedBy: [...new Set(by)].join("; ") };
  });
}
