import { percentText } from "../../../../figures/chance-text.ts";
import { explanationWords } from "../../../../record/words/mishap-words.ts";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import type { ToldOfBreak } from "./explanations-beside.tsx";

/** How the answer moves when each assumption is halved or doubled, all others at their middle; folded. */
export function IfAssumedOtherwise({ told: { sensitivity, explanations, atMiddle }, entryId }: ToldOfBreak) {
  if (sensitivity.length === 0) return null;
  return (
    <details className="mishap-more">
      <summary>How it moves when each of {sensitivity.length} assumptions is halved or doubled</summary>
      <div className="mishap-scroll">
        <table className="ruled-table mishap-table">
          <caption>With half of it → with twice of it, in percent; all others at their middle</caption>
          <thead>
            <tr>
              <th scope="col">Assumption</th>
              {explanations.map(({ name }) => (
                <th key={name} scope="col">
                  {capital(explanationWords[name])}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr data-strong>
              <th scope="row">All at their middle</th>
              {explanations.map(({ name }) => (
                <td key={name}>
                  <a href={`#${entryId}`}>{percentText(atMiddle[name])} %</a>
                </td>
              ))}
            </tr>
            {sensitivity.map(({ assumption, says, halved, doubled }) => (
              <tr key={assumption}>
                <th scope="row">{sentenceInWords(says)}</th>
                {explanations.map(({ name }) => (
                  <td key={name}>
                    {percentText(halved[name])} → {percentText(doubled[name])}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
