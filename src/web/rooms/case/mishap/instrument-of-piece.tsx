import { sectionWords } from "../../../../record/words/cabinet-words.ts";
import { alloyWords, movementWords } from "../../../../record/words/visit-words.ts";
import { Button } from "../../../parts/button.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Optional } from "../../../parts/fields/rows.tsx";
import { useCaseNow } from "../case-now.ts";
import { useMishap } from "./use-mishap.ts";
import { usesToPick, withUse } from "./uses-to-pick.ts";

const inSight = 6;

/** Which instrument it was: one of those used in this canal by one press, or by hand. */
export function InstrumentOfPiece() {
  const { mishap, readOnly, write } = useMishap("Instrument");
  const { parts } = useCaseNow();
  const uses = usesToPick(mishap, parts);
  const pick = (use: (typeof uses)[number]) => write(withUse(mishap, use), use.says);
  const button = (use: (typeof uses)[number]) => (
    <li key={use.id}>
      <Button onClick={() => pick(use)}>It was {use.says}</Button>
    </li>
  );
  return (
    <>
      {!readOnly && mishap.what === "separatedInstrument" && (
        <>
          {uses.length === 0 && (
            <p className="quiet">No visit up to this day names an instrument; say by hand which one it was.</p>
          )}
          <ul className="mishap-uses">{uses.slice(0, inSight).map(button)}</ul>
          {uses.length > inSight && (
            <details className="mishap-more">
              <summary>Earlier uses ({uses.length - inSight})</summary>
              <ul className="mishap-uses">{uses.slice(inSight).map(button)}</ul>
            </details>
          )}
        </>
      )}
      <div className="fields">
        <Optional
          at="instrument"
          label="instrument"
          add="An instrument was part of it"
          start={() => ({ size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" })}
        >
          <NumberField at="size" label="Size (ISO 3630-1)" required />
          <NumberField at="taper" label="Taper" unit="mm per mm" required />
          <SelectField at="alloy" label="Alloy" words={alloyWords} />
          <SelectField at="movement" label="Movement" words={movementWords} />
          <SelectField at="section" label="Section" words={sectionWords} unset="not recorded" />
          <NumberField at="workingMm" label="Working part" unit="mm" />
          <NumberField at="lengthMm" label="Tip to handle" unit="mm" />
          <NumberField at="rpm" label="Speed" unit="turns a minute" />
        </Optional>
      </div>
    </>
  );
}
