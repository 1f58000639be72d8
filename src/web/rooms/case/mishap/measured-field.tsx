import { useState } from "react";
import { useField } from "../../../parts/fields/editing.tsx";
import { faultProps, Labelled } from "../../../parts/fields/labelled.tsx";
import { NumberField, readNumber } from "../../../parts/fields/number-field.tsx";
import { withUnit } from "../../../parts/figures-in-words.ts";
import { type BodyPath, valueAt, withValueAt } from "../../../record/body-path.ts";

interface MeasuredFieldOptions {
  /** Of the value with its error in the whole body, as `separated.lengthMm`. */
  readonly at: BodyPath;
  readonly label: string;
  /** The error that stands, in sight, until another is written: of a rule, a gauge, a scale. */
  readonly sigma: number;
  /** A plain field of the body that holds the same value without its error. */
  readonly also?: BodyPath;
}

/** A length in mm with its standard deviation; emptied, both are gone. */
export function MeasuredField({ at, label, sigma, also }: MeasuredFieldOptions) {
  const whole = useField("", label);
  const field = useField(`${at}.value`, label);
  // What the ledger refuses, it refuses of the value with its error.
  const refused = useField(at, label).fault;
  const [typed, setTyped] = useState<string>();
  const read = typed === undefined ? undefined : readNumber(typed, {}, false);
  const fault = read?.fault ?? field.fault ?? refused;
  const write = (value: unknown) => {
    const error = valueAt(whole.value, `${at}.sigma`) ?? sigma;
    const measured = withValueAt(whole.value, at, value === undefined ? undefined : { value, sigma: error });
    const body = also === undefined ? measured : withValueAt(measured, also, value);
    whole.write(
      body,
      value === undefined ? "emptied" : withUnit(`${String(value)} ± ${String(error)}`, "mm"),
      "typing",
    );
  };
  const type = (text: string) => {
    setTyped(text);
    const { value, fault: bad } = readNumber(text, {}, false);
    if (bad === undefined) write(value);
  };
  return (
    <div className="mishap-measured">
      <Labelled field={{ ...field, fault }} label={label}>
        <span className="field-number">
          <input
            id={field.id}
            className="field-line"
            inputMode="decimal"
            autoComplete="off"
            value={typed ?? (typeof field.value === "number" ? String(field.value) : "")}
            readOnly={field.readOnly}
            {...faultProps({ id: field.id, fault })}
            onChange={(event) => type(event.target.value)}
            onBlur={() => read?.fault === undefined && setTyped(undefined)}
          />
          <span className="field-unit" aria-hidden="true">
            mm
          </span>
        </span>
      </Labelled>
      {field.value !== undefined && <NumberField at={`${at}.sigma`} label={`± one SD`} unit="mm" required />}
    </div>
  );
}
