import { flagWords } from "../../../../record/words/case-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TickField } from "../../../parts/fields/tick-field.tsx";

/** The medical history: flags first, because each changes something later. */
export const HistoryForm = () => (
  <>
    <div className="fields">
      <DayField at="takenOn" label="Taken on" />
      <NumberField at="physicalStatusClass" label="Physical status (ASA, 1 to 5)" />
      <NumberField at="bodyMassKg" label="Body mass" unit="kg" />
      <TickField at="nothingToNote" label="Nothing to note" />
    </div>
    <section className="form-part">
      <h2>What has to be thought of</h2>
      <Rows
        at="flags"
        label="Flags"
        add="Add a flag"
        start={() => ({ flag: "other" })}
        nameOf={(row) => flagWords[flagOf(row)] ?? "flag"}
        columns={[
          { head: "Flag", cell: <SelectField at="flag" label="Flag" words={flagWords} bare />, wide: true },
          { head: "Detail", cell: <TextField at="detail" label="Detail" optional wraps bare /> },
        ]}
      />
    </section>
    <section className="form-part">
      <h2>Medicines</h2>
      <Medicines />
    </section>
    <TextField at="note" label="Note" prose />
  </>
);

const flagOf = (row: unknown): keyof typeof flagWords =>
  typeof row === "object" && row !== null && "flag" in row && String(row.flag) in flagWords
    ? (String(row.flag) as keyof typeof flagWords)
    : "other";

function Medicines() {
  const field = useField("medicines", "Medicines");
  const count = Array.isArray(field.value) ? field.value.length : 0;
  return (
    <Rows
      at="medicines"
      label="Medicines"
      add={count === 0 ? "Add a medicine by its international name" : "Add a medicine"}
      start={() => ""}
      nameOf={(row, index) => (typeof row === "string" && row !== "" ? row : `medicine ${index + 1}`)}
      columns={[{ head: "International name", cell: <TextField at="" label="Name" wraps bare /> }]}
    />
  );
}
