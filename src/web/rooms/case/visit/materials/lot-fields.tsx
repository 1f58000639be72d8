import { DayOfEntry, WordsField } from "./entry-fields.tsx";
import type { Entry } from "./use-entry.ts";

/** Lot and expiry of what stays in the tooth. */
export const LotFields = ({ entry }: { readonly entry: Entry }) => (
  <>
    <WordsField at="lot" label="Lot" entry={entry} />
    <DayOfEntry at="expires" label="Expires" entry={entry} />
  </>
);
