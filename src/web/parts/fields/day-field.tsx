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
  const write = (day: string) => {
    if (day !== "") field.write(day, dayInWords(day), "typing");
    else if (optional) field.write(undefined, "emptied", "typing");
  };
  return (
    <Labelled field={field} label={bare ? field.fullLabel : label} bare={bare}>
      <DayInput
        id={field.id}
        value={typeof field.value === "string" ? field.value : ""}
        readOnly={field.readOnly}
        {...faultProps(field)}
        onChange={(event) => write(event.target.value)}
      />
    </Labelled>
  );
}
