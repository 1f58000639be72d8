import { useState } from "react";
import type { BodyPath } from "../../record/body-path.ts";
import { useField } from "./editing.tsx";
import { faultProps, Labelled } from "./labelled.tsx";

/** A time of the day in hours and minutes; stays absent when emptied. */
export function TimeField({ at, label }: { readonly at: BodyPath; readonly label: string }) {
  const field = useField(at, label);
  const [typed, setTyped] = useState<string>();
  const fault = (typed === undefined ? undefined : readTime(typed).fault) ?? field.fault;
  const type = (text: string) => {
    setTyped(text);
    const { value, fault: bad } = readTime(text);
    if (bad === undefined) field.write(value, value ?? "emptied", "typing");
  };
  return (
    <Labelled field={{ ...field, fault }} label={label}>
      <input
        id={field.id}
        className="field-line"
        inputMode="numeric"
        autoComplete="off"
        placeholder="14:02"
        value={typed ?? (typeof field.value === "string" ? field.value : "")}
        readOnly={field.readOnly}
        {...faultProps({ id: field.id, fault })}
        onChange={(event) => type(event.target.value)}
        onBlur={() => fault === undefined && setTyped(undefined)}
      />
    </Labelled>
  );
}

/** What a text means as a time of the day: `9:05`, `9.05` and `0905` are 09:05; absent for an empty one. */
export function readTime(text: string): { readonly value?: string; readonly fault?: string } {
  const plain = text.trim();
  if (plain === "") return {};
  const [, hours, minutes] = /^([01]?\d|2[0-3])[:.]?([0-5]\d)$/.exec(plain) ?? [];
  return hours === undefined ? { fault: "write it as 14:02" } : { value: `${hours.padStart(2, "0")}:${minutes}` };
}
