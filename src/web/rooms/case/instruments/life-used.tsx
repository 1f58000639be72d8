import { Link } from "wouter";
import { endsText, percentText } from "../../../../figures/chance-text.ts";
import { strainText } from "../../../../figures/strain-ramp.ts";
import type { UseInCanal } from "../../../../ledger/instruments-of-canals.ts";
import type { LifeTold } from "../../../../ledger/life-told.ts";
import { Cautions } from "../../../parts/cautions.tsx";
import { type Ends, intervalInWords, numberInWords } from "../../../parts/figures-in-words.ts";

interface LifeUsedOptions {
  readonly told: LifeTold;
  readonly entryId: string;
  /** The uses in the canal that is looked at. */
  readonly uses: readonly UseInCanal[];
}

/** What the uses took of the instrument's life: only ever as a ratio, never as a count that it will last. */
export const LifeUsed = ({ told, entryId, uses }: LifeUsedOptions) => (
  <div className="instruments-life">
    <h5>Life used</h5>
    {told.discard && (
      <p className="instruments-over">
        ▲ Past a limit that was set:{" "}
        {told.over.map(({ name, limit, found }) => overWords(name, limit, found)).join("; ")}
      </p>
    )}
    <dl className="instruments-bounds">
      <Line name="Against one minute in the reference canal (60°, radius 5 mm)">
        <a className="instruments-number" href={`#${entryId}`}>
          {bandWords(told.ratioToReference)} of it
        </a>
      </Line>
      <Line name="Turns, all turning added up">
        {numberInWords(told.turns.swept, 0)}
        {told.turns.net !== told.turns.swept && (
          <span className="quiet">, {numberInWords(told.turns.net, 0)} left of both directions</span>
        )}
      </Line>
      <Line name={`The same as turns at a strain of ${strainText(told.referenceStrain)}`}>
        <a className="instruments-number" href={`#${entryId}`}>
          {bandWords(told.equivalentTurns)}
        </a>
      </Line>
      <Line name="Section worn most">
        {told.worstSection === undefined
          ? "none, nothing bent it"
          : `${told.worstSection.fromTipMm.toFixed(1)} mm from its tip (${intervalWords(told.worstSection.within)})`}
      </Line>
      <Line name={`Of that, in this canal${told.uses.length > 1 ? ` of ${told.uses.length} uses` : ""}`}>
        {sharesHere(told, uses)}
      </Line>
    </dl>
    {told.takenAsOne && <p className="look">◇ {told.takenAsOne}</p>}
    <Cautions topic="lifeUsed" cautions={told.cautions} />
    <p>
      <Link href="/methods/lifeUsed">What this can and can't tell</Link>
    </p>
  </div>
);

const Line = ({ name, children }: { readonly name: string; readonly children: React.ReactNode }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

/** Both ends of a band over the slopes; one number where they are alike. */
const bandWords = (band: Ends): string =>
  band.high - band.low < 1e-9 * Math.max(1, band.high)
    ? numberInWords(band.low, band.low < 10 ? 2 : 0)
    : intervalInWords(band);

function intervalWords({ low, high }: Ends): string {
  const [from, to] = [low.toFixed(1), high.toFixed(1)];
  return from === to ? "the same over all slopes" : `${from} to ${to} over all slopes`;
}

function sharesHere({ uses }: LifeTold, here: readonly UseInCanal[]): string {
  const own = uses.filter(({ row }) => here.some(({ record }) => record === row));
  if (own.length === 0) return "not told apart";
  return own.map(({ share }) => shareWords(share)).join(" and ");
}

const shareWords = (share: Ends): string =>
  percentText(share.low) === percentText(share.high) ? `${percentText(share.low)} %` : endsText(share);

const limitWords = { uses: "uses", turns: "turns", equivalentTurns: "equivalent turns" } as const;

const overWords = (name: keyof typeof limitWords, limit: number, found: number): string =>
  `${numberInWords(found, 0)} ${limitWords[name]} against ${numberInWords(limit, 0)}`;
