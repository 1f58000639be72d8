import { wayWords, wordFor } from "../../../../record/words/case-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { rowName } from "./row-name.ts";

/** What could be done, what was chosen and why. */
export const PlanForm = () => (
  <>
    <div className="fields">
      <SelectField at="chosen" label="Chosen" words={wayWords} />
      <NumberField at="visitsExpected" label="Visits expected" />
      <DayField at="madeOn" label="Made on" />
      <TextField at="because" label="Because" prose />
    </div>
    <section className="form-part">
      <h2>The ways that were weighed</h2>
      <Rows
        at="options"
        label="Ways that were weighed"
        add="Add a way"
        start={() => ({ way: "watch", forIt: "", againstIt: "" })}
        nameOf={(row, index) => wordFor(wayWords, rowName(row, "way", `way ${index + 1}`))}
        columns={[
          { head: "Way", cell: <SelectField at="way" label="Way" words={wayWords} bare /> },
          { head: "For it", cell: <TextField at="forIt" label="For it" wraps bare />, wide: true },
          { head: "Against it", cell: <TextField at="againstIt" label="Against it" wraps bare />, wide: true },
        ]}
      />
    </section>
    <section className="form-part">
      <h2>Risks named to the patient</h2>
      <Rows
        at="risksNamed"
        label="Risks named"
        add="Add a risk"
        start={() => ""}
        nameOf={(row, index) => (typeof row === "string" && row !== "" ? row : `risk ${index + 1}`)}
        columns={[{ head: "Risk", cell: <TextField at="" label="Risk" wraps bare /> }]}
      />
    </section>
  </>
);
