import type { KeyboardEvent, Ref } from "react";
import type { Words } from "../../../../record/words/case-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { faultProps, Labelled } from "../../../parts/fields/labelled.tsx";
import { isUnset } from "../../../parts/fields/unset.ts";
import type { BodyPath } from "../../../record/body-path.ts";
import { answerOfKey } from "./answer-of-key.ts";
import "./key-cell.css";

interface KeyCellOptions<Value extends string> {
  readonly at: BodyPath;
  readonly label: string;
  readonly words: Words<Value>;
  /** Signs that stand for an answer beside its first letter, as `-` for none. */
  readonly signs?: Readonly<Record<string, Value>>;
  /** Answers that are digits stand in the record as numbers. */
  readonly digits?: boolean;
  /** Stands in a table, whose column or row says what it is. */
  readonly bare?: boolean;
  readonly ref?: Ref<HTMLSelectElement>;
  /** Asked first; what it gives true for is its own. */
  readonly onKey?: (event: KeyboardEvent) => boolean;
}

/** A cell that is answered with one key; up and down belong to the table. */
export function KeyCell<Value extends string>(options: KeyCellOptions<Value>) {
  const { at, label, words, signs = {} as Readonly<Record<string, Value>>, digits = false, bare = true } = options;
  const field = useField(at, label);
  const answers: Readonly<Record<string, string>> = words;
  const value = field.value === undefined ? (Object.keys(words).find(isUnset) ?? "") : String(field.value);
  const write = (answer: string) =>
    field.write(digits && /^\d$/.test(answer) ? Number(answer) : answer, answers[answer] ?? answer, "now");
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey || options.onKey?.(event) === true) return;
    const answer = signs[event.key] ?? answerOfKey(event.key, words, value);
    if (answer === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    write(answer);
  };
  return (
    <Labelled field={field} label={bare ? field.fullLabel : label} bare={bare}>
      <select
        ref={options.ref}
        id={field.id}
        className="field-select key-cell"
        data-unset={isUnset(value)}
        value={value}
        disabled={field.readOnly}
        {...faultProps(field)}
        onKeyDown={press}
        onChange={(event) => write(event.target.value)}
      >
        {Object.entries(answers).map(([answer, word]) => (
          <option key={answer} value={answer}>
            {word}
          </option>
        ))}
      </select>
    </Labelled>
  );
}
