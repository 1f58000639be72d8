import type { Words } from "../../../record/words/case-words.ts";
import type { BodyPath } from "../../record/body-path.ts";
import { useField } from "./editing.tsx";
import { faultProps, Labelled } from "./labelled.tsx";

interface ChoiceFieldOptions<Value extends string> {
  readonly at: BodyPath;
  readonly label: string;
  readonly words: Words<Value>;
  /** Allows no answer at all, called this. */
  readonly unset?: string;
}

/** One of a few answers, all in sight. */
export function ChoiceField<Value extends string>({ at, label, words, unset }: ChoiceFieldOptions<Value>) {
  const field = useField(at, label);
  const answers: [string, string][] = [...(unset === undefined ? [] : [["", unset] as [string, string]])];
  answers.push(...Object.entries<string>(words));
  return (
    <div className="field" data-wide="true" role="radiogroup" aria-labelledby={field.id} {...faultProps(field)}>
      <span className="field-label" id={field.id}>
        {label}
      </span>
      <div className="field-choices">
        {answers.map(([value, word]) => (
          <label key={value} className="field-choice">
            <input
              type="radio"
              name={field.id}
              checked={(field.value ?? "") === value}
              disabled={field.readOnly}
              onChange={() => field.write(value === "" ? undefined : value, word, "now")}
            />
            <span>{word}</span>
          </label>
        ))}
      </div>
      {field.fault !== undefined && (
        <p className="field-fault" id={`${field.id}-fault`}>
          {field.fault}
        </p>
      )}
    </div>
  );
}

/** One of many answers, or one in a table. */
export function SelectField<Value extends string>({
  at,
  label,
  words,
  unset,
  bare,
}: ChoiceFieldOptions<Value> & { readonly bare?: boolean }) {
  const field = useField(at, label);
  return (
    <Labelled field={field} label={bare ? field.fullLabel : label} bare={bare}>
      <select
        id={field.id}
        className="field-select"
        value={typeof field.value === "string" ? field.value : ""}
        disabled={field.readOnly}
        data-unset={field.value === undefined || field.value === "notDone" || field.value === "notRecorded"}
        {...faultProps(field)}
        onChange={({ target }) =>
          field.write(target.value === "" ? undefined : target.value, target.selectedOptions[0]?.text ?? "", "now")
        }
      >
        {unset !== undefined && <option value="">{unset}</option>}
        {Object.entries<string>(words).map(([value, word]) => (
          <option key={value} value={value}>
            {word}
          </option>
        ))}
      </select>
    </Labelled>
  );
}
