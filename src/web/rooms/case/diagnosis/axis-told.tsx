import type { DiagnosisTold } from "../../../../ledger/diagnosis-told.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { Reason } from "./rule-link.tsx";

interface AxisOptions {
  readonly told: DiagnosisTold;
  readonly of: "pulpal" | "apical";
}

const names = { pulpal: "Pulp", apical: "Apex" } as const;

/** What the findings speak for on one axis: the term and how sure, for and against it, and what remains possible. */
export function AxisSays({ told, of }: AxisOptions) {
  const axis = told[of];
  const isOpen = axis.status === "not determined";
  return (
    <section className="axis-told" aria-label={`${names[of]}, from the findings`}>
      <h3>{names[of]}, from the findings</h3>
      <p className="axis-term" data-status={axis.status}>
        <strong>{sentenceInWords(axis.term)}</strong> {axis.term !== axis.status && <span>{axis.status}</span>}
      </p>
      {of === "apical" && told.apicalAlso !== undefined && <p>Beside it: {told.apicalAlso.toLowerCase()}</p>}
      {isOpen && <Wanted why={told.notComputed.find(({ name }) => name === `${of}.term`)?.why ?? ""} />}
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
      {axis.alternatives.length > 0 && (
        <details open={!isOpen}>
          <summary>Still possible, and what would separate it ({axis.alternatives.length})</summary>
          <ul data-side="open">
            {axis.alternatives.map(({ term, separatedBy }) => (
              <li key={term}>
                {sentenceInWords(term)}: <span className="quiet">{separatedBy}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** So many things that are missing are said at once; the others on request. */
const atOnce = 4;

/** What would have to be done or asked before any term can be given. */
function Wanted({ why }: { readonly why: string }) {
  const [, list] = /^missing: (.*)$/s.exec(why) ?? [];
  if (list === undefined) return why === "" ? null : <p>{sentenceInWords(why)}.</p>;
  const wanted = [...new Set(list.split("; "))];
  const [first, rest] = [wanted.slice(0, atOnce), wanted.slice(atOnce)];
  return (
    <>
      <h4>Missing for a term</h4>
      <ul>
        {first.map((one) => (
          <li key={one}>{sentenceInWords(one)}</li>
        ))}
      </ul>
      {rest.length > 0 && (
        <details>
          <summary>and {rest.length} more</summary>
          <ul>
            {rest.map((one) => (
              <li key={one}>{sentenceInWords(one)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
