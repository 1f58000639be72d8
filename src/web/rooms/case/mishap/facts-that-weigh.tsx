import { withBareSourceNames } from "../../../../pages/source-name.ts";
import { explanationWords } from "../../../../record/words/mishap-words.ts";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import type { ToldOfBreak } from "./explanations-beside.tsx";

/** Every fact and what it weighs under each explanation; an assumption is called one. */
export function FactsThatWeigh({ told: { facts, explanations }, entryId }: ToldOfBreak) {
  if (facts.length === 0) return null;
  return (
    <div className="mishap-block">
      <h3>What each fact weighs</h3>
      <div className="mishap-scroll">
        <table className="ruled-table mishap-table">
          <caption>How likely each is, against the explanation that it fits best</caption>
          <thead>
            <tr>
              <th scope="col">Fact</th>
              {explanations.map(({ name }) => (
                <th key={name} scope="col">
                  {capital(explanationWords[name])}
                </th>
              ))}
              <th scope="col">From</th>
            </tr>
          </thead>
          <tbody>
            {facts.map(({ name, says, factor, source }) => (
              <tr key={name}>
                <th scope="row">{sentenceInWords(says)}</th>
                {explanations.map((one) => (
                  <td key={one.name}>
                    <a href={`#${entryId}`}>{numberInWords(factor[one.name], 2)}</a>
                  </td>
                ))}
                <td>{sentenceInWords(withBareSourceNames(source))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}
