import { useMemo } from "react";
import { endsText, percentText } from "../../../../figures/chance-text.ts";
import type { RemovalTold } from "../../../../ledger/removal-told.ts";
import { chancesFigure } from "../../../../pages/removal-figures.ts";
import { sourceName } from "../../../../pages/source-name.ts";
import { seriesByWords, seriesCountedWords, seriesMatchWords } from "../../../../record/words/removal-words.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { SeenMark } from "../../../parts/seen-mark.tsx";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

type Chance = RemovalTold["removalChance"][number];

interface PublishedChancesOptions {
  readonly told: RemovalTold;
  readonly entryId: string;
}

/** How often pieces came out in published series, the groups that this case belongs to first. */
export function PublishedChances({ told: { removalChance }, entryId }: PublishedChancesOptions) {
  const own = useMemo(() => removalChance.filter(({ matches }) => matches === "yes"), [removalChance]);
  const others = removalChance.filter(({ matches }) => matches !== "yes");
  const figure = useMemo(
    () => (own.length === 0 ? undefined : chancesFigure(own, { theme: "paper", widthPx: 640 })),
    [own],
  );
  return (
    <section className="form-part" aria-labelledby="removal-chances">
      <h2 id="removal-chances">How often it came out elsewhere</h2>
      {own.length === 0 ? (
        <p className="quiet">
          No published group is known to be this case&apos;s: say where the piece lies and whether it is seen.
        </p>
      ) : (
        <>
          {figure && <FigureView figure={figure} />}
          <details className="removal-from">
            <summary>The same as a table, each with its source ({own.length})</summary>
            <ChanceTable caption="Groups that this case belongs to" rows={own} entryId={entryId} />
          </details>
        </>
      )}
      {others.length > 0 && (
        <details className="removal-from">
          <summary>Other published groups ({others.length})</summary>
          <ChanceTable caption="Other published groups" rows={others} entryId={entryId} />
        </details>
      )}
    </section>
  );
}

interface ChanceTableOptions {
  readonly caption: string;
  readonly rows: readonly Chance[];
  readonly entryId: string;
}

const ChanceTable = ({ caption, rows, entryId }: ChanceTableOptions) => (
  <table className="ruled-table removal-table">
    <caption>{caption}</caption>
    <thead>
      <tr>
        <th scope="col">Group</th>
        <th scope="col">Counted</th>
        <th scope="col" data-figure>
          n/N
        </th>
        <th scope="col" data-figure>
          95 % interval
        </th>
        <th scope="col">Source</th>
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <tr key={`${row.series} ${row.by} ${row.group} ${row.success}`}>
          <th scope="row">
            {capital(row.group)} <span className="quiet">{seriesByWords[row.by]}</span>
            {row.matches === "notKnown" && <span className="quiet">, {seriesMatchWords.notKnown}</span>}
          </th>
          <td>{seriesCountedWords[row.success]}</td>
          <td data-figure>
            <a href={`#${entryId}`}>{countsText(row)}</a>
            {row.implied && <span className="quiet"> implied</span>}
          </td>
          <td data-figure>{row.interval === undefined ? "–" : `${endsText(row.interval)}`}</td>
          <td>
            {sourceName(row.series)} {row.mark !== "common practice" && <SeenMark verification={row.mark} />}
            {row.note !== undefined && <span className="quiet"> {sentenceInWords(row.note)}</span>}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** `68/112, 61 %`; a share without its counts says so. */
function countsText({ events, n, share }: Chance): string {
  const percent = share === undefined ? "" : `${percentText(share)} %`;
  if (events === undefined || n === undefined) return percent === "" ? "direction only" : `${percent}, N not printed`;
  return `${events}/${n}${percent === "" ? "" : `, ${percent}`}`;
}
