import { useState } from "react";
import type { BodyPath } from "../../record/body-path.ts";
import { dayInWords } from "../days-in-words.ts";
import { DayInput } from "./day-input.tsx";
import { useField } from "./editing.tsx";
import { faultProps, Labelled } from "./labelled.tsx";

interface DayFieldOptions {
  readonly at: BodyPath;
  readonly label: string;
  readonly optional?: boolean;
  readonly bare?: boolean;
}

/** A calendar day. */
export function DayField({ at, label, optional = false, bare }: DayFieldOptions) {
  const field = useField(at, label);
  const [unfinished, setUnfinished] = useState(false);
  const write = ({ value, validity }: HTMLInputElement) => {
    // On the way from 29 November to 10 February stands 29 February: no day yet, and nothing to go back from.
    setUnfinished(validity.badInput);
    if (value !== "") field.write(value, dayInWords(value), "typing");
    else if (optional && !validity.badInput) field.write(undefined, "emptied", "typing");
  };
  return (
    <Labelled field={field} label={bare ? field.fullLabel : label} bare={bare}>
      <DayInput
        id={field.id}
        value={typeof field.value === "string" && !unfinished ? field.value : ""}
        readOnly={field.readOnly}
        {...faultProps(field)}
        onChange={(event) => write(event.target)}
        onBlur={() => setUnfinished(false)}
      />
    </Labelled>
  );
}
