import { isTooNear, referenceOf } from "../../../../ledger/course-in-space.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { toldByTwoFilms } from "../../../lightbox/kernels/hidden-part.ts";
import { numberOf } from "../../../lightbox/kernels/ledger-reading.ts";
import { numberInSpace } from "../../../lightbox/two-view/course-reading.ts";
import { LedgerFigure } from "../../../lightbox/view/ledger-figure.tsx";
import { intervalInWords } from "../../../parts/figures-in-words.ts";
import { bendSideWords, liesSideWords } from "../../../words/side-words.ts";
import { sideOfTooth } from "../../../words/two-view-words.ts";
import { useTwoView } from "./two-view-work.ts";

/** The one number that matters, in words, and what it means for the next step. */
export function HiddenHeadline() {
  const { entry, measuring, course } = useTwoView();
  const hidden = numberOf(entry, "hiddenDeg");
  if (entry === undefined || hidden === undefined || course === undefined) return null;
  const by = straightestName(course.anglesDeg);
  if (isTooNear(course)) return <TooNear />;
  return (
    <>
      {measuring ? (
        <p className="headline headline-waiting">measuring</p>
      ) : (
        <p className="headline">
          <LedgerFigure entry={entry} number={hidden} unit="°" says={`Bend hidden by the ${by} film`} />
          <span>
            hidden by the {by} film
            {hidden.interval && <span className="quiet"> ({intervalInWords(hidden.interval)})</span>}
          </span>
        </p>
      )}
      <Sides entry={entry} />
    </>
  );
}

/** Films that are nearly alike give numbers, and no verdict: the numbers stand below with their intervals. */
const TooNear = () => (
  <div className="not-told" role="status">
    <h2>The tube was moved too little to tell</h2>
    <p>
      These films are nearly alike: a small error on them is a large one in depth. No side is told, and nothing below is
      a bend to plan for. Take one more film; which shift serves stands under the numbers.
    </p>
  </div>
);

/** The film nearest to straight on, as a sentence calls it. */
const straightestName = (anglesDeg: readonly number[]): string =>
  anglesDeg.some((angle) => angle === 0) ? "straight" : "straightest";

/** Where the bend turns, and where the canal lies: two things, two sentences. */
function Sides({ entry }: { readonly entry: LedgerEntry }) {
  const { tooth } = useTwoView();
  const told = toldByTwoFilms(entry);
  if (told === undefined) return null;
  const { side, liesSide } = told;
  const mark = referenceOf(entry);
  return (
    <ul className="two-view-sides">
      <li>
        {side === "undetermined"
          ? "To which side the bend turns is open."
          : `The bend turns ${sideOfTooth(bendSideWords[side] ?? "", tooth)}.`}
      </li>
      {liesSide !== undefined && (
        <li>
          {liesSide === "undetermined"
            ? `Whether the canal lies to buccal or to ${sideOfTooth("lingual", tooth)} is open.`
            : `The canal lies ${sideOfTooth(liesSideWords[liesSide] ?? "", tooth)} of ${mark ?? "the shared landmark"}.`}
        </li>
      )}
    </ul>
  );
}

/** What the numbers are for: the instrument meets the bend in space, not the one on the film. */
export function NextStep() {
  const { entry, course, tooth } = useTwoView();
  const bend = numberInSpace(entry, "pruettDeg", "curvature.pruettDeg");
  const radius = numberInSpace(entry, "pruettRadiusMm", "curvature.pruettRadiusMm");
  const straightest = (course?.anglesDeg ?? []).reduce(
    (best, angle, at, all) => (Math.abs(angle) < Math.abs(all[best] ?? 0) ? at : best),
    0,
  );
  const shown = numberOf(entry, `apparent.${straightest}`);
  const side = toldByTwoFilms(entry)?.side;
  if (entry === undefined || course === undefined || bend === undefined || isTooNear(course)) return null;
  const by = straightestName(course.anglesDeg);
  return (
    <p className="next-step">
      Choose and pre-bend instruments for{" "}
      <LedgerFigure entry={entry} number={bend} unit="°" says="Largest bend in space" />
      {radius !== undefined && (
        <>
          {" "}
          on a radius of{" "}
          <LedgerFigure entry={entry} number={radius} unit="mm" digits={1} says="Radius of the largest bend in space" />
        </>
      )}
      {shown !== undefined && (
        <>
          , not for the{" "}
          <LedgerFigure entry={entry} number={shown} unit="°" digits={0} says={`The same bend on the ${by} film`} /> on
          the {by} film
        </>
      )}
      {side === "buccal" || side === "lingual"
        ? `; the bent tip goes ${sideOfTooth(bendSideWords[side] ?? "", tooth)}`
        : ""}{" "}
      <span className="quiet">(common practice)</span>.
    </p>
  );
}
