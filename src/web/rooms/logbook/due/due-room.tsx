import { useMemo, useState } from "react";
import { useLocation } from "wouter";
import { dueKinds } from "../../../../record/due.ts";
import { today } from "../../../parts/days-in-words.ts";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { PageHead } from "../../../parts/page-head.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { useTitle } from "../../../parts/use-title.ts";
import { useDue } from "../../../record/due.ts";
import { CalendarFile } from "./calendar-file.tsx";
import { DueFilterLine } from "./due-filter-line.tsx";
import { type DueFilter, dueCounts, dueGroups, everyDue, filteredDue, withKind } from "./due-groups.ts";
import { DueGroups } from "./due-list.tsx";
import "./due-room.css";

/** What the person looked at last; kept while the window is open. */
const remembered: { filter: DueFilter } = { filter: everyDue };

/** What is due in all cases, by how far away it is. */
export function DueRoom() {
  useTitle("Due");
  const now = today();
  const due = useDue(now);
  const [filter, setFilter] = useState(remembered.filter);
  remembered.filter = filter;
  const [, go] = useLocation();
  useShortcut("Escape", "Due", "Back to the logbook", () => go("/"));
  useShortcut("ArrowDown", "Due", "The next row; Enter opens it", () => walk(1));
  useShortcut("ArrowUp", "Due", "The row before", () => walk(-1));
  useKindKeys((index) => setFilter(index === 0 ? everyDue : withKind(filter, dueKinds[index - 1] ?? "visit")));
  const shown = useMemo(() => filteredDue(due.data ?? [], filter), [due.data, filter]);
  return (
    <div className="due-room">
      <PageHead end={due.data && due.data.length > 0 && <CalendarFile due={due.data} today={now} />}>
        <h1 className="due-title">Due</h1>
      </PageHead>
      <main className="due-page">
        {due.error && <SayRefusal of={due.error} retry={() => void due.refetch()} />}
        {due.isPending && <p className="quiet">Reading what is due</p>}
        {due.data?.length === 0 && <NothingDue />}
        {due.data && due.data.length > 0 && (
          <>
            <Summary {...dueCounts(shown, now)} all={shown.length} />
            <DueFilterLine due={due.data} filter={filter} change={setFilter} />
            <DueGroups groups={dueGroups(shown, now)} today={now} clear={() => setFilter(everyDue)} />
          </>
        )}
      </main>
    </div>
  );
}

/** The digits choose kinds, in the order of the list; 0 shows all. */
function useKindKeys(choose: (index: number) => void): void {
  useShortcut("0", "Due", "All kinds", () => choose(0));
  useShortcut("1", "Due", "Next visits", () => choose(1));
  useShortcut("2", "Due", "Medicaments to change", () => choose(2));
  useShortcut("3", "Due", "Restorations", () => choose(3));
  useShortcut("4", "Due", "Recalls", () => choose(4));
  useShortcut("5", "Due", "Pain after 24 hours", () => choose(5));
  useShortcut("6", "Due", "Pain after 7 days", () => choose(6));
}

/** From the row that has the focus to the one after or before it; from anywhere else to the first. */
function walk(by: 1 | -1): boolean {
  const rows = [...document.querySelectorAll<HTMLElement>("a.due-row")];
  const focused = document.activeElement;
  const at = focused instanceof HTMLElement ? rows.indexOf(focused) : -1;
  const next = at < 0 ? rows[0] : rows[at + by];
  next?.focus();
  next?.scrollIntoView({ block: "nearest" });
  return next !== undefined;
}

interface SummaryOptions {
  readonly overdue: number;
  readonly week: number;
  readonly all: number;
}

const Summary = ({ overdue, week, all }: SummaryOptions) => (
  <p className="due-summary" role="status">
    <strong>{numberInWords(all, 0)}</strong> due, {week === 0 ? "none" : <strong>{numberInWords(week, 0)}</strong>} of
    them this week
    {overdue > 0 && (
      <>
        ,{" "}
        <span className="look">
          <span aria-hidden="true">▲ </span>
          {numberInWords(overdue, 0)} overdue
        </span>
      </>
    )}
    .
  </p>
);

const NothingDue = () => (
  <section className="due-empty">
    <h2>Nothing is due</h2>
    <p>
      A day comes here with what is written in a case: the next visit, when a medicament is to be changed, by when a
      tooth is to be restored, the next recall. Pain after a day and after a week is asked for after each visit.
    </p>
  </section>
);
