import { percentText } from "../../../../figures/chance-text.ts";
import { sourceName } from "../../../../pages/source-name.ts";
import { explanationWords } from "../../../../record/words/mishap-words.ts";
import { SeenMark } from "../../../parts/seen-mark.tsx";
import { capital } from "../../../words/capital.ts";
import type { ToldOfBreak } from "./explanations-beside.tsx";

/** The published series, which speak against each other, each with the answer that it alone would give. */
export function PublishedSplits({ told: { priors, explanations }, entryId }: ToldOfBreak) {
  if (priors.length === 0) return null;
  return (
    <div className="mishap-block">
      <h3>Published series, each by itself</h3>
      <div className="mishap-scroll">
        <table className="ruled-table mishap-table">
          <caption>They conflict; beside each, what this break would come to by it alone</caption>
          <thead>
            <tr>
              <th scope="col">Series</th>
              <th scope="col">Torsional, n/N</th>
              {explanations.map(({ name }) => (
                <th key={name} scope="col">
                  {capital(explanationWords[name])}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {priors.map(({ series, n, N, source, verification, posterior }) => (
              <tr key={series}>
                <th scope="row">
                  {capital(series)}{" "}
                  <span className="quiet">
                    {sourceName(source)} <SeenMark verification={verification} />
                  </span>
                </th>
                <td>
                  {n}/{N}
                </td>
                {explanations.map((one) => (
                  <td key={one.name}>
                    <a href={`#${entryId}`}>{percentText(posterior[one.name])} %</a>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}
