import { useMemo } from "react";
import { endsText, percentText } from "../../../../figures/chance-text.ts";
import type { RemovalTold } from "../../../../ledger/removal-told.ts";
import { driversFigure, waysFigure } from "../../../../pages/removal-figures.ts";
import { sourceName } from "../../../../pages/source-name.ts";
import { removalWayWords } from "../../../../record/words/removal-words.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { SeenMark } from "../../../parts/seen-mark.tsx";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

type Way = RemovalTold["ways"][number];

interface WaysBesideOptions {
  readonly told: RemovalTold;
  readonly entryId: string;
}

/** What becomes of the tooth by each way, side by side; none of them is called best. */
export function WaysBeside({ told, entryId }: WaysBesideOptions) {
  const figure = useMemo(() => waysFigure(told, { theme: "paper", widthPx: 640 }), [told]);
  return (
    <section className="form-part" aria-labelledby="removal-ways">
      <h2 id="removal-ways">The ways side by side</h2>
      <p className="removal-verdict" data-verdict={told.figuresDecide ? "decides" : "open"}>
        {!told.figuresDecide && "◇ "}
        {sentenceInWords(told.figuresSay)}
      </p>
      <FigureView figure={figure} />
      <table className="ruled-table removal-table">
        <caption>Outcome of each way, share with 95 % interval</caption>
        <thead>
          <tr>
            <th scope="col">Way</th>
            <th scope="col" data-figure>
              Bone heals
            </th>
            <th scope="col" data-figure>
              Tooth kept
            </th>
          </tr>
        </thead>
        <tbody>
          {told.ways.map((way) => (
            <WayRow key={way.way} way={way} entryId={entryId} />
          ))}
        </tbody>
      </table>
      <details className="removal-from">
        <summary>What each way rests on</summary>
        {told.ways.map((way) => (
          <FromSeries key={way.way} way={way} />
        ))}
      </details>
      <Drivers drivers={told.drivers} />
    </section>
  );
}

/** What drives the difference of each way to leaving the piece, one drawing a way. */
function Drivers({ drivers }: Pick<RemovalTold, "drivers">) {
  const figures = useMemo(
    () =>
      drivers
        .filter(({ inputs }) => inputs.length > 0)
        .map((driver) => ({ way: driver.way, figure: driversFigure(driver, { theme: "paper", widthPx: 640 }) })),
    [drivers],
  );
  if (figures.length === 0) return null;
  return (
    <div className="form-part">
      <h3>What drives the difference to leaving it</h3>
      <p className="quiet">Each input is moved over its own interval, the others stay at their means.</p>
      {figures.map(({ way, figure }) => (
        <details key={way} className="removal-from" open={way === figures[0]?.way}>
          <summary>{capital(removalWayWords[way])}, less leaving it</summary>
          <FigureView figure={figure} />
        </details>
      ))}
    </div>
  );
}

interface WayOptions {
  readonly way: Way;
  readonly entryId: string;
}

const WayRow = ({ way: { way, healed, kept }, entryId }: WayOptions) => (
  <tr>
    <th scope="row">{capital(removalWayWords[way])}</th>
    <td data-figure>
      <Share of={healed} entryId={entryId} />
    </td>
    <td data-figure>
      <Share of={kept} entryId={entryId} />
    </td>
  </tr>
);

function Share({ of, entryId }: { readonly of: Way["healed"]; readonly entryId: string }) {
  if (of === undefined) return <>–</>;
  return (
    <>
      <a className="removal-number" href={`#${entryId}`}>
        {percentText(of.mean)} %
      </a>{" "}
      <span className="quiet">{of.interval.low === of.interval.high ? "by definition" : endsText(of.interval)}</span>
    </>
  );
}

const FromSeries = ({ way: { way, from } }: { readonly way: Way }) => (
  <div className="form-part">
    <h3>{capital(removalWayWords[way])}</h3>
    {from.length === 0 ? (
      <p className="quiet">No series; by definition.</p>
    ) : (
      <ul className="removal-sources">
        {from.map(({ source, says, column, events, n, share, inSum, note, mark }) => (
          <li key={source + says + column}>
            {column === "healed" ? "Bone heals" : "Tooth kept"}: {sentenceInWords(says)}{" "}
            {events === undefined || n === undefined ? `${percentText(share)} %` : `${events}/${n}`},{" "}
            {sourceName(source)} {mark === "common practice" ? mark : <SeenMark verification={mark} />}
            {!inSum && <span className="quiet"> stands beside, not in the sum.</span>}
            {note !== undefined && <span className="quiet"> {sentenceInWords(note)}</span>}
          </li>
        ))}
      </ul>
    )}
  </div>
);
