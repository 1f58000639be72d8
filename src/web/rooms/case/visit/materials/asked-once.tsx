import { useId } from "react";
import { WordsField } from "./entry-fields.tsx";
import type { Entry } from "./use-entry.ts";

interface AskedOnceOptions {
  /** What is asked, in the words that are recorded with the answer. */
  readonly asks: readonly string[];
  readonly isOver?: boolean;
  readonly entry: Entry;
}

/** What is asked before something over a limit, or unusual, is recorded: who says so, and why. Nothing is filled in. */
export function AskedOnce({ asks, isOver = false, entry }: AskedOnceOptions) {
  const heading = useId();
  if (asks.length === 0) return null;
  return (
    <section className="entry-asked" aria-labelledby={heading}>
      <h3 id={heading}>{isOver ? "▲ Over a limit" : "▲ Asked once before it is recorded"}</h3>
      <ul aria-live="polite">
        {asks.map((ask) => (
          <li key={ask}>{ask}</li>
        ))}
      </ul>
      <div className="fields">
        <WordsField at="confirmedBy" label="Confirmed by" entry={entry} />
        <WordsField at="because" label={isOver ? "Because" : "Because, if there is more to say"} entry={entry} />
      </div>
      <p className="quiet">By part or initials, as supervisor; it is recorded with what was asked.</p>
    </section>
  );
}
