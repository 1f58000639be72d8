import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

/** Why the ledger says nothing of a sheet of findings. */
export function NotTold({ entry }: { readonly entry: LedgerEntry | undefined }) {
  if (entry?.refused === undefined) return <p className="quiet">Nothing is computed from these findings yet.</p>;
  return (
    <div className="not-told" role="status">
      <p>The findings can't be read as they stand:</p>
      <ul>
        {entry.refused.map((line) => (
          <li key={line}>{sentenceInWords(line.replace(/^([\w.[\]]+): /, ""))}</li>
        ))}
      </ul>
    </div>
  );
}
