import { useMemo } from "react";
import { Link } from "wouter";
import { tubeShiftChart } from "../../../../figures/tube-shift-chart.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { besideNumbers, numberOf, whyAbsent } from "../../../lightbox/kernels/ledger-reading.ts";
import { tubeAngleInWords } from "../../../lightbox/kernels/tube-angle.ts";
import {
  anglesAtHand,
  type Guide,
  guideOf,
  guideRead,
  isAbout,
  wantedDeg,
} from "../../../lightbox/two-view/guide-reading.ts";
import { LedgerFigure } from "../../../lightbox/view/ledger-figure.tsx";
import { Cautions } from "../../../parts/cautions.tsx";
import { FigureView } from "../../../parts/figure-view.tsx";
import { sentenceInWords } from "../../../words/value-words.ts";
import { useTwoView } from "./two-view-work.ts";

/** Which tube shift of a further film would settle what is open; nothing where the films at hand have settled it. */
export function GuideSection() {
  const { canal, ledger } = useTwoView();
  const entry = guideOf(ledger, canal);
  if (entry === undefined) return null;
  const guide = guideRead(entry);
  return (
    <section className="guide" aria-label="The next film">
      <h2>The next film</h2>
      {guide === undefined ? (
        <p className="absent">{sentenceInWords(whyAbsent(entry, "recommended") ?? "It could not be worked out")}.</p>
      ) : (
        <GuideOf entry={entry} guide={guide} />
      )}
    </section>
  );
}

function GuideOf({ entry, guide }: { readonly entry: LedgerEntry; readonly guide: Guide }) {
  const { tooth } = useTwoView();
  const atHandDeg = anglesAtHand(entry);
  const figure = useMemo(
    () =>
      tubeShiftChart({
        candidates: guide.candidates.map((one) => ({
          ...{ angleDeg: one.horizontalAngleDeg, halfWidthDeg: one.outOfFilmHalfWidthDeg, settles: one.settles },
        })),
        atHandDeg: anglesAtHand(entry),
        recommendedDeg: guide.recommended?.horizontalAngleDeg,
        overlaps: guide.overlap.filter(({ what }) => isAbout(what, tooth)),
        ...{ theme: "dark", widthPx: 400 },
      }),
    [guide, entry, tooth],
  );
  return (
    <>
      <Recommended entry={entry} guide={guide} />
      <FigureView figure={figure} />
      <p className="quiet">
        Full discs settle it, rings do not. At hand: {atHandDeg.map(tubeAngleInWords).join(", ")}. Looked for is a bend
        of {wantedDeg(entry) ?? 20}° out of the film.
      </p>
      <Published guide={guide} tooth={tooth} />
      <Cautions topic="tubeShift" cautions={besideNumbers(entry).cautions} />
    </>
  );
}

function Recommended({ entry, guide: { recommended } }: { readonly entry: LedgerEntry; readonly guide: Guide }) {
  const angle = numberOf(entry, "recommended.horizontalAngleDeg");
  if (recommended === undefined || angle === undefined)
    return <p>No single shift settles it: {whyAbsent(entry, "recommended") ?? "the points are not sure enough"}.</p>;
  const { horizontalAngleDeg, alsoDeg, why } = recommended;
  return (
    <>
      <p className="headline">
        <LedgerFigure
          entry={entry}
          number={{ value: Math.abs(angle.value) }}
          unit="°"
          digits={0}
          says="The least shift that settles it"
        />
        <span>
          {horizontalAngleDeg === 0 ? "straight on" : `from ${horizontalAngleDeg > 0 ? "mesial" : "distal"}`}
          {alsoDeg !== undefined && <span className="quiet"> or as far from {alsoDeg > 0 ? "mesial" : "distal"}</span>}
        </span>
      </p>
      <p className="quiet">{sentenceInWords(why)}</p>
    </>
  );
}

/** Published findings about this kind of tooth, as a frame for the shift. */
function Published({ guide, tooth }: { readonly guide: Guide; readonly tooth: string }) {
  const own = guide.separation.filter(({ canals }) => isAbout(canals, tooth));
  const groups = [...new Set(own.map(({ canals }) => canals))];
  return groups.map((canals) => (
    <p key={canals} className="quiet">
      Published for {canals}: they stand apart in{" "}
      {own
        .filter((one) => one.canals === canals)
        .map(({ atLeastPercent, angleDeg }) => `${atLeastPercent} % or more from ${angleDeg}° on`)
        .join(", ")}{" "}
      (<Link href="/methods/tubeShift">sources</Link>).
    </p>
  ));
}
