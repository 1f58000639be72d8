import type { AxisTold } from "../../../../ledger/diagnosis-told.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { Reason } from "./rule-link.tsx";

interface AxisOptions {
  readonly name: string;
  readonly axis: AxisTold;
  /** A second term beside the first. */
  readonly also?: string | undefined;
}

/** What the findings speak for on one axis: the term and how sure, for and against it, and what remains possible. */
export const AxisSays = ({ name, axis, also }: AxisOptions) => (
  <section className="axis-told" aria-label={`${name}, from the findings`}>
    <h3>{name}, from the findings</h3>
    <p className="axis-term" data-status={axis.status}>
      <strong>{sentenceInWords(axis.term)}</strong> {axis.term !== axis.status && <span>{axis.status}</span>}
    </p>
    {also !== undefined && <p>Beside it: {also.toLowerCase()}</p>}
    {axis.for.length > 0 && <h4>For</h4>}
    <ul data-side="for">
      {axis.for.map((reason) => (
        <Reason key={reason.row + reason.finding} reason={reason} />
      ))}
    </ul>
    {axis.against.length > 0 && <h4>Against</h4>}
    <ul data-side="against">
      {axis.against.map((reason) => (
        <Reason key={reason.row + reason.finding} reason={reason} />
      ))}
    </ul>
    {axis.alternatives.length > 0 && <h4>Still possible, and what would separate it</h4>}
    <ul data-side="open">
      {axis.alternatives.map(({ term, separatedBy }) => (
        <li key={term}>
          {sentenceInWords(term)}: <span className="quiet">{separatedBy}</span>
        </li>
      ))}
    </ul>
    {axis.for.length + axis.against.length + axis.alternatives.length === 0 && (
      <p className="quiet">The findings say nothing on this axis yet.</p>
    )}
  </section>
);
