import { useId, useState } from "react";
import { faultProps, Labelled } from "../../../../parts/fields/labelled.tsx";
import { readNumber } from "../../../../parts/fields/number-field.tsx";

interface FigureFieldOptions {
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  readonly change: (value: number | undefined) => void;
  readonly fault?: string | undefined;
  readonly readOnly?: boolean | undefined;
  readonly placeholder?: string;
  /** Allows a number below or above nothing; what can't be read is said. */
  readonly required?: boolean;
}

/** A number that stands in nobody's record by itself: whoever mounts it keeps it. */
export function FigureField(options: FigureFieldOptions) {
  const { label, unit, value, change, readOnly = false, placeholder, required = false } = options;
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const fault = (typed === undefined ? undefined : readNumber(typed, {}, required).fault) ?? options.fault;
  const type = (text: string) => {
    setTyped(text);
    const read = readNumber(text, {}, required);
    if (read.fault === undefined && typeof read.value !== "string") change(read.value);
  };
  return (
    <Labelled field={{ id, fault }} label={label}>
      <span className="field-number">
        <input
          className="field-line"
          inputMode="decimal"
          autoComplete="off"
          {...{ id, placeholder, readOnly }}
          value={typed ?? (value === undefined ? "" : String(value))}
          {...faultProps({ id, fault })}
          onChange={({ target }) => type(target.value)}
          onBlur={() =>
            typed !== undefined && readNumber(typed, {}, required).fault === undefined && setTyped(undefined)
          }
        />
        <span className="field-unit" aria-hidden="true">
          {unit}
        </span>
      </span>
    </Labelled>
  );
}
