import { holdPointWords, seenByWords } from "../../../../record/words/visit-words.ts";
import { Button } from "../../../parts/button.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { rowName } from "../forms/row-name.ts";
import { useBenchWays } from "./bench/opened.ts";
import { useBench } from "./bench/use-bench.ts";

/** Hold points and lot numbers. */
export const Closing = () => (
  <>
    <section className="form-part">
      <h2>Hold points</h2>
      <Rows
        at="holdPoints"
        label="Hold points"
        start={() => ({})}
        nameOf={(row, index) => rowName(row, "at", `hold point ${index + 1}`)}
        columns={[
          { head: "Looked at", cell: <SelectField at="at" label="Looked at" words={holdPointWords} bare /> },
          { head: "Seen", cell: <SelectField at="seenBy" label="Seen by" words={seenByWords} bare /> },
          { head: "At", unit: "min", cell: <NumberField at="atMin" label="At minute" unit="min" bare />, figure: true },
          { head: "Said", cell: <TextField at="says" label="Said" wraps bare />, wide: true },
        ]}
      />
      <NoteHoldPoint />
    </section>
    <section className="form-part" id="visit-lots">
      <h2>Lots</h2>
      <Rows
        at="lots"
        label="Lots"
        add="Add a lot"
        start={() => ({ material: "", lot: "" })}
        nameOf={(row, index) => rowName(row, "material", `lot ${index + 1}`)}
        columns={[
          { head: "Material", cell: <TextField at="material" label="Material" wraps bare />, wide: true },
          { head: "Lot", cell: <TextField at="lot" label="Lot" bare /> },
          { head: "Expires", cell: <DayField at="expires" label="Expires" optional bare /> },
        ]}
      />
    </section>
  </>
);

function NoteHoldPoint() {
  const { readOnly } = useBench("Hold point");
  const { open } = useBenchWays();
  return readOnly ? null : (
    <Button hint="p" onClick={() => open("holdPoint")}>
      Note a hold point
    </Button>
  );
}
