import { courseRead, isTooNear } from "../../../ledger/course-in-space.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { intervalInWords } from "../../parts/figures-in-words.ts";
import { bendSideWords, liesSideWords } from "../../words/side-words.ts";
import { sideOfTooth } from "../../words/two-view-words.ts";
import { sentenceInWords } from "../../words/value-words.ts";
import { toldByTwoFilms, twoViewOf } from "../kernels/hidden-part.ts";
import { entryOf, numberOf, whyAbsent } from "../kernels/ledger-reading.ts";
import type { Mark } from "../kernels/mark-shape.ts";
import { LedgerFigure } from "./ledger-figure.tsx";

interface HiddenPartOptions {
  readonly ledger: readonly LedgerEntry[];
  readonly mark: Mark;
  readonly tooth: string;
}

/** What the straight film hides of the chosen canal, where two films tell it; nothing where there is only one. */
export function HiddenPart({ ledger, mark, tooth }: HiddenPartOptions) {
  const canal = mark.body.shape === "trace" ? mark.body.canal : undefined;
  const entry = canal === undefined ? undefined : twoViewOf(ledger, canal);
  if (entry === undefined) return null;
  const told = toldByTwoFilms(entry);
  if (told === undefined)
    return (
      <p className="quiet">No third dimension. {sentenceInWords(whyAbsent(entry, "hiddenDeg") ?? "It is not told")}.</p>
    );
  const { side, liesSide } = told;
  const course = courseRead(entry);
  if (course !== undefined && isTooNear(course))
    return <p className="quiet">No third dimension. The tube was moved too little between its films to tell.</p>;
  return (
    <div className="hidden-part">
      <Hidden entry={entry} by={told.anglesDeg.some((angle) => angle === 0) ? "straight" : "straighter"} />
      <p className="quiet">
        {side === "undetermined"
          ? "Its side is not told by these films"
          : `The bend turns ${sideOfTooth(bendSideWords[side] ?? "", tooth)}`}
        {liesSide !== undefined &&
          liesSide !== "undetermined" &&
          `; the canal lies ${sideOfTooth(liesSideWords[liesSide] ?? "", tooth)} of the mark that both films share`}
        .
      </p>
      <LengthInSpace entry={entry} onFilm={isBehind(mark, entry) ? entryOf(ledger, "curvature", mark.id) : undefined} />
    </div>
  );
}

/** Only a course that the sum was made of can be set beside it: another may begin elsewhere. */
const isBehind = ({ id }: Mark, { inputPaths }: LedgerEntry): boolean =>
  inputPaths.some(({ record }) => record.startsWith(`${id}/`));

function Hidden({ entry, by }: { readonly entry: LedgerEntry; readonly by: "straight" | "straighter" }) {
  const hidden = numberOf(entry, "hiddenDeg");
  if (hidden === undefined) return null;
  return (
    <p>
      Hidden by the {by} film:{" "}
      <LedgerFigure entry={entry} number={hidden} unit="°" says={`Bend hidden by the ${by} film`} />
      {hidden.interval && <span className="quiet"> ({intervalInWords(hidden.interval)})</span>}
    </p>
  );
}

interface LengthInSpaceOptions {
  readonly entry: LedgerEntry;
  readonly onFilm: LedgerEntry | undefined;
}

/** The true length beside the one that this film shows. */
function LengthInSpace({ entry, onFilm }: LengthInSpaceOptions) {
  const length = numberOf(entry, "lengthMm");
  const shown = numberOf(onFilm, "lengthMm");
  if (length === undefined) return null;
  return (
    <p className="quiet">
      In space <LedgerFigure entry={entry} number={length} unit="mm" says="Length in space" />
      {length.interval && ` (${intervalInWords(length.interval)})`}
      {shown !== undefined && onFilm !== undefined && (
        <>
          , on this film <LedgerFigure entry={onFilm} number={shown} unit="mm" says="Length on this film" />
        </>
      )}
    </p>
  );
}
