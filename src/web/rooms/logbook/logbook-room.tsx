import { useMemo, useState } from "react";
import { Link, useLocation } from "wouter";
import type { CaseFacts } from "../../../record/facts.ts";
import { Button } from "../../parts/button.tsx";
import { today } from "../../parts/days-in-words.ts";
import { KeyHint } from "../../parts/key-hint.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { useTitle } from "../../parts/use-title.ts";
import { useDue } from "../../record/due.ts";
import { type ToothView, useCases, useSession, useSettings, useTeeth } from "../../record/readings.ts";
import { toothInNotation } from "../../words/tooth-words.ts";
import { CaseTable } from "./case-table.tsx";
import { DemoLine } from "./demo-line.tsx";
import { endOfWeek } from "./due/due-groups.ts";
import { DueLink } from "./due/due-link.tsx";
import { FilterLine } from "./filter-line.tsx";
import {
  everyCase,
  filteredRows,
  type LogbookFilter,
  type LogbookRow,
  recallState,
  type Sorting,
  sortedRows,
} from "./logbook-filter.ts";
import "./logbook-room.css";
import { NewCaseDialog } from "./new-case-dialog.tsx";
import { SummaryLine } from "./summary-line.tsx";

/** What the person looked at last; kept while the window is open. */
const remembered: { filter: LogbookFilter; sorting: Sorting } = {
  filter: everyCase,
  sorting: { by: "presentedOn", down: true },
};

/** All cases. */
export function LogbookRoom() {
  useTitle("Logbook");
  const cases = useCases();
  const teeth = useTeeth();
  const settings = useSettings();
  const now = today();
  const due = useDue(now, endOfWeek(now));
  const [filter, setFilter] = useState(remembered.filter);
  const [sorting, setSorting] = useState(remembered.sorting);
  const [adding, setAdding] = useState(false);
  remembered.filter = filter;
  remembered.sorting = sorting;
  useShortcut("n", "Logbook", "New case", () => setAdding(true));
  const [, go] = useLocation();
  useShortcut("d", "Logbook", "What is due", () => go("/due"));
  useShortcut("c", "Logbook", "Calibration: your own click error", () => go("/calibration"));
  useShortcut("i", "Logbook", "Cabinet: instruments, materials, templates", () => go("/instruments"));
  useShortcut("/", "Logbook", "Find a case", () => document.getElementById("logbook-find")?.focus());
  const notation = settings.data?.notation ?? "twoDigit";
  const rows = useMemo(() => rowsOf(cases.data ?? [], teeth.data, notation), [cases.data, teeth.data, notation]);
  const shown = useMemo(() => sortedRows(filteredRows(rows, filter), sorting), [rows, filter, sorting]);
  return (
    <div className="logbook">
      <PageHead end={<Ways add={() => setAdding(true)} />}>
        <h1 className="logbook-title">Logbook</h1>
        <span className="quiet">{settings.data?.who}</span>
      </PageHead>
      <Recovered />
      <main className="logbook-page">
        {cases.error && <SayRefusal of={cases.error} retry={() => void cases.refetch()} />}
        {cases.isPending && <p className="quiet">Reading the logbook</p>}
        {cases.data && rows.length === 0 && <EmptyLogbook add={() => setAdding(true)} />}
        {rows.length > 0 && (
          <>
            <SummaryLine rows={shown} all={rows.length} due={due.data} today={now} />
            <FilterLine filter={filter} change={setFilter} />
            <CaseTable rows={shown} sorting={sorting} sort={setSorting} clear={() => setFilter(everyCase)} />
          </>
        )}
        <DemoLine />
      </main>
      {adding && <NewCaseDialog close={() => setAdding(false)} />}
    </div>
  );
}

function rowsOf(
  cases: readonly CaseFacts[],
  teeth: readonly ToothView[] | undefined,
  notation: "twoDigit" | "universal" | "quadrant",
): readonly LogbookRow[] {
  const byNumber = new Map((teeth ?? []).map((tooth) => [tooth.twoDigit, tooth]));
  const now = today();
  return cases.map((facts) => ({
    ...facts,
    toothView: byNumber.get(facts.tooth),
    written: byNumber.get(facts.tooth)?.[notation] ?? toothInNotation(facts.tooth, teeth, notation),
    recall: recallState(facts, now),
  }));
}

const Ways = ({ add }: { readonly add: () => void }) => (
  <>
    <DueLink />
    <Link href="/instruments" className="button button-bare" aria-keyshortcuts="i">
      Cabinet <KeyHint keys="i" />
    </Link>
    <Link href="/calibration" className="button button-bare" aria-keyshortcuts="c">
      Calibration <KeyHint keys="c" />
    </Link>
    <Link href="/methods" className="button button-bare">
      Methods
    </Link>
    <Link href="/settings" className="button button-bare">
      Settings
    </Link>
    <Link href="/about" className="button button-bare">
      About
    </Link>
    <Button weight="strong" hint="n" onClick={add}>
      New case
    </Button>
  </>
);

/** Says what the start had to mend after a crash. */
function Recovered() {
  const session = useSession();
  const lines = session.data?.recovered ?? [];
  if (lines.length === 0) return null;
  return (
    <div className="logbook-recovered" role="status">
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

const EmptyLogbook = ({ add }: { readonly add: () => void }) => (
  <section className="logbook-empty">
    <h2>No case yet</h2>
    <p>
      A case is one tooth of one patient over time. It begins with a pseudonym, a year of birth and the tooth;
      everything else is written while the treatment happens.
    </p>
    <Button weight="strong" onClick={add}>
      New case
    </Button>
  </section>
);
