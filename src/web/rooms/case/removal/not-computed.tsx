import type { RemovalTold } from "../../../../ledger/removal-told.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

interface NotComputedOptions {
  readonly of: RemovalTold["notComputed"];
}

/** What the weighing could not compute, each with what would be needed. */
export const NotComputed = ({ of }: NotComputedOptions) =>
  of.length === 0 ? null : (
    <ul className="removal-wanted" aria-label="Not computed">
      {of.map(({ name, why }) => (
        <li key={name + why}>{sentenceInWords(why)}</li>
      ))}
    </ul>
  );
