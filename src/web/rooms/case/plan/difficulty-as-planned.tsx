import { useState } from "react";
import { type DifficultyChange, difficultySince, difficultyTold } from "../../../../ledger/difficulty-told.ts";
import { entryNow } from "../../../../ledger/entry-now.ts";
import { Button } from "../../../parts/button.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useLedgerEntry } from "../../../record/readings.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";
import { EntryDialog } from "../ledger/entry-dialog.tsx";
import { DifficultyList } from "./difficulty-list.tsx";
import { DifficultyNow } from "./difficulty-now.tsx";

/** The list of difficulty on which the plan was made, and what has changed since; today's where there is none. */
export function DifficultyAsPlanned({ entryId }: { readonly entryId: string | undefined }) {
  const { parts, ledger } = useCaseNow();
  const today = entryNow("difficulty", ledger, parts);
  if (entryId === undefined) return <DifficultyNow />;
  return <AsItStood entryId={entryId} todayId={today?.id} />;
}

interface AsItStoodOptions {
  readonly entryId: string;
  readonly todayId: string | undefined;
}

function AsItStood({ entryId, todayId }: AsItStoodOptions) {
  const { caseId, ledger } = useCaseNow();
  const kept = useLedgerEntry(entryId);
  const [source, setSource] = useState(false);
  const then = difficultyTold(kept.data);
  const now = difficultyTold(ledger.find(({ id }) => id === todayId));
  const changes = then && now ? difficultySince(then, now) : [];
  return (
    <>
      <section className="form-part">
        <h2>What made this tooth harder, as it stood at planning</h2>
        {kept.error && <SayRefusal of={kept.error} />}
        {kept.data && then === undefined && (
          <p className="quiet">The list of that day is kept in an older form; open it to read it.</p>
        )}
        {then && <DifficultyList told={then} />}
        {then && now && <Since changes={changes} />}
        <p className="quiet plan-note">
          A list without a total and without a grade.{" "}
          <Button weight="bare" onClick={() => setSource(true)}>
            The entry that the plan was made on
          </Button>
        </p>
      </section>
      {changes.length > 0 && (
        <details className="form-part">
          <summary className="difficulty-today">Today's list beside it</summary>
          <DifficultyNow />
        </details>
      )}
      {source && <EntryDialog caseId={caseId} entryId={entryId} close={() => setSource(false)} />}
    </>
  );
}

const signs = { new: "+ new", gone: "− no longer", changed: "≠ changed" } as const;

function Since({ changes }: { readonly changes: readonly DifficultyChange[] }) {
  if (changes.length === 0) return <p>● Nothing in it has changed since.</p>;
  return (
    <section className="way-part">
      <h3>Since then</h3>
      <ul className="plan-lines">
        {changes.map(({ id, canal, is, was, now }) => (
          <li key={`${id} ${canal ?? ""}`}>
            <span className="plan-standing">{signs[is]}</span>
            <span>
              {sentenceInWords(now ?? was ?? id)}
              {is === "changed" && was !== undefined && <span className="quiet"> (was: {was})</span>}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
