import { solventWords } from "../../../record/words/visit-words.ts";
import { useField } from "../../parts/fields/editing.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { Rows } from "../../parts/fields/rows.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";

const solvents = Object.values(solventWords).filter((name) => name !== solventWords.other);

/** Limits of exposure that bind where one works. */
export const AirLimits = () => (
  <Rows
    at="exposureLimits"
    label="Your own limits of exposure"
    add="Add a limit"
    start={() => ({})}
    nameOf={(_, index) => `limit ${index + 1}`}
    columns={[
      { head: "Solvent", cell: <TextField at="solvent" label="Solvent" bare wraps offers={solvents} />, wide: true },
      { head: "Authority", cell: <TextField at="authority" label="Authority" bare wraps />, wide: true },
      { head: "Year", cell: <NumberField at="year" label="Year" bare />, figure: true },
      { head: "ppm", cell: <NumberField at="ppm" label="Limit in ppm" unit="ppm" bare />, figure: true },
      { head: "mg/m³", cell: <NumberField at="mgM3" label="Limit in mg/m³" unit="mg/m³" bare />, figure: true },
      { head: "Over", cell: <Averaging /> },
      { head: "Where it is printed", cell: <TextField at="source" label="Source" bare wraps />, wide: true },
    ]}
  />
);

const times = [
  { minutes: 480, says: "8 hours" },
  { minutes: 60, says: "1 hour" },
  { minutes: 15, says: "15 min" },
  { minutes: 0, says: "ceiling" },
] as const;

/** The time over which a limit is a mean. */
function Averaging() {
  const field = useField("averagingMin", "Averaging time");
  return (
    <div className="field" data-bare="true">
      <label className="unseen" htmlFor={field.id}>
        {field.fullLabel}
      </label>
      <select
        id={field.id}
        className="field-select"
        value={typeof field.value === "number" ? String(field.value) : ""}
        data-unset={field.value === undefined}
        aria-invalid={field.fault !== undefined}
        aria-describedby={field.fault === undefined ? undefined : `${field.id}-fault`}
        onChange={({ target }) =>
          field.write(
            target.value === "" ? undefined : Number(target.value),
            target.selectedOptions[0]?.text ?? "",
            "now",
          )
        }
      >
        <option value="">not said</option>
        {times.map(({ minutes, says }) => (
          <option key={minutes} value={minutes}>
            {says}
          </option>
        ))}
      </select>
      {field.fault !== undefined && (
        <p className="field-fault" id={`${field.id}-fault`}>
          {field.fault}
        </p>
      )}
    </div>
  );
}
