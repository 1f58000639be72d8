import { countOf } from "../../parts/figures-in-words.ts";
import { type LogbookRow, logbookSummary } from "./logbook-filter.ts";

interface SummaryLineOptions {
  readonly rows: readonly LogbookRow[];
  readonly all: number;
}

/** What is in view, in words. */
export function SummaryLine({ rows, all }: SummaryLineOptions) {
  const { cases, filled, within, due, overdue } = logbookSummary(rows);
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
      {", "}
      {due === 0 ? (
        "no recall due"
      ) : (
        <>
          <strong>{countOf(due, "recall")}</strong> due
        </>
      )}
      {overdue > 0 && <span className="look"> ({overdue} overdue)</span>}.
    </p>
  );
}
