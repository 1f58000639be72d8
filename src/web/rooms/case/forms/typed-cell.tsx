import { useState } from "react";
import { useField } from "../../../parts/fields/editing.tsx";
import { faultProps, Labelled } from "../../../parts/fields/labelled.tsx";
import type { BodyPath } from "../../../record/body-path.ts";

/** What a written text means, or why it means nothing. */
export type ReadText<Value> = (text: string) => { readonly value?: Value; readonly fault?: string };

interface TypedCellOptions {
  readonly at: BodyPath;
  readonly label: string;
  readonly inWords: (value: unknown) => string;
  readonly read: ReadText<unknown>;
  readonly placeholder?: string;
  /** Stands in a table, whose column says what it is. */
  readonly bare?: boolean;
}

/** A cell whose value is written in a short form of its own, as `2-1-2` for levels or `3 2 3 / 3 2 3` for depths. */
export function TypedCell({ at, label, inWords, read, placeholder, bare = true }: TypedCellOptions) {
  const field = useField(at, label);
  const [typed, setTyped] = useState<string>();
  const fault = (typed === undefined ? undefined : read(typed).fault) ?? field.fault;
  const type = (text: string) => {
    setTyped(text);
    const { value, fault: bad } = read(text);
    if (bad === undefined) field.write(value, text === "" ? "emptied" : text, "typing");
  };
  return (
    <Labelled field={{ ...field, fault }} label={bare ? field.fullLabel : label} bare={bare}>
      <input
        id={field.id}
        className="field-line"
        autoComplete="off"
        value={typed ?? inWords(field.value)}
        readOnly={field.readOnly}
        placeholder={placeholder ?? " "}
        {...faultProps({ id: field.id, fault })}
        onChange={(event) => type(event.target.value)}
        onBlur={() => fault === undefined && setTyped(undefined)}
      />
    </Labelled>
  );
}
