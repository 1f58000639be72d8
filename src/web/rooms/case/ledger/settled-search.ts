import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { type Part, partsOf } from "../../../../record/parts.ts";
import { entrySubject, entryTitle } from "./entry-subject.ts";
import type { LedgerLine } from "./ledger-line.ts";

/** Where the canal that was found stands among the lines of a search that is settled. */
export const foundAsLine = "foundAs";

type Entry = Pick<LedgerEntry, "subject" | "topic">;

/** The canal that a search came to, where the entry is that search's chance and the canal was found. */
function foundAs({ subject, topic }: Entry, parts: readonly Part[]): string | undefined {
  if (topic !== "missedCanal") return undefined;
  return partsOf(parts, "search").find(({ id }) => id === subject.split(" of ").at(-1))?.body.foundAs;
}

/** What an entry is called in the ledger: a search that is settled by what it came to, `Second mesiobuccal canal: found as`. */
export const ledgerTitle = (entry: Entry, parts: readonly Part[]): string =>
  foundAs(entry, parts) === undefined ? entryTitle(entry, parts) : `${entrySubject(entry, parts).canal}: found as`;

/** The lines of an entry; in a search that is settled the canal that was found speaks first, and the chance stands behind it. */
export function settledFirst(
  lines: readonly LedgerLine[],
  entry: Entry,
  parts: readonly Part[],
): readonly LedgerLine[] {
  const canal = foundAs(entry, parts);
  if (canal === undefined) return lines;
  return [
    { at: foundAsLine, name: "Found as", value: canal },
    ...lines.map((line) =>
      line.at === "posterior.mean" ? { ...line, name: "Chance by the series and the looks" } : line,
    ),
  ];
}
