import { existingWords } from "../../../../record/words/finding-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useCanals } from "../canals.ts";
import { KeyCell } from "../forms/key-cell.tsx";
import { rowName } from "../forms/row-name.ts";

/** What each canal had been through before this examination; an empty list is an answer of its own: not noted. */
export function ExistingPart() {
  const canals = Object.keys(useCanals());
  const field = useField("existing", "Canals as they were met");
  const noted = (Array.isArray(field.value) ? field.value : []).map((row) => rowName(row, "canal", ""));
  const next = canals.find((canal) => !noted.includes(canal)) ?? "";
  return (
    <section className="form-part">
      <h2>
        Treatment before this <span className="answers-open">{noted.length === 0 ? "not noted here" : ""}</span>
      </h2>
      <Rows
        at="existing"
        label="Canals as they were met"
        add={next === "" ? "Add a canal" : `Add ${next}`}
        start={() => ({ canal: next, is: "untouched" })}
        nameOf={(row, index) => rowName(row, "canal", `canal ${index + 1}`)}
        columns={[
          { head: "Canal", narrow: "name", cell: <TextField at="canal" label="Canal" bare /> },
          { head: "Met as", cell: <KeyCell at="is" label="Met as" words={existingWords} />, wide: true },
        ]}
      />
    </section>
  );
}
