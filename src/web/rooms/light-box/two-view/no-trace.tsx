import { Link } from "wouter";
import type { CaseView } from "../../../../server/api.ts";

interface NoTraceOptions {
  readonly view: CaseView;
  readonly canal: string | undefined;
  readonly canals: readonly string[];
}

/** The room before a canal is traced, or for a canal that is traced nowhere. */
export const NoTrace = ({ view, canal, canals }: NoTraceOptions) => (
  <main className="no-films">
    <h1>{canal === undefined ? "No canal is traced yet" : `${canal} is traced on no film`}</h1>
    <p>
      One film shows a canal flat. Trace a canal on a straight film and on one with the tube shifted by 20 to 30
      degrees, give both courses the canal's name, and its bend in space stands here.
    </p>
    {canals.length > 0 && (
      <p>
        Traced are{" "}
        {canals.map((name, index) => (
          <span key={name}>
            {index > 0 && ", "}
            <Link href={`/case/${view.caseId}/light-box/two-view/${encodeURIComponent(name)}`}>{name}</Link>
          </span>
        ))}
        .
      </p>
    )}
    <Link href={`/case/${view.caseId}/light-box`} className="button button-strong">
      To the films
    </Link>
  </main>
);
