import { useMemo } from "react";
import { percentText } from "../../../../figures/chance-text.ts";
import { amongPublishedFigure } from "../../../../pages/fracture-figures.ts";
import { sourceName, withBareSourceNames } from "../../../../pages/source-name.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords, valueInWords } from "../../../words/value-words.ts";
import type { ToldOfBreak } from "./explanations-beside.tsx";

/** How long the piece is, by each measure, and how it stands among published lengths. */
export function PieceAmongPublished({ told, entryId }: ToldOfBreak) {
  const figure = useMemo(() => amongPublishedFigure(told, { theme: "paper", widthPx: 560 }), [told]);
  const { fragmentLength, shifts } = told;
  if (fragmentLength === undefined) return null;
  const { mm, sigmaMm, percentile, source, measures, series } = fragmentLength;
  return (
    <div className="mishap-block">
      <h3>The piece among published lengths</h3>
      <p>
        <a className="mishap-number" href={`#${entryId}`}>
          {numberInWords(mm, 1)} mm
        </a>{" "}
        <span className="quiet">SD {numberInWords(sigmaMm, 2)} mm</span>: {percentText(percentile)} % of published
        lengths are shorter. <span className="quiet">{sentenceInWords(withBareSourceNames(source))}</span>
      </p>
      {measures.length > 1 && (
        <p className="quiet">
          By{" "}
          {measures
            .map(
              ({ name, mm: one, sigmaMm: sd }) =>
                `${valueInWords(name)} ${numberInWords(one, 2)} mm (SD ${numberInWords(sd, 2)})`,
            )
            .join(", ")}
        </p>
      )}
      {figure && <FigureView figure={figure} />}
      <details className="mishap-more">
        <summary>Each published series ({series.length})</summary>
        <table className="ruled-table mishap-table">
          <caption className="unseen">Published lengths of pieces</caption>
          <thead>
            <tr>
              <th scope="col">Pieces</th>
              <th scope="col">Mean, SD</th>
              <th scope="col">n</th>
              <th scope="col">Shorter</th>
              <th scope="col">Source</th>
            </tr>
          </thead>
          <tbody>
            {series.map((one) => (
              <tr key={one.name}>
                <th scope="row">{capital(one.name)}</th>
                <td>
                  {numberInWords(one.meanMm, 2)}, {numberInWords(one.sdMm, 2)} mm
                </td>
                <td>{one.n ?? "–"}</td>
                <td>{percentText(one.percentile)} %</td>
                <td>{sourceName(one.source)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      {shifts.length > 0 && (
        <p className="quiet">
          A fatigue piece of this instrument is to be expected{" "}
          {shifts.map(({ against, longerMm }) => `${longerInWords(longerMm)} one of ${against}`).join("; ")}.
        </p>
      )}
    </div>
  );
}

/** `0.9 mm longer than`; `as long as` where a tenth does not show. */
function longerInWords(mm: number): string {
  const text = numberInWords(mm, 1);
  if (Number(mm.toFixed(1)) === 0) return "as long as";
  return mm < 0 ? `${text.replace("\u2212", "")}\u202fmm shorter than` : `${text}\u202fmm longer than`;
}
