import { Link } from "wouter";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { PartOf } from "../../../../record/parts.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";
import { faultsAtPlaces } from "../ledger/faults-at-places.ts";
import { placeInFindings } from "./place-in-findings.ts";

interface NotToldOptions {
  readonly entry: LedgerEntry | undefined;
  readonly sheet: PartOf<"findings">;
  /** Leads to the findings where these are not on the page. */
  readonly link?: boolean;
}

/** Why the ledger says nothing of a sheet of findings, fault by fault with its place. */
export function NotTold({ entry, sheet, link = false }: NotToldOptions) {
  const { caseId } = useCaseNow();
  if (entry?.refused === undefined) return <p className="quiet">Nothing is computed from these findings yet.</p>;
  const placed = faultsAtPlaces([entry], sheet.id);
  return (
    <div className="not-told" role="status">
      <p>
        These findings contradict themselves, so that nothing is said of them.{" "}
        {link && <Link href={`/case/${caseId}/${sheet.id}`}>Mend them there</Link>}
      </p>
      <ul>
        {placed.map(({ path, says }) => (
          <li key={path + says}>
            {placeInFindings(path, sheet.body)}: {says}
          </li>
        ))}
        {placed.length === 0 && entry.refused.map((line) => <li key={line}>{sentenceInWords(line)}</li>)}
      </ul>
    </div>
  );
}
