import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { Button } from "../../parts/button.tsx";
import { Cautions } from "../../parts/cautions.tsx";
import { intervalInWords, numberInWords, withUnit } from "../../parts/figures-in-words.ts";
import type { Film } from "../kernels/film-name.ts";
import { besideNumbers, entryOf, numberOf, whyAbsent } from "../kernels/ledger-reading.ts";
import { LedgerFigure } from "./ledger-figure.tsx";
import type { LightBox } from "./light-box.ts";

/** Where the film's scale comes from, what it is, and what speaks against it. */
export function ScaleSection({ box, ledger }: { readonly box: LightBox; readonly ledger: readonly LedgerEntry[] }) {
  const entry = entryOf(ledger, "calibrate", box.film.id);
  const scale = numberOf(entry, "mmPerPx.column");
  const known = () => {
    box.take("known");
    box.pane.element.current?.focus({ preventScroll: true });
  };
  return (
    <section className="scale" aria-label="Scale">
      <h2>Scale</h2>
      {entry !== undefined && scale !== undefined ? (
        <p>
          <LedgerFigure entry={entry} number={scale} unit="mm a pixel" says="Scale of this film" />
          {scale.interval && <span className="quiet"> {intervalInWords(scale.interval)}</span>}
          <span className="quiet"> {originOf(entry)}</span>
        </p>
      ) : (
        <p className="absent">No lengths on this film: {whyAbsent(entry, "mmPerPx") ?? "it is being measured"}.</p>
      )}
      <FileSays film={box.film} />
      <Cautions topic="calibrate" cautions={besideNumbers(entry).cautions} />
      <Button hint="K" onClick={known}>
        Mark a known length
      </Button>
    </section>
  );
}

const origins: Readonly<Record<string, string>> = {
  knownLength: "from the known lengths marked here",
  pixelSpacingFiducial: "from the file, calibrated by an object on the film",
  pixelSpacingGeometry: "from the file, calibrated by its magnification",
  detectorSpacingOverMagnification: "from the file: detector spacing over magnification",
  detectorSpacing: "from the file: spacing at the detector, not at the tooth",
  pixelSpacingOfUnknownOrigin: "from the file, which does not say how",
};

function originOf({ output }: LedgerEntry): string {
  const used: unknown = typeof output === "object" && output !== null ? Reflect.get(output, "used") : undefined;
  return typeof used === "string" ? (origins[used] ?? used) : "";
}

/** What the file says of itself, as it says it. */
function FileSays({ film: { body } }: { film: Film }) {
  const { detectorSpacingMm, pixelSpacingMm, calibrationType, magnification } = body.technical;
  const lines = [
    detectorSpacingMm && `detector spacing ${spacingInWords(detectorSpacingMm)}`,
    pixelSpacingMm &&
      `pixel spacing ${spacingInWords(pixelSpacingMm)}${calibrationType ? ` (${calibrationType})` : ""}`,
    magnification && `magnification ${numberInWords(magnification, 2)}`,
  ].filter((line) => typeof line === "string");
  return <p className="quiet">The file says: {lines.length === 0 ? "nothing of its scale" : lines.join(", ")}.</p>;
}

const spacingInWords = ([rows, columns]: readonly [number, number]): string =>
  rows === columns
    ? withUnit(numberInWords(rows, 4), "mm")
    : `${withUnit(numberInWords(rows, 4), "mm")} between rows, ${withUnit(numberInWords(columns, 4), "mm")} between columns`;
