import { useMemo } from "react";
import { Link } from "wouter";
import { instrumentsOfCanals } from "../../../../ledger/instruments-of-canals.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { type Part, partsOf } from "../../../../record/parts.ts";
import { Button } from "../../../parts/button.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { CanalSection } from "./canal-section.tsx";
import "../../../parts/ruled-table.css";
import "./instruments-page.css";

interface InstrumentsPageOptions {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  /** Adds a visit and goes to it; absent where the case is only looked at. */
  readonly addVisit: (() => void) | undefined;
}

/** What went into each canal, how hard it was bent there, and what that took of its life. */
export function InstrumentsPage({ caseId, parts, ledger, addVisit }: InstrumentsPageOptions) {
  const canals = useMemo(() => instrumentsOfCanals(parts, ledger), [parts, ledger]);
  return (
    <article className="moment instruments" aria-labelledby="moment-title">
      <header className="moment-head">
        <h2 id="moment-title" tabIndex={-1}>
          Instruments used
        </h2>
        <span className="quiet">what went where, how hard the canal bent it, what that took of its life</span>
      </header>
      {canals.length === 0 && <NothingRecorded {...{ caseId, parts, addVisit }} />}
      {canals.map((one) => (
        <CanalSection key={one.canal} {...{ caseId, parts, ledger }} of={one} />
      ))}
      <WithoutCanal {...{ caseId, parts }} />
      {canals.length > 0 && (
        <p>
          <Link href="/methods/bend">How the strain is computed</Link>{" "}
          <Link href="/methods/lifeUsed">How the life used is computed</Link>
        </p>
      )}
    </article>
  );
}

type NothingRecordedOptions = Pick<InstrumentsPageOptions, "caseId" | "parts" | "addVisit">;

function NothingRecorded({ caseId, parts, addVisit }: NothingRecordedOptions) {
  const last = partsOf(parts, "visit")
    .toSorted((a, b) => a.body.on.localeCompare(b.body.on))
    .at(-1);
  return (
    <div className="instruments-none">
      <p>
        No instrument is recorded in a canal yet. A visit says for each canal which instrument went how deep, for how
        long and at what speed; a trace of the canal on a film with a known length then says how hard it was bent.
      </p>
      {last !== undefined && (
        <Link href={`/case/${caseId}/${last.id}`} className="button button-strong">
          To the last visit
        </Link>
      )}
      {last === undefined && addVisit && (
        <Button weight="strong" onClick={addVisit}>
          Add a visit
        </Button>
      )}
    </div>
  );
}

/** Rows that name no canal are in none of the sections: each visit that has some is named. */
function WithoutCanal({ caseId, parts }: Pick<InstrumentsPageOptions, "caseId" | "parts">) {
  const open = partsOf(parts, "visit").flatMap(({ id, body }) => {
    const count = body.instruments.filter(({ canal }) => canal === undefined).length;
    return count === 0 ? [] : [{ id, count }];
  });
  return open.map(({ id, count }) => (
    <p key={id} className="look">
      ◇ {countOf(count, "instrument")} of <Link href={`/case/${caseId}/${id}`}>a visit</Link> without a canal: say in
      which it was.
    </p>
  ));
}
