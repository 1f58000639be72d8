import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { entryOf, type LedgerNumber, numberOf } from "../../../lightbox/kernels/ledger-reading.ts";
import { numberInSpace } from "../../../lightbox/two-view/course-reading.ts";
import { LedgerFigure } from "../../../lightbox/view/ledger-figure.tsx";
import { intervalInWords } from "../../../parts/figures-in-words.ts";
import { useTwoView } from "./two-view-work.ts";

interface Row {
  readonly says: string;
  readonly entry: LedgerEntry | undefined;
  readonly number: LedgerNumber | undefined;
  readonly unit: string;
  readonly digits?: number;
}

/** True and apparent, side by side: the bend, its radius, the length, in space and on each film. */
export function CourseNumbers() {
  const { entry, films, ledger } = useTwoView();
  const rows: Row[] = [
    {
      says: "Largest bend, in space",
      entry,
      number: numberInSpace(entry, "pruettDeg", "curvature.pruettDeg"),
      unit: "°",
    },
    ...films.map((film, index) => ({
      ...{
        says: `Seen on film ${index + 1}, ${film.name}`,
        entry,
        number: numberOf(entry, `apparent.${index}`),
        unit: "°",
        digits: 0,
      },
    })),
    {
      says: "Radius of that bend",
      entry,
      number: numberInSpace(entry, "pruettRadiusMm", "curvature.pruettRadiusMm"),
      unit: "mm",
    },
    {
      says: "Its plane, off the straight film's",
      entry,
      number: numberInSpace(entry, "angleToFilmDeg", "plane.angleToFilmDeg"),
      unit: "°",
    },
    { says: "Length, in space", entry, number: numberInSpace(entry, "lengthMm"), unit: "mm" },
    ...films.map(({ trace, name }, index): Row => {
      const onFilm = entryOf(ledger, "curvature", trace.id);
      return {
        says: `Length on film ${index + 1}, ${name}`,
        entry: onFilm,
        number: numberOf(onFilm, "lengthMm"),
        unit: "mm",
      };
    }),
  ];
  return (
    <table className="measures">
      <thead className="unseen">
        <tr>
          <th scope="col">Measure</th>
          <th scope="col">Value</th>
          <th scope="col">Interval of 95 %</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Measure key={row.says} {...row} />
        ))}
      </tbody>
    </table>
  );
}

function Measure({ says, entry, number, unit, digits }: Row) {
  return (
    <tr>
      <th scope="row">{says}</th>
      <td>
        {entry === undefined || number === undefined ? (
          <span className="quiet">none</span>
        ) : (
          <LedgerFigure
            entry={entry}
            number={number}
            unit={unit}
            says={says}
            {...(digits === undefined ? {} : { digits })}
          />
        )}
      </td>
      <td className="quiet">{number?.interval && intervalInWords(number.interval)}</td>
    </tr>
  );
}
