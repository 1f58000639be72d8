import { useMemo, useState } from "react";
import { Link } from "wouter";
import { chanceLadder } from "../../../../figures/chance-ladder.ts";
import { endsText, percentText } from "../../../../figures/chance-text.ts";
import { seriesStrip } from "../../../../figures/series-strip.ts";
import { type MissedCanalTold, missedCanalRungs, missedCanalTold } from "../../../../ledger/missed-canal-told.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { PartOf } from "../../../../record/parts.ts";
import { featureWords } from "../../../../record/words/search-words.ts";
import type { FeatureView } from "../../../../server/api.ts";
import { Button } from "../../../parts/button.tsx";
import { Cautions } from "../../../parts/cautions.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { EditPart, useField } from "../../../parts/fields/editing.tsx";
import { FigureView } from "../../../parts/figure-view.tsx";
import { SeenMark } from "../../../parts/seen-mark.tsx";
import type { DraftBook } from "../../../record/draft-book.ts";
import { useCanals } from "../canals.ts";
import { AddLook, type LookKind } from "./add-look.tsx";
import { LooksTable } from "./looks-table.tsx";
import { NextLooks } from "./next-looks.tsx";
import { afterLooks, lookSentence, nameOfFeature } from "./search-in-words.ts";

interface SearchSectionOptions {
  readonly caseId: string;
  readonly search: PartOf<"search">;
  readonly entry: LedgerEntry | undefined;
  readonly feature: FeatureView | undefined;
  readonly day: string;
  readonly book: DraftBook | undefined;
  /** There are films to look at again. */
  readonly films: boolean;
  /** The keys of the page are this search's. */
  readonly keys: boolean;
  readonly enter: () => void;
  readonly takeOut: (search: PartOf<"search">) => void;
}

/** One search: the chance now, how it came about, the looks, and which comes next. */
export function SearchSection({ search, entry, feature, day, book, keys, ...does }: SearchSectionOptions) {
  const [kind, setKind] = useState<LookKind>();
  const told = missedCanalTold(entry);
  const { foundAs } = search.body;
  const name = nameOfFeature(search.body.feature);
  const is = feature?.is ?? featureWords[search.body.feature];
  return (
    <section className="search" aria-label={name} onFocusCapture={does.enter}>
      <EditPart part={search} title={name} draft={book?.of(search.id)} book={book}>
        <header className="search-head">
          <h3>{name}</h3>
          {told && <Now told={told} search={search} entryId={entry?.id ?? ""} />}
        </header>
        {entry?.refused?.map((why) => (
          <p key={why} className="look">
            {lookSentence(why)}
          </p>
        ))}
        {told && <Ladder entry={entry} is={is} />}
        <Published feature={feature} told={told} />
        <AddLook {...{ kind, setKind, day, keys }} />
        <LooksTable />
        {told && <Wanted told={told} />}
        <Found />
        {told && !foundAs && <NextLooks looks={told.nextBestLook} take={book ? setKind : undefined} />}
        {told && <Cautions topic="missedCanal" cautions={told.cautions} />}
      </EditPart>
      <footer className="search-foot">
        {does.films && <Link href={`/case/${does.caseId}/light-box`}>The films in hand</Link>}
        <Link href={`/case/${does.caseId}/anatomy`}>Found: note it in Roots and canals</Link>
        <Link href="/methods/missedCanal">How this is computed</Link>
        {book && (
          <Button weight="bare" onClick={() => does.takeOut(search)}>
            Take out this search<span className="unseen">: {is}</span>
          </Button>
        )}
      </footer>
    </section>
  );
}

interface NowOptions {
  readonly told: MissedCanalTold;
  readonly search: PartOf<"search">;
  readonly entryId: string;
}

/** The chance as it stands: `62 % (31 to 88 %) that it is there after 3 looks`; of one that was found, what it had been. */
function Now({ told: { posterior, steps }, search: { body }, entryId }: NowOptions) {
  const { mean, interval } = posterior;
  const after = afterLooks({ steps }, body.looks.length);
  const chance = (
    <>
      <a className="search-number" href={`#${entryId}`}>
        {percentText(mean)} %<span className="unseen">, how it came about</span>
      </a>{" "}
      {interval && <span className="quiet">({endsText(interval)})</span>}
    </>
  );
  if (body.foundAs === undefined)
    return (
      <p className="search-now">
        {chance} that it is there {after}
      </p>
    );
  return (
    <p className="search-now" data-found>
      <strong>Found: {body.foundAs}.</strong> By the series and the looks alone it stood at {chance} {after}.
    </p>
  );
}

/** Which canal it turned out to be, of those that stand in Roots and canals. */
function Found() {
  const canals = Object.keys(useCanals());
  const field = useField("foundAs", "Found as");
  const names = typeof field.value === "string" && !canals.includes(field.value) ? [...canals, field.value] : canals;
  if (names.length === 0) return null;
  return (
    <div className="fields">
      <SelectField
        at="foundAs"
        label="Found as"
        words={Object.fromEntries(names.map((name) => [name, name]))}
        unset="not found"
      />
    </div>
  );
}

function Ladder({ entry, is }: { readonly entry: LedgerEntry | undefined; readonly is: string }) {
  const figure = useMemo(
    () => chanceLadder({ that: `${is} is there`, rungs: missedCanalRungs(entry), theme: "paper", widthPx: 600 }),
    [entry, is],
  );
  return <FigureView figure={figure} />;
}

/** Looks that nothing is published of: they count once the person says how good the look is. */
function Wanted({ told }: { readonly told: MissedCanalTold }) {
  const wanted = told.notComputed;
  if (wanted.length === 0) return null;
  return (
    <ul className="search-wanted" aria-label="Not reckoned in">
      {wanted.map(({ name, why }) => (
        <li key={name + why}>{lookSentence(why)}</li>
      ))}
    </ul>
  );
}

interface PublishedOptions {
  readonly feature: FeatureView | undefined;
  readonly told: MissedCanalTold | undefined;
}

/** What was counted in which people, which of it is taken, and where it was published. */
function Published({ feature, told }: PublishedOptions) {
  const figure = useMemo(
    () =>
      feature &&
      seriesStrip({
        what: feature.is,
        series: feature.series.map(({ region, n, N, mean, interval }) => ({ name: region, n, of: N, mean, interval })),
        ...(told ? { next: told.prior } : {}),
        ...{ theme: "paper", widthPx: 600 },
      }),
    [feature, told],
  );
  if (feature === undefined || figure === undefined) return null;
  const regions = [...new Set(feature.series.map(({ region }) => region))].filter((region) => region !== "world");
  return (
    <div className="search-counted">
      <SelectField
        at="population"
        label="Counted in"
        words={Object.fromEntries(regions.map((region) => [region, region]))}
        unset="all series"
      />
      <details>
        <summary>What was counted, and where it was published</summary>
        <FigureView figure={figure} />
        <ul className="search-sources">
          {feature.series.map(({ region, n, N, reference, verification, within }) => (
            <li key={region + reference}>
              {region}, {n} of {N}
              {within && ", also counted in a wider series"}: {reference} <SeenMark verification={verification} />
            </li>
          ))}
        </ul>
      </details>
    </div>
  );
}
