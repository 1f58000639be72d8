import { notToldOf, sizedInstrument } from "../../../../record/instrument-as-told.ts";
import { sectionWords } from "../../../../record/words/cabinet-words.ts";
import { alloyWords, movementWords } from "../../../../record/words/visit-words.ts";
import { Button } from "../../../parts/button.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Optional } from "../../../parts/fields/rows.tsx";
import { useCaseNow } from "../case-now.ts";
import { BrokenFile } from "./broken-file.tsx";
import { useMishap } from "./use-mishap.ts";
import { type UseToPick, usesToPick, withUse } from "./uses-to-pick.ts";

const inSight = 6;

/** Which instrument it was: one of those used in this canal by one press, or by hand. */
export function InstrumentOfPiece() {
  const { mishap, readOnly } = useMishap("Instrument");
  return (
    <>
      {!readOnly && mishap.what === "separatedInstrument" && <UsesOffered />}
      {!readOnly && mishap.separated?.file !== undefined && <BrokenFile />}
      <div className="fields">
        <Optional at="instrument" label="instrument" add="An instrument was part of it" start={() => ({})}>
          <NumberField at="size" label="Size (ISO 3630-1)" placeholder="not told" />
          <NumberField at="taper" label="Taper" unit="mm per mm" placeholder="not told" />
          <SelectField at="alloy" label="Alloy" words={alloyWords} unset="not told" />
          <SelectField at="movement" label="Movement" words={movementWords} unset="not told" />
          <SelectField at="section" label="Section" words={sectionWords} unset="not recorded" />
          <NumberField at="workingMm" label="Working part" unit="mm" />
          <NumberField at="lengthMm" label="Tip to handle" unit="mm" />
          <NumberField at="rpm" label="Speed" unit="turns a minute" />
        </Optional>
      </div>
      <NotTold />
    </>
  );
}

/** What is not told of the instrument yet; without size and taper nothing is computed of it. */
function NotTold() {
  const { mishap } = useMishap("Instrument");
  if (mishap.instrument === undefined) return null;
  const missing = notToldOf(mishap.instrument);
  const waits = missing.some((field) => field === "size" || field === "taper");
  return (
    <p className="quiet" role="status">
      {missing.length === 0
        ? "● Size, taper, alloy and movement are told."
        : `◇ Not told yet: ${missing.join(", ")}.${waits ? " Without size and taper nothing is computed of it." : ""}`}
    </p>
  );
}

/** The uses of the record, to be taken by one press; folded once size and taper are told. */
function UsesOffered() {
  const { mishap, write } = useMishap("Instrument");
  const { parts } = useCaseNow();
  const uses = usesToPick(mishap, parts);
  const offered = (some: readonly UseToPick[]) => (
    <ul className="mishap-uses">
      {some.map((use) => (
        <li key={use.id}>
          <Button onClick={() => write(withUse(mishap, use), use.says)}>It was {use.says}</Button>
        </li>
      ))}
    </ul>
  );
  if (uses.length === 0)
    return <p className="quiet">No visit up to this day names an instrument; say by hand which one it was.</p>;
  const isOpen = sizedInstrument(mishap.instrument) === undefined;
  if (isOpen && uses.length <= inSight) return offered(uses);
  return (
    <>
      {isOpen && offered(uses.slice(0, inSight))}
      <details className="mishap-more">
        <summary>{isOpen ? "Earlier uses" : "Take another of the uses in the record"}</summary>
        {offered(isOpen ? uses.slice(inSight) : uses)}
      </details>
    </>
  );
}
