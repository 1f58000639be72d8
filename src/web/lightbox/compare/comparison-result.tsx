import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { Part } from "../../../record/parts.ts";
import { Cautions } from "../../parts/cautions.tsx";
import { intervalInWords } from "../../parts/figures-in-words.ts";
import { besideNumbers, numberOf, whyAbsent } from "../kernels/ledger-reading.ts";
import { LedgerFigure } from "../view/ledger-figure.tsx";
import { type ComparisonRead, lesionName, readComparison } from "./comparison-reading.ts";

interface ResultOptions {
  readonly entry: LedgerEntry;
  readonly parts: readonly Part[];
}

/** What the comparison came to: the lesion's change in one sentence, whether the films compare, then every measure. */
export function ComparisonResult({ entry, parts }: ResultOptions) {
  const read = readComparison(entry);
  if (read === undefined) return null;
  return (
    <section className="comparison-result" aria-label="What changed">
      {read.comparable ? <Ratio entry={entry} parts={parts} read={read} /> : <NotComparable read={read} />}
      <Cautions topic="compareFilms" cautions={besideNumbers(entry).cautions} />
      {read.comparable && <p className="quiet">{read.statement}</p>}
      <Measures entry={entry} />
    </section>
  );
}

function Ratio({ entry, parts, read }: ResultOptions & { read: ComparisonRead }) {
  const ratio = numberOf(entry, "areaRatio");
  const name = lesionName(entry, parts);
  return (
    <>
      {ratio === undefined ? (
        <p className="absent">No ratio of areas: {whyAbsent(entry, "areaRatio") ?? "it was not computed"}.</p>
      ) : (
        <p className="headline">
          <LedgerFigure entry={entry} number={ratio} unit="" says={`Area of ${name}, after over before`} />
          <span>
            of the area that {name} had before
            {ratio.interval && <span className="quiet">, {intervalInWords(ratio.interval)}</span>}
          </span>
        </p>
      )}
      {read.others.map(({ name: what, areaRatio, interval }, index) =>
        areaRatio === undefined ? (
          <p key={what} className="quiet">
            {what}: outlined on one film only.
          </p>
        ) : (
          <p key={what}>
            <LedgerFigure
              entry={entry}
              number={interval === undefined ? { value: areaRatio } : { value: areaRatio, interval }}
              unit=""
              says={`Area of ${what}, after over before, number ${index + 2}`}
            />{" "}
            {what}
            {interval && <span className="quiet">, {intervalInWords(interval)}</span>}
          </p>
        ),
      )}
    </>
  );
}

const NotComparable = ({ read }: { read: ComparisonRead }) => (
  <div className="not-comparable">
    <h3>These films can't be compared</h3>
    <p>{read.statement.replace(/^The films can't be compared\. /, "")}</p>
    <p className="quiet">
      Look at the landmarks first: one that is not the same place on both films bends the whole. If they are right, the
      tube stood elsewhere: compare with another film, or take the next one with the holder and angle of the first. The
      films still lie on each other as far as they go; no ratio and no difference is given.
    </p>
  </div>
);

const rows: readonly {
  readonly name: string;
  readonly says: string;
  readonly unit: string;
  readonly digits: number;
}[] = [
  { name: "residualMm", says: "Pieces of the films lie off by", unit: "mm", digits: 2 },
  { name: "residualPx", says: "The same in pixels", unit: "px", digits: 1 },
  { name: "residualNearLesionPx", says: "Near the lesion", unit: "px", digits: 1 },
  { name: "landmarkResidualPx", says: "Landmarks lie off by", unit: "px", digits: 1 },
  { name: "stretch", says: "Largest stretch over smallest", unit: "", digits: 3 },
  { name: "correlation", says: "Correlation", unit: "", digits: 3 },
  { name: "overlap", says: "Share of the first film covered", unit: "", digits: 2 },
  { name: "differenceSigma", says: "Noise of the difference, of full range", unit: "", digits: 3 },
];

const Measures = ({ entry }: { entry: LedgerEntry }) => (
  <table className="measures">
    <thead className="unseen">
      <tr>
        <th scope="col">Measure</th>
        <th scope="col">Value</th>
      </tr>
    </thead>
    <tbody>
      {rows.map(({ name, says, unit, digits }) => {
        const number = numberOf(entry, name);
        if (number === undefined) return null;
        return (
          <tr key={name}>
            <th scope="row">{says}</th>
            <td>
              <LedgerFigure entry={entry} number={number} unit={unit} digits={digits} says={says} />
            </td>
          </tr>
        );
      })}
    </tbody>
  </table>
);
