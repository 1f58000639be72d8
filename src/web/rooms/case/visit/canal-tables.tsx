import { canalStateWords, patencyWords } from "../../../../record/words/visit-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useCanals } from "../canals.ts";
import { rowName } from "../forms/row-name.ts";
import { canalRowAtStart } from "../new-bodies.ts";

const referencePoints = [
  "mesiobuccal cusp",
  "distobuccal cusp",
  "mesiolingual cusp",
  "distolingual cusp",
  "palatal cusp",
  "buccal cusp",
  "lingual cusp",
  "incisal edge",
];

/** The canals of a visit: how far each came, its length and shape; and how it was filled. */
export function CanalTables() {
  const canals = useCanals();
  const names = Object.keys(canals);
  const rows = useField("canals", "Canals").value;
  const taken = Array.isArray(rows) ? rows.map((row) => rowName(row, "canal", "")) : [];
  const next = names.find((name) => !taken.includes(name));
  const nameOf = (row: unknown, index: number) => rowName(row, "canal", `canal ${index + 1}`);
  const start = () => canalRowAtStart(next ?? `C${taken.length + 1}`, next === undefined ? undefined : canals[next]);
  return (
    <>
      <section className="form-part">
        <h2>Canals</h2>
        <Rows
          at="canals"
          label="Canals: lengths and shape"
          add={next === undefined ? "Add a canal" : `Add ${next}`}
          start={start}
          nameOf={nameOf}
          columns={[
            { head: "Canal", narrow: "name", cell: <TextField at="canal" label="Canal" offers={names} bare /> },
            { head: "Left", cell: <SelectField at="state" label="State" words={canalStateWords} bare /> },
            { head: "Patency", cell: <SelectField at="patency" label="Patency" words={patencyWords} bare /> },
            {
              head: "Reference point",
              cell: <TextField at="reference" label="Reference point" offers={referencePoints} bare />,
              wide: true,
            },
            {
              head: "Locator",
              unit: "mm",
              cell: <NumberField at="locatorMm" label="Locator" unit="mm" digits={1} bare />,
              figure: true,
            },
            {
              head: "Length",
              unit: "mm",
              cell: <NumberField at="workingLengthMm" label="Working length" unit="mm" digits={1} bare />,
              figure: true,
            },
            { head: "Size", cell: <NumberField at="apicalSize" label="Apical size" bare />, figure: true },
            { head: "Taper", cell: <NumberField at="taper" label="Taper" digits={2} bare />, figure: true },
          ]}
        />
      </section>
      {taken.length > 0 && (
        <section className="form-part">
          <h2>Filling</h2>
          <Rows
            at="canals"
            label="Canals: filling"
            start={start}
            nameOf={nameOf}
            fixed
            columns={[
              { head: "Canal", narrow: "name", cell: <CanalName /> },
              {
                head: "Filled with",
                cell: <TextField at="filledWith" label="Filled with" optional wraps bare />,
                wide: true,
              },
              {
                head: "Technique",
                cell: <TextField at="technique" label="Technique" optional wraps bare />,
              },
              {
                head: "Short of the apex",
                unit: "mm",
                cell: (
                  <NumberField at="fillingEndMm" label="End of filling, short of the apex" unit="mm" digits={1} bare />
                ),
                figure: true,
              },
              { head: "If blocked, by", cell: <TextField at="blockedBy" label="Blocked by" optional wraps bare /> },
            ]}
          />
        </section>
      )}
    </>
  );
}

function CanalName() {
  const { value } = useField("canal", "Canal");
  return <strong className="canal-name">{typeof value === "string" ? value : ""}</strong>;
}
