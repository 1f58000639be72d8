import type { BodyPath } from "../../record/body-path.ts";
import { useField } from "./editing.tsx";
import { faultProps, Labelled } from "./labelled.tsx";
import "./slider-field.css";

interface SliderFieldOptions {
  readonly at: BodyPath;
  readonly label: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** What stands while nothing is chosen, and what is said of it. */
  readonly unset: { readonly value: number; readonly says: string };
  readonly inWords: (value: number) => string;
}

/** A number on a scale from end to end; arrow keys move it. What it comes to rest on is one change. */
export function SliderField({ at, label, least, most, step, unset, inWords }: SliderFieldOptions) {
  const field = useField(at, label);
  const value = typeof field.value === "number" ? field.value : unset.value;
  const says = field.value === undefined ? unset.says : inWords(value);
  return (
    <Labelled field={field} label={label}>
      <span className="slider-field">
        <input
          id={field.id}
          type="range"
          {...{ min: least, max: most, step, value }}
          disabled={field.readOnly}
          aria-valuetext={says}
          {...faultProps(field)}
          onChange={({ target }) => field.write(target.valueAsNumber, inWords(target.valueAsNumber), "typing")}
        />
        <output htmlFor={field.id}>{says}</output>
      </span>
    </Labelled>
  );
}
