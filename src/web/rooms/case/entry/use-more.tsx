import { useState } from "react";
import type { BodyOf } from "../../../../record/parts.ts";
import { sectionWords } from "../../../../record/words/cabinet-words.ts";
import { depthFromWords } from "../../../../record/words/mishap-words.ts";
import { Dialog } from "../../../parts/dialog.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Reciprocation, VariableTaper } from "../../instruments/instrument-form.tsx";
import { CountedFileField } from "./counted-file-field.tsx";
import { restOfUse } from "./rest-of-use.ts";

type Use = BodyOf<"visit">["instruments"][number];

/** The rest of a row of a case that is only looked at. */
function ReadMore({ row }: { readonly row: Use }) {
  const lines = restOfUse(row);
  if (lines.length === 0) return null;
  return (
    <details>
      <summary>{row.file?.label ?? "more"}</summary>
      <ul className="use-rest">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}

/** The rest of a row: what the table has no room for stands in a page of its own. */
export function UseMore() {
  const field = useField("", "More");
  const [open, setOpen] = useState(false);
  const row = field.value as Use;
  if (field.readOnly) return <ReadMore row={row} />;
  return (
    <>
      <button
        type="button"
        className="button button-bare use-more"
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        {row.file?.label ?? "more"}
        <span className="unseen">: {field.fullLabel}</span>
      </button>
      {open && (
        <Dialog title={field.fullLabel} close={() => setOpen(false)} wide>
          <div className="use-form">
            <div className="fields">
              <CountedFileField />
              <SelectField at="depthFrom" label="Depth counts from" words={depthFromWords} unset="reference point" />
              <NumberField at="engagedFraction" label="Share of the time at depth" digits={2} />
              <NumberField at="torqueLimitNmm" label="Torque limit" unit="N mm" />
              <SelectField at="section" label="Section" words={sectionWords} unset="not said" />
              <NumberField at="lengthMm" label="Length, tip to handle" unit="mm" />
              <NumberField at="workingMm" label="Working part" unit="mm" placeholder="16" />
              <NumberField at="maxDiameterMm" label="Stops widening at" unit="mm" digits={2} />
            </div>
            <div className="fields">
              <Reciprocation />
            </div>
            <div>
              <VariableTaper />
            </div>
          </div>
        </Dialog>
      )}
    </>
  );
}
