import type { KeyboardEvent } from "react";
import type { Words } from "../../../../record/words/case-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { faultProps } from "../../../parts/fields/labelled.tsx";
import { KeyHint } from "../../../parts/key-hint.tsx";
import type { OwnDiagnosis } from "./use-own-diagnosis.ts";

interface OwnTermOptions<Value extends string> {
  readonly own: OwnDiagnosis;
  readonly at: "pulpal" | "apical";
  readonly label: string;
  readonly words: Words<Value>;
}

/** The person's own term on one axis: a digit or an arrow chooses it; the findings' entry that stood beside it is noted with it. */
export function OwnTerm<Value extends string>({ own, at, label, words }: OwnTermOptions<Value>) {
  const whole = useField("", label);
  const field = useField(at, label);
  const beside = own.told === undefined || own.entry === undefined ? {} : { suggestion: own.entry.id };
  const answers = Object.entries<string>(words);
  const choose = ([value, word]: readonly [string, string]) =>
    whole.write({ ...own.body, [at]: value, ...beside }, word, "now");
  const press = (event: KeyboardEvent<HTMLElement>) => {
    const answer = answers[Number(event.key) - 1];
    if (answer === undefined || field.readOnly || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    choose(answer);
    event.currentTarget.querySelectorAll<HTMLElement>("input")[Number(event.key) - 1]?.focus();
  };
  return (
    <div
      className="field own-term"
      role="radiogroup"
      aria-labelledby={field.id}
      onKeyDown={press}
      {...faultProps(field)}
    >
      <span className="field-label" id={field.id}>
        {label}
      </span>
      {answers.map(([value, word], index) => (
        <label key={value} className="field-choice">
          <input
            type="radio"
            name={field.id}
            checked={field.value === value}
            disabled={field.readOnly}
            onChange={() => choose([value, word])}
          />
          <span>
            {word}
            {!field.readOnly && <KeyHint keys={String(index + 1)} />}
          </span>
        </label>
      ))}
      {field.fault !== undefined && (
        <p className="field-fault" id={`${field.id}-fault`}>
          {field.fault}
        </p>
      )}
    </div>
  );
}
