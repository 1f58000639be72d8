import type { DueView } from "../../../server/api.ts";
import { countOf, numberInWords } from "../../parts/figures-in-words.ts";
import { dueCounts } from "./due/due-groups.ts";
import { type LogbookRow, logbookSummary } from "./logbook-filter.ts";

interface SummaryLineOptions {
  readonly rows: readonly LogbookRow[];
  readonly all: number;
  /** What is due this week and before; undefined until it is known. */
  readonly due: readonly DueView[] | undefined;
  readonly today: string;
}

/** What is in view, in words; what is due in it is counted as on the page of what is due. */
export function SummaryLine({ rows, all, due, today }: SummaryLineOptions) {
  const { cases, filled, within } = logbookSummary(rows);
  return (
    <p className="logbook-summary" role="status">
      <strong>{countOf(cases, "case")}</strong>
      {cases < all && ` of ${all}`}
      {filled > 0 && (
        <>
          , filled to 0 to 2 mm short of the apex in{" "}
          <strong>
            {within}/{filled}
          </strong>
        </>
      )}
      {due && <DueInView {...dueCounts(dueOfRows(rows, due), today)} />}.
    </p>
  );
}

const dueOfRows = (rows: readonly LogbookRow[], due: readonly DueView[]): readonly DueView[] => {
  const shown = new Set<string>(rows.map(({ caseId }) => caseId));
  return due.filter(({ caseId }) => shown.has(caseId));
};

const DueInView = ({ week, overdue }: { readonly week: number; readonly overdue: number }) => (
  <>
    {", "}
    {week === 0 ? "nothing" : <strong>{numberInWords(week, 0)}</strong>} due this week
    {overdue > 0 && (
      <>
        , <span className="look">{numberInWords(overdue, 0)} overdue</span>
      </>
    )}
  </>
);
