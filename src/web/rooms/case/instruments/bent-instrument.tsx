import { useId, useState } from "react";
import { strainText } from "../../../../figures/strain-ramp.ts";
import { type BendTold, bendTold } from "../../../../ledger/bend-told.ts";
import type { InstrumentUsed } from "../../../../ledger/instruments-of-canals.ts";
import { lifeTold } from "../../../../ledger/life-told.ts";
import { placeNumbered } from "../../../../ledger/place-on-instrument.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import { Cautions } from "../../../parts/cautions.tsx";
import { quantityInWords } from "../../../parts/figures-in-words.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { boundWords, startWords } from "./bend-in-words.ts";
import { FilmOfBend } from "./film-of-bend.tsx";
import { type Gap, gapsOf } from "./gaps-of-canal.ts";
import { LifeUsed } from "./life-used.tsx";
import { SeatAndGraph } from "./seat-and-graph.tsx";

interface BentInstrumentOptions {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  readonly used: InstrumentUsed;
  readonly title: string;
  /** What is told once of several instruments of the canal; it is not said again here. */
  readonly toldOfSeveral: readonly Gap[];
}

/** One instrument in its canal: how hard it was bent, where, what of that is bounded, and what it took of its life. */
export function BentInstrument({ used, title, toldOfSeveral, ...of }: BentInstrumentOptions) {
  const heading = useId();
  const { bend, life } = used;
  const told = bendTold(bend);
  const lived = lifeTold(life);
  const gaps = gapsOf(used).filter((gap) => !toldOfSeveral.some((one) => one.of === gap.of && one.why === gap.why));
  // All that could be said of it stands above, of several at once.
  if (told === undefined && lived === undefined && gaps.length === 0) return null;
  return (
    <section className="instruments-bent" aria-labelledby={heading}>
      <h4 id={heading}>
        {title}
        {used.broke && ", where it broke"}
      </h4>
      {gaps.map(({ of: what, why }) => (
        <p key={what + why} className="look">
          ◇ {what} is not told: {why}.
        </p>
      ))}
      {bend && told && <Bent {...{ told, used, ...of }} entry={bend} />}
      {life && lived && <LifeUsed told={lived} entryId={life.id} uses={used.uses} />}
    </section>
  );
}

interface BentOptions extends Pick<BentInstrumentOptions, "caseId" | "parts" | "ledger"> {
  readonly told: BendTold;
  readonly entry: LedgerEntry;
  readonly used: InstrumentUsed;
}

function Bent({ told, entry, used, ...of }: BentOptions) {
  const [number, point] = useState<number>();
  const place = number === undefined ? undefined : placeNumbered(told, number);
  return (
    <>
      <p className="instruments-most">
        <a className="instruments-figure" href={`#${entry.id}`}>
          {strainText(told.peakStrain)}
          <span className="unseen"> of strain, how it came about</span>
        </a>{" "}
        {intervalWords(told)} <span>{placeWords(told)}</span>
      </p>
      {told.overTenPercent && (
        <p className="instruments-over">
          ▲ Over 10 %: the instrument can't follow this course without being bent beyond that.
        </p>
      )}
      <SeatAndGraph {...{ told, used, number, point, place }} />
      <Bounds told={told} />
      <FilmOfBend {...{ told, entry, ...of }} place={place?.fromTipMm} />
      <Cautions topic="bend" cautions={told.cautions.filter((one) => !one.startsWith("The instrument can't follow"))} />
      <NotComputed told={told} />
    </>
  );
}

function intervalWords({ intervals: { peakStrain: ends } }: BendTold) {
  return ends === undefined ? null : (
    <span className="quiet">
      ({strainText(ends.low).replace(" %", "")} to {strainText(ends.high)})
    </span>
  );
}

const placeWords = ({ fromTipMm, fromStartMm, startsAt }: BendTold): string =>
  fromTipMm === undefined || fromStartMm === undefined
    ? "of strain: the canal is straight where it lay"
    : `at most, ${fromTipMm.toFixed(1)} mm from its tip, ${fromStartMm.toFixed(1)} mm from ${startWords[startsAt]}`;

/** What each value says about the true one, as the course was seen. */
const Bounds = ({ told }: { readonly told: BendTold }) => (
  <dl className="instruments-bounds">
    {told.bounds.map(({ name, bound, why }) => (
      <div key={name}>
        <dt>
          {boundOf[name]} <strong>{valueWords(name, told)}</strong>
        </dt>
        <dd>
          {boundWords[bound]}
          <span className="quiet">: {sentenceInWords(why)}</span>
        </dd>
      </div>
    ))}
  </dl>
);

type Bounded = BendTold["bounds"][number]["name"];
const boundOf: Readonly<Record<Bounded, string>> = {
  turnDeg: "All turning of the canal",
  radiusMm: "Radius at that place",
  peakStrain: "Strain there",
};

function valueWords(name: Bounded, { turnDeg, radiusMm, peakStrain }: BendTold): string {
  if (name === "peakStrain") return strainText(peakStrain);
  if (name === "turnDeg") return `${turnDeg.toFixed(0)}°`;
  return radiusMm === undefined ? "none, it is straight" : quantityInWords(Number(radiusMm.toFixed(1)), "mm");
}

const NotComputed = ({ told: { notComputed } }: { readonly told: BendTold }) =>
  notComputed.length === 0 ? null : (
    <ul className="instruments-open" aria-label="Not computed">
      {notComputed.map(({ name, why }) => (
        <li key={name} className="quiet">
          Not computed, {openWords[name] ?? sentenceInWords(name)}: {why}.
        </li>
      ))}
    </ul>
  );

const openWords: Readonly<Record<string, string>> = {
  fromTipMm: "the place on the instrument",
  fromOrificeMm: "the place in the canal",
  fromReferenceMm: "the place in the canal",
  radiusMm: "the radius there",
  "intervals.peakStrain": "an interval of the strain",
  "intervals.fromTipMm": "an interval of the place",
};
