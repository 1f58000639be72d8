import { Link } from "wouter";
import type { ReasonTold } from "../../../../ledger/diagnosis-told.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

/** A row's name, which opens the table of rows at its place. */
export const RuleLink = ({ row }: { readonly row: string }) => (
  <Link className="rule-link" href={`/methods/diagnosis#${row}`} aria-label={`Row ${row} of the table`}>
    {row}
  </Link>
);

/** What was found and what the row says of it. */
export const Reason = ({ reason: { row, finding, says } }: { readonly reason: ReasonTold }) => (
  <li>
    {finding === "" ? sentenceInWords(says) : `${sentenceInWords(finding)}.`}{" "}
    {finding !== "" && <span className="quiet">{sentenceInWords(says)}</span>} <RuleLink row={row} />
  </li>
);
