import { type DifficultyChange, difficultySince, difficultyTold } from "../../../../ledger/difficulty-told.ts";
import { entryNow } from "../../../../ledger/entry-now.ts";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useLedgerEntry } from "../../../record/readings.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";
import { DifficultyList } from "./difficulty-list.tsx";
import { DifficultyNow } from "./difficulty-now.tsx";
import { DifficultyOrigin } from "./difficulty-origin.tsx";

/** The list of difficulty on which the plan was made, and what has changed since; today's where there is none. */
export const DifficultyAsPlanned = ({ entryId }: { readonly entryId: string | undefined }) =>
  entryId === undefined ? <DifficultyNow /> : <AsItStood entryId={entryId} />;

function AsItStood({ entryId }: { readonly entryId: string }) {
  const { parts, ledger } = useCaseNow();
  const kept = useLedgerEntry(entryId);
  const then = difficultyTold(kept.data);
  const now = difficultyTold(entryNow("difficulty", ledger, parts));
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
        <DifficultyOrigin entryId={entryId} says="The entry that the plan was made on" />
      </section>
      {changes.length > 0 && (
        <details className="form-part">
          <summary className="difficulty-today">Today's list beside it</summary>
          <DifficultyNow />
        </details>
      )}
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
