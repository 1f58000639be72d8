import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { Cautions } from "../../parts/cautions.tsx";
import { intervalInWords } from "../../parts/figures-in-words.ts";
import { capital, lowered } from "../../words/capital.ts";
import { type DrawnReading, type DrawnValue, toldInWords } from "../kernels/drawn-readings.ts";
import { type BoundBody, markSaid } from "../kernels/film-gestures.ts";
import { besideNumbers, entryOf, numberOf, whyAbsent } from "../kernels/ledger-reading.ts";
import { type Mark, markName } from "../kernels/mark-shape.ts";
import { saidOfMark } from "../kernels/owner-question.ts";
import { SaidField } from "./ask-owner.tsx";
import { LedgerFigure } from "./ledger-figure.tsx";
import type { LightBox } from "./light-box.ts";

interface DrawnSectionOptions {
  readonly box: LightBox;
  readonly mark: Mark;
  readonly reading: DrawnReading;
  readonly ledger: readonly LedgerEntry[];
  readonly measuring: boolean;
}

/** What the chosen fragment, wall, filling's end, level or crown and root measures, and what is said of it. */
export function DrawnSection({ box, mark, reading, ledger, measuring }: DrawnSectionOptions) {
  const entry = entryOf(ledger, reading.topic, mark.id);
  const [first, ...rest] = reading.values;
  const name = capital(markName(mark.body));
  return (
    <section className="course" aria-label={name} aria-busy={measuring}>
      <h2>{name}</h2>
      {first && <Headline {...{ entry, measuring }} value={first} />}
      <SaidOfIt box={box} mark={mark} />
      {entry?.output !== undefined && (
        <>
          <Values entry={entry} values={rest} />
          {toldInWords(entry).map((line) => (
            <p key={line} className="quiet">
              {line}.
            </p>
          ))}
          <Cautions topic={reading.topic} cautions={besideNumbers(entry).cautions} />
        </>
      )}
    </section>
  );
}

interface HeadlineOptions {
  readonly entry: LedgerEntry | undefined;
  readonly value: DrawnValue;
  readonly measuring: boolean;
}

function Headline({ entry, value: { name, says, unit }, measuring }: HeadlineOptions) {
  const number = numberOf(entry, name);
  if (measuring) return <p className="headline headline-waiting">measuring</p>;
  if (entry === undefined || number === undefined)
    return <p className="absent">Not measured: {whyAbsent(entry, name) ?? "it stands in no entry yet"}.</p>;
  return (
    <p className="headline">
      <LedgerFigure entry={entry} number={number} unit={unit} says={capital(says)} />
      <span>
        {says}
        {number.interval && <span className="quiet">, {intervalInWords(number.interval)}</span>}
      </span>
    </p>
  );
}

function Values({ entry, values }: { readonly entry: LedgerEntry; readonly values: readonly DrawnValue[] }) {
  const found = values.flatMap((value) => {
    const number = numberOf(entry, value.name);
    return number === undefined ? [] : [{ ...value, number }];
  });
  if (found.length === 0) return null;
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
        {found.map(({ name, says, unit, number }) => (
          <tr key={name}>
            <th scope="row">{says}</th>
            <td>
              <LedgerFigure entry={entry} number={number} unit={unit} says={says} />
            </td>
            <td className="quiet">{number.interval && intervalInWords(number.interval)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The one thing that the person says of a mark: the side of a wall, where crown and root part, what a level is. */
export function SaidOfIt({ box, mark }: { readonly box: LightBox; readonly mark: Mark }) {
  const { body } = mark;
  if (body.shape === "knownLength" || body.shape === "distance" || body.shape === "outline") return null;
  const said = saidOfMark(body);
  if (said === undefined) return null;
  const change = (to: BoundBody) => box.record(markSaid(mark, to, `${lowered(said.says)} said`, box));
  return (
    <div className="said-of-mark">
      <SaidField key={said.value} said={said} change={(value) => change(said.saying(value))} late />
    </div>
  );
}
