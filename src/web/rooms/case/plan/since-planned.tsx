import { useState } from "react";
import { entryNow } from "../../../../ledger/entry-now.ts";
import { factsSince, planTold, waysSince } from "../../../../ledger/plan-told.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { wayWords } from "../../../../record/words/case-words.ts";
import { useLedgerEntry } from "../../../record/readings.ts";
import { sentenceInWords, valueInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";
import { EntryDialog } from "../ledger/entry-dialog.tsx";
import { waysShown } from "./ways-shown.ts";
import { WaysTable } from "./ways-table.tsx";

interface SincePlannedOptions extends Pick<BodyOf<"plan">, "chosen" | "risksNamed"> {
  /** What the plan was made on. */
  readonly entryId: string;
}

/** What came after the plan and what it makes of the ways, with today's beside it; nothing where nothing came. */
export function SincePlanned({ entryId, chosen, risksNamed }: SincePlannedOptions) {
  const { caseId, parts, ledger } = useCaseNow();
  const [source, setSource] = useState(false);
  const then = useLedgerEntry(entryId).data;
  const entry = entryNow("plan", ledger, parts);
  const [before, now] = [planTold(then), planTold(entry)];
  if (then === undefined || entry === undefined || before === undefined || now === undefined) return null;
  const [facts, changes] = [factsSince(then, entry), waysSince(before, now)];
  if (facts.length + changes.length === 0) return null;
  const { open, waiting } = waysShown(now);
  return (
    <section className="form-part">
      <h2>Since the choice was made</h2>
      {facts.length > 0 && <p>Recorded or changed since: {facts.map(wordsOfFact).join(", ")}.</p>}
      {changes.length === 0 ? (
        <p className="quiet">Every way stands where it stood.</p>
      ) : (
        <ul className="plan-lines">
          {changes.map((change) => (
            <li key={change.way}>
              <span className="plan-standing">≠ changed</span>
              <span>
                {sentenceInWords(wayWords[change.way])}: {change.now} <span className="quiet">(was: {change.was})</span>
              </span>
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary className="difficulty-today">Today's ways beside it</summary>
        <WaysTable
          {...{ chosen, named: risksNamed, choose: undefined }}
          caption="Ways as the case stands today"
          ways={[...open, ...waiting]}
          showEntry={() => setSource(true)}
        />
      </details>
      {source && <EntryDialog caseId={caseId} entryId={entry.id} close={() => setSource(false)} />}
    </section>
  );
}

const wordsOfFact = (fact: string): string => valueInWords(fact).toLowerCase();
