import { Link } from "wouter";
import type { ReasonTold } from "../../../../ledger/diagnosis-told.ts";
import { thePart } from "../../../../record/parts.ts";
import { sideOfTooth } from "../../../words/two-view-words.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";

/** A row's name, which opens the table of rows at its place. */
export const RuleLink = ({ row }: { readonly row: string }) => (
  <Link className="rule-link" href={`/methods/diagnosis#${row}`} aria-label={`Row ${row} of the table`}>
    {row}
  </Link>
);

/** How a sentence of the ledger is said of this case's tooth. */
export function useSaid(): (sentence: string) => string {
  const { parts } = useCaseNow();
  const tooth = thePart(parts, "case")?.body.tooth ?? "";
  return (sentence) => sideOfTooth(sentenceInWords(sentence), tooth);
}

/** What was found and what the row says of it. */
export function Reason({ reason: { row, finding, says } }: { readonly reason: ReasonTold }) {
  const said = useSaid();
  const [found, rowSays] = [said(finding), said(says)];
  return (
    <li>
      {found === "" ? rowSays : `${found}.`}{" "}
      {found !== "" && !found.endsWith(rowSays.slice(1)) && <span className="quiet">{rowSays}</span>}{" "}
      <RuleLink row={row} />
    </li>
  );
}
