import { type Ref, useState } from "react";
import type { BodyPath } from "../../record/body-path.ts";
import { withUnit } from "../figures-in-words.ts";
import { useField } from "./editing.tsx";
import { faultProps, Labelled } from "./labelled.tsx";
import { isUnset } from "./unset.ts";

interface NumberFieldOptions {
  readonly at: BodyPath;
  readonly label: string;
  readonly unit?: string;
  readonly bare?: boolean;
  /** Decimals that are always shown, so that a column lines up. */
  readonly digits?: number;
  /** May not be left empty. */
  readonly required?: boolean;
  /** Words that stand instead of a number, by what is typed: { n: "none", "-": "notDone" }. */
  readonly words?: Readonly<Record<string, string>>;
  /** Shown while it is empty, as "not done". */
  readonly placeholder?: string;
  readonly ref?: Ref<HTMLInputElement>;
}

/** A number with its unit beside it; a comma is taken as a point, anything else is said to be no number. */
export function NumberField(options: NumberFieldOptions) {
  const { at, label, unit = "", bare, digits, required = false, words = {} } = options;
  const field = useField(at, label);
  const [typed, setTyped] = useState<string>();
  const read = typed === undefined ? undefined : readNumber(typed, words, required);
  const fault = read?.fault ?? field.fault;
  const shown = typed ?? textOf(field.value, digits);
  const type = (text: string) => {
    setTyped(text);
    const { value, fault: bad } = readNumber(text, words, required);
    if (bad === undefined)
      field.write(value, value === undefined ? "emptied" : withUnit(String(value), unit), "typing");
  };
  return (
    <Labelled field={{ ...field, fault }} label={bare ? field.fullLabel : label} bare={bare}>
      <span className="field-number">
        <input
          ref={options.ref}
          id={field.id}
          className="field-line"
          inputMode="decimal"
          autoComplete="off"
          value={shown}
          placeholder={options.placeholder ?? (bare ? " " : undefined)}
          readOnly={field.readOnly}
          data-unset={field.value !== undefined && isUnset(field.value)}
          {...faultProps({ id: field.id, fault })}
          onChange={(event) => type(event.target.value)}
          onBlur={() => fault === undefined && setTyped(undefined)}
        />
        {unit !== "" && !bare && (
          <span className="field-unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </span>
    </Labelled>
  );
}

const textOf = (value: unknown, digits: number | undefined): string => {
  if (typeof value === "number") return shownNumber(value, digits).replace("-", "\u2212");
  return typeof value === "string" && value !== "notDone" ? value : "";
};

/** A value that has more decimals than are shown keeps them all. */
function shownNumber(value: number, digits: number | undefined): string {
  const fixed = value.toFixed(digits ?? 0);
  return digits !== undefined && Number(fixed) === value ? fixed : String(value);
}

/** What a text means as a number; absent for an empty one. */
export function readNumber(
  text: string,
  words: Readonly<Record<string, string>>,
  required: boolean,
): { readonly value?: number | string; readonly fault?: string } {
  const plain = text.trim().replace(",", ".").replace("\u2212", "-");
  const word = words[plain.toLowerCase()] ?? Object.values(words).find((one) => one === plain);
  if (word !== undefined) return { value: word };
  if (plain === "") return required ? { fault: "a number is needed here" } : {};
  return /^-?\d*\.?\d+\.?$/.test(plain) ? { value: Number(plain) } : { fault: `"${text}" is not a number` };
}
