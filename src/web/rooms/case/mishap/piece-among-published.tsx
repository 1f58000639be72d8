import { useMemo } from "react";
import { percentText } from "../../../../figures/chance-text.ts";
import { amongPublishedFigure } from "../../../../pages/fracture-figures.ts";
import { sourceName } from "../../../../pages/source-name.ts";
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
        lengths are shorter. <span className="quiet">{sentenceInWords(source)}</span>
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
        <table className="mishap-table">
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
      {shifts.map(({ against, longerMm }) => (
        <p key={against} className="quiet">
          A fatigue piece of this instrument is to be expected {longerOrShorter(longerMm)} than one of {against}.
        </p>
      ))}
    </div>
  );
}

const longerOrShorter = (mm: number): string =>
  mm < 0 ? `${numberInWords(mm, 1).replace("\u2212", "")}\u202fmm shorter` : `${numberInWords(mm, 1)}\u202fmm longer`;
