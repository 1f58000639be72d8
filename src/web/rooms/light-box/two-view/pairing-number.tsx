import { useId, useState } from "react";
import { faultProps, Labelled } from "../../../parts/fields/labelled.tsx";
import { readNumber } from "../../../parts/fields/number-field.tsx";

interface PairingNumberOptions {
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  readonly range: { readonly low: number; readonly high: number };
  readonly write: (value: number | undefined) => void;
}

/** A number that belongs to the films together; recorded when the person leaves the field or presses Enter. */
export function PairingNumber({ label, unit, value, range, write }: PairingNumberOptions) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const read = typed === undefined ? { value } : readNumber(typed, {}, false);
  const outside = typeof read.value === "number" && (read.value < range.low || read.value > range.high);
  const fault = outside ? `between ${range.low} and ${range.high} ${unit}` : "fault" in read ? read.fault : undefined;
  const finish = () => {
    if (typed === undefined || fault !== undefined || typeof read.value === "string") return;
    setTyped(undefined);
    if (read.value !== value) write(read.value);
  };
  return (
    <Labelled field={{ id, fault }} label={label}>
      <span className="field-number">
        <input
          id={id}
          className="field-line"
          inputMode="decimal"
          autoComplete="off"
          value={typed ?? (value === undefined ? "" : String(value))}
          placeholder="not known"
          {...faultProps({ id, fault })}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={finish}
          onKeyDown={(event) => event.key === "Enter" && finish()}
        />
        <span className="field-unit" aria-hidden="true">
          {unit}
        </span>
      </span>
    </Labelled>
  );
}
