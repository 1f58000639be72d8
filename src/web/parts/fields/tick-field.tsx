import type { Words } from "../../../record/words/case-words.ts";
import type { BodyPath } from "../../record/body-path.ts";
import { useField } from "./editing.tsx";

/** Yes or no, as one tick. */
export function TickField({ at, label }: { readonly at: BodyPath; readonly label: string }) {
  const field = useField(at, label);
  return (
    <label className="field-tick">
      <input
        type="checkbox"
        checked={field.value === true}
        disabled={field.readOnly}
        onChange={(event) => field.write(event.target.checked, event.target.checked ? "yes" : "no", "now")}
      />
      <span>{label}</span>
    </label>
  );
}

interface TicksFieldOptions<Value extends string> {
  readonly at: BodyPath;
  readonly label: string;
  readonly words: Words<Value>;
}

/** Any number of a few answers. */
export function TicksField<Value extends string>({ at, label, words }: TicksFieldOptions<Value>) {
  const field = useField(at, label);
  const chosen: readonly unknown[] = Array.isArray(field.value) ? field.value : [];
  const toggle = (value: string, word: string) => {
    const off = chosen.includes(value);
    field.write(off ? chosen.filter((one) => one !== value) : [...chosen, value], off ? `not ${word}` : word, "now");
  };
  return (
    <fieldset className="field" data-wide="true" disabled={field.readOnly}>
      <legend className="field-label">{label}</legend>
      <div className="field-choices">
        {Object.entries<string>(words).map(([value, word]) => (
          <label key={value} className="field-choice">
            <input type="checkbox" checked={chosen.includes(value)} onChange={() => toggle(value, word)} />
            <span>{word}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
