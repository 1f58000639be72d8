import { ratioFigure } from "../../../../../core/times-text.ts";
import { standingWords } from "../../../../../figures/limit-marks.ts";
import { zoneInWords } from "../../../../../ledger/solvent-in-words.ts";
import type { SolventTold } from "../../../../../ledger/solvent-told.ts";
import { solventSourceName } from "../../../../../pages/solvent-figures.ts";
import { quantityInWords } from "../../../../parts/figures-in-words.ts";
import { SeenMark } from "../../../../parts/seen-mark.tsx";

interface LimitsToldOptions {
  readonly told: SolventTold;
  readonly entryId: string;
}

const averagingWords = { 0: "ceiling", 15: "15 min", 60: "60 min", 480: "8 hours" } as const;

/** Every limit in every zone as a table: with both units, its source, whether that was read, and its note. */
export const LimitsTold = ({ told, entryId }: LimitsToldOptions) => (
  <div className="air-scroll">
    <table className="ruled-table air-table">
      <caption>Every limit, the strictest first</caption>
      <thead>
        <tr>
          <th scope="col">Authority</th>
          <th scope="col">Over</th>
          <th scope="col" data-figure>
            Limit
          </th>
          <th scope="col">Air</th>
          <th scope="col" data-figure>
            Value
          </th>
          <th scope="col" data-figure>
            Value in the limit
          </th>
          <th scope="col">Source</th>
        </tr>
      </thead>
      <tbody>
        {told.limits.map((limit) => (
          <tr key={[limit.authority, limit.source, limit.averagingMin, limit.ppm, limit.zone].join()}>
            <th scope="row">
              {limit.authority} {limit.year}
            </th>
            <td>{averagingWords[limit.averagingMin]}</td>
            <td data-figure>
              {quantityInWords(limit.ppm, "ppm")}
              <span className="air-range">{quantityInWords(limit.mgM3, "mg/m³")}</span>
            </td>
            <td>{zoneInWords(told, limit.zone)}</td>
            <td data-figure>
              <a className="air-number" href={`#${entryId}`}>
                {quantityInWords(limit.value.ppm, "ppm")}
              </a>
              <span className="air-range">{quantityInWords(limit.value.mgM3, "mg/m³")}</span>
            </td>
            <td data-figure>
              {ratioFigure(limit.ratio)}, {standingWords[limit.stands]}
              {limit.ratioWithin && (
                <span className="air-range">
                  {ratioFigure(limit.ratioWithin.low)} to {ratioFigure(limit.ratioWithin.high)}
                </span>
              )}
            </td>
            <td>
              {solventSourceName(limit.source)} {limit.mark !== "own" && <SeenMark verification={limit.mark} />}
              {limit.note && <span className="air-range">{limit.note}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
