import { useState } from "react";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { Part } from "../../../record/parts.ts";
import type { DocumentView } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import { momentInWords } from "../../parts/days-in-words.ts";
import { bytesInWords, countOf } from "../../parts/figures-in-words.ts";
import { useCase } from "../../record/case-access.tsx";
import { EntryDialog } from "../case/ledger/entry-dialog.tsx";
import { entrySubject, entryTitle } from "../case/ledger/entry-subject.ts";
import { numbersInWords } from "./numbers-in-words.ts";

interface DocumentEntryOptions {
  readonly caseId: string;
  readonly made: DocumentView;
  /** Where the record stands now. */
  readonly sequence: number;
  readonly isFresh: boolean;
}

const kinds = {
  ...{ deck: "Deck", handout: "Hand-out", consent: "Consent page", piece: "Page about a piece" },
  letter: "Letter of hand-back",
} as const;

/** One document that left the bench: what it is, what it tells, which numbers it carries. */
export function DocumentEntry({ caseId, made, sequence, isFresh }: DocumentEntryOptions) {
  const [open, setOpen] = useState(false);
  const [shown, setShown] = useState<string>();
  const { view } = useCase(caseId);
  const since = sequence - made.sequence;
  return (
    <li className="document-entry" data-fresh={isFresh}>
      <div className="document-line">
        <strong>{kinds[made.as]}</strong>
        <span>{momentInWords(made.at)}</span>
        <span className="quiet">
          {made.who} · {bytesInWords(made.bytes)} · up to change {made.sequence}
        </span>
        <a className="button" href={`/api/documents/${made.id}/file`} download={made.fileName}>
          Save the file
          <span className="unseen">
            {" "}
            {kinds[made.as]} of {momentInWords(made.at)}
          </span>
        </a>
      </div>
      <p className="document-since" data-old={since > 0}>
        {since > 0
          ? `◇ The record has changed since: ${countOf(since, "change")} later.`
          : "● It tells the record as it stands."}
      </p>
      {made.numbers.length > 0 && (
        <Button weight="bare" aria-expanded={open} onClick={() => setOpen(!open)}>
          {countOf(made.numbers.length, "number")} in it
        </Button>
      )}
      {open && (
        <ul className="document-numbers">
          {[...byEntry(made.numbers)].map(([entryId, numbers]) => (
            <NumbersOf
              key={entryId}
              entry={view?.ledger.find(({ id }) => id === entryId)}
              parts={view?.parts ?? []}
              numbers={numbers}
              show={() => setShown(entryId)}
            />
          ))}
        </ul>
      )}
      {shown !== undefined && <EntryDialog caseId={caseId} entryId={shown} close={() => setShown(undefined)} />}
    </li>
  );
}

type Numbers = DocumentView["numbers"];

/** The numbers of a document under the entry that each came from. */
function byEntry(numbers: Numbers): ReadonlyMap<string, Numbers> {
  const entries = [...new Set(numbers.map(({ ledgerEntry }) => ledgerEntry))];
  return new Map(entries.map((id) => [id, numbers.filter(({ ledgerEntry }) => ledgerEntry === id)]));
}

interface NumbersOfOptions {
  /** Absent where the entry no longer holds. */
  readonly entry: LedgerEntry | undefined;
  readonly parts: readonly Part[];
  readonly numbers: Numbers;
  readonly show: () => void;
}

function NumbersOf({ entry, parts, numbers, show }: NumbersOfOptions) {
  const subject = entry && entrySubject(entry, parts);
  return (
    <li>
      <Button weight="bare" onClick={show}>
        {entry === undefined ? "An entry that no longer holds" : entryTitle(entry, parts)}
      </Button>
      {subject !== undefined && subject.film !== "" && <span className="quiet">{subject.film}</span>}
      <span className="document-values">{numbersInWords(numbers, entry?.topic).join(" · ")}</span>
    </li>
  );
}
