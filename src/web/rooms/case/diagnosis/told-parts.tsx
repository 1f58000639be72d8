import type { DiagnosisTold } from "../../../../ledger/diagnosis-told.ts";
import type { CodesTold } from "../../../../ledger/own-codes.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { Reason, RuleLink, useSaid } from "./rule-link.tsx";
import { hasTerm } from "./use-told.ts";

interface ToldOptions {
  readonly told: DiagnosisTold;
}

/** What can't wait, each named with what to do; nothing where nothing is urgent. */
export const Urgent = ({ told: { urgent } }: ToldOptions) =>
  urgent.length === 0 ? null : (
    <section className="told-urgent" aria-label="Can't wait">
      <h3>This can't wait</h3>
      <ul>
        {urgent.map(({ row, finding, says }) => (
          <li key={row}>
            <strong>{sentenceInWords(says)}.</strong> {finding !== "" && `Found: ${finding}.`} <RuleLink row={row} />
          </li>
        ))}
      </ul>
    </section>
  );

/** Whose pain it is, as far as the findings tell: said first where it may not be this tooth's, and not before there is a term. */
export function SourceSays({ told }: ToldOptions) {
  const { source, sourceBecause } = told;
  if (sourceBecause.length === 0 && !hasTerm(told)) return null;
  return (
    <section className="told-source" data-elsewhere={sourceBecause.length > 0}>
      <p>
        Where the complaint comes from: <strong>{source}</strong>
        {sourceBecause.length > 0 && ", until something else is shown"}
      </p>
      <ul>
        {sourceBecause.map((reason) => (
          <Reason key={reason.row + reason.finding} reason={reason} />
        ))}
      </ul>
    </section>
  );
}

/** Findings that do not go together, what to look for next, and what is to be kept in mind. */
export function Doubts({ told: { contradictions, asks, cautions } }: ToldOptions) {
  const said = useSaid();
  if (contradictions.length + asks.length + cautions.length === 0) return null;
  return (
    <section className="told-doubts">
      {contradictions.length > 0 && <h3>Findings that do not go together</h3>}
      <ul data-side="conflict">
        {contradictions.map((reason) => (
          <Reason key={reason.row + reason.finding} reason={reason} />
        ))}
      </ul>
      {asks.length > 0 && <h3>Look for next</h3>}
      <ul>
        {asks.map((reason) => (
          <li key={reason.row + reason.finding}>
            {said(reason.says)} <span className="quiet">{said(reason.finding)}</span> <RuleLink row={reason.row} />
          </li>
        ))}
      </ul>
      {cautions.length > 0 && <h3>Keep in mind</h3>}
      <ul>
        {cautions.map((caution) => (
          <Caution key={caution} caution={caution} />
        ))}
      </ul>
    </section>
  );
}

/** A caution names its row at its end, in brackets. */
function Caution({ caution }: { readonly caution: string }) {
  const [, says = caution, row] = /^(.*?)(?: \[(\w+)\])?$/s.exec(caution) ?? [];
  return (
    <li>
      {sentenceInWords(says)} {row !== undefined && <RuleLink row={row} />}
    </li>
  );
}

const lists = [
  ["icd10", "ICD-10"],
  ["icd10Cm", "ICD-10-CM (United States)"],
  ["icd11", "ICD-11"],
] as const;

interface CodesOptions {
  readonly told: Pick<CodesTold, "codes" | "european" | "pulpal" | "apical" | "notComputed">;
  readonly title?: string;
  readonly cautions?: readonly string[];
}

/** The codes of both terms in each list, and what the European guideline calls them where it differs. */
export const Codes = ({
  told: { codes, european, pulpal, apical, notComputed },
  title = "Codes of what the findings speak for",
  cautions = [],
}: CodesOptions) => (
  <details className="told-codes" open>
    <summary>{title}</summary>
    <table>
      <thead>
        <tr>
          <td />
          <th scope="col">{sentenceInWords(pulpal.term)}</th>
          <th scope="col">{sentenceInWords(apical.term)}</th>
        </tr>
      </thead>
      <tbody>
        {lists.map(([list, name]) => (
          <tr key={list}>
            <th scope="row">{name}</th>
            <td>{codes[list]?.pulpal ?? "no code"}</td>
            <td>{codes[list]?.apical ?? "no code"}</td>
          </tr>
        ))}
        {(european.pulpal ?? european.apical) !== undefined && (
          <tr>
            <th scope="row">European guideline of 2023</th>
            <td>{european.pulpal ?? "the same"}</td>
            <td>{european.apical ?? "the same"}</td>
          </tr>
        )}
      </tbody>
    </table>
    {notComputed
      .filter(({ name }) => name.startsWith("european"))
      .map(({ name, why }) => (
        <p key={name} className="quiet">
          {sentenceInWords(why)}.
        </p>
      ))}
    {cautions.map((caution) => (
      <p key={caution} className="look">
        ◇ {caution}.
      </p>
    ))}
  </details>
);

/** Whose word a code is. */
export const CodesAre = () => (
  <p className="quiet">The codes are published; which of them goes with which term is our own reading.</p>
);
