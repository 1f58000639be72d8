import type { KeyboardEvent } from "react";
import type { Words } from "../../../../record/words/case-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { Labelled } from "../../../parts/fields/labelled.tsx";
import type { BodyPath } from "../../../record/body-path.ts";
import { answerOfKey } from "./answer-of-key.ts";
import "./key-cell.css";

interface KeyCellOptions<Value extends string> {
  readonly at: BodyPath;
  readonly label: string;
  readonly words: Words<Value>;
}

/** A cell that is answered with one key; up and down belong to the table. */
export function KeyCell<Value extends string>({ at, label, words }: KeyCellOptions<Value>) {
  const field = useField(at, label);
  const value = typeof field.value === "string" ? field.value : "notDone";
  const write = (answer: string) => field.write(answer, words[answer as Value] ?? answer, "now");
  const press = (event: KeyboardEvent) => {
    const answer = answerOfKey(event.key, words, value);
    if (answer === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    write(answer);
  };
  return (
    <Labelled field={field} label={field.fullLabel} bare>
      <select
        id={field.id}
        className="field-select key-cell"
        data-answer={value}
        value={value}
        disabled={field.readOnly}
        onKeyDown={press}
        onChange={(event) => write(event.target.value)}
      >
        {Object.entries<string>(words).map(([answer, word]) => (
          <option key={answer} value={answer}>
            {word}
          </option>
        ))}
      </select>
    </Labelled>
  );
}
