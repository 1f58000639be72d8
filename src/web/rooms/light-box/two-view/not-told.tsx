import { Link } from "wouter";
import { toldByTwoFilms } from "../../../lightbox/kernels/hidden-part.ts";
import { whyAbsent } from "../../../lightbox/kernels/ledger-reading.ts";
import { levelsFreed, traceTurned } from "../../../lightbox/two-view/pairing-gestures.ts";
import { type WayOut, wayOutOf } from "../../../lightbox/two-view/way-out.ts";
import { Button } from "../../../parts/button.tsx";
import { bendSideWords, liesSideWords } from "../../../words/side-words.ts";
import { sideOfTooth } from "../../../words/two-view-words.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { useTwoView } from "./two-view-work.ts";

/** What stands in place of the drawing where the films do not give a course: why, and what to do next. */
export function NotTold() {
  const { entry, films, canal, measuring } = useTwoView();
  if (measuring) return <p className="headline headline-waiting">measuring</p>;
  if (entry === undefined) return <NotAsked />;
  const told = toldByTwoFilms(entry);
  const why = whyAbsent(entry, "hiddenDeg") ?? whyAbsent(entry, "lengthMm") ?? "it was not computed";
  const way = wayOutOf(
    entry.refused ?? [],
    films.map(({ film }) => film.body.caption || film.id),
  );
  return (
    <div className="not-told" role="status">
      <h2>{told === undefined ? `No course of ${canal} in space` : `Only the side of ${canal} is told`}</h2>
      {told !== undefined && <SideAlone side={told.side} liesSide={told.liesSide} />}
      <p>{sentenceInWords(why)}.</p>
      <NextThing way={way ?? (told === undefined ? undefined : { is: "sayAngle" })} />
    </div>
  );
}

function SideAlone({ side, liesSide }: { readonly side: string; readonly liesSide: string | undefined }) {
  const { tooth } = useTwoView();
  return (
    <p className="headline-side">
      {side === "undetermined"
        ? "To which side the bend turns is open"
        : `The bend turns ${sideOfTooth(bendSideWords[side] ?? "", tooth)}`}
      {liesSide !== undefined &&
        liesSide !== "undetermined" &&
        `; the canal lies ${sideOfTooth(liesSideWords[liesSide] ?? "", tooth)} of the shared landmark`}
      .
    </p>
  );
}

/** Nothing was asked of the ledger: there are not two films that belong together. */
function NotAsked() {
  const { films, canal } = useTwoView();
  const unknown = films.filter(({ film }) => film.body.horizontalAngleDeg === undefined);
  return (
    <div className="not-told" role="status">
      <h2>No course of {canal} in space yet</h2>
      <p>
        {films.length < 2
          ? `${canal} is traced on one film, and one film shows it flat.`
          : unknown.length > 0
            ? "On one of the films it is not said where the tube stood. Say it below."
            : "The films do not belong together: they show the tooth under one angle, or more than 60 days apart, or two different stretches of canal. Choose others below, or take one with the tube shifted."}
      </p>
    </div>
  );
}

/** One thing that can be done about it at once. */
function NextThing({ way }: { readonly way: WayOut | undefined }) {
  const { films, caseId, presentedOn, record, hand, setLandmark } = useTwoView();
  if (way === undefined) return null;
  const one = films[way.film ?? films.length - 1];
  switch (way.is) {
    case "turnTrace":
      return one === undefined ? null : (
        <Button weight="strong" onClick={() => record(traceTurned(one.trace, one.film, presentedOn))}>
          Turn the trace on film {films.indexOf(one) + 1}
        </Button>
      );
    case "freeLevels":
      return (
        <Button weight="strong" onClick={() => record(levelsFreed(hand, []))}>
          Leave all levels to the computing
        </Button>
      );
    case "markLandmarks":
      return (
        <Button weight="strong" hint="L" onClick={() => setLandmark({ places: {} })}>
          Mark a landmark off that line
        </Button>
      );
    case "markScale":
    case "traceSameStretch":
      return one === undefined ? null : (
        <Link href={`/case/${caseId}/light-box/${one.film.id}`} className="button button-strong">
          {way.is === "markScale" ? "Mark a known length on that film" : "Trace the same stretch on that film"}
        </Link>
      );
    default:
      return <p className="quiet">{waysInWords[way.is]}</p>;
  }
}

const waysInWords = {
  shiftTube: "What to do: take one more film with the tube shifted; which shift serves stands below.",
  sayAngle: "What to do: say below where the tube stood for each film; then the bend is measured in degrees.",
  sayRight: "What to do: say below what lies to the right on that film.",
  sayReceptor: "What to do: say below, once for all films, how the receptor was held.",
  chooseFilms: "What to do: choose the films of this canal at the foot of the room.",
} as const;
