import { useId } from "react";
import { DayInput } from "../../../../parts/fields/day-input.tsx";
import { faultProps, Labelled } from "../../../../parts/fields/labelled.tsx";
import { stepped } from "./read-typed.ts";
import { type Entry, faultShown } from "./use-entry.ts";

interface EntryFieldOptions {
  readonly at: string;
  readonly label: string;
  readonly entry: Entry;
}

interface AmountFieldOptions extends EntryFieldOptions {
  readonly unit?: string;
  /** What one press of the large signs adds or takes. */
  readonly step?: number;
  /** Has the focus as soon as it is known what is entered. */
  readonly first?: boolean;
  /** Where a value that stands there came from, as "the clinic's usual". */
  readonly from?: string | undefined;
}

/** An amount: typed, or by large signs beside it, for a pointer; arrows up and down do the same, and Tab goes to the next. Empty until a person fills it. */
export function AmountField({ at, label, entry, unit = "", step, first = false, from }: AmountFieldOptions) {
  const id = useId();
  const fault = faultShown(entry, at);
  const text = entry.typed[at] ?? "";
  const by = (sign: 1 | -1) => step !== undefined && entry.type(at, stepped(text, sign * step));
  return (
    <Labelled field={{ id, fault }} label={label}>
      <span className="amount">
        {step !== undefined && (
          <button
            type="button"
            tabIndex={-1}
            className="amount-step"
            aria-label={`${label}: ${step} less`}
            onClick={() => by(-1)}
          >
            −
          </button>
        )}
        <input
          id={id}
          className="field-line"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          data-entry-first={first || undefined}
          {...faultProps({ id, fault })}
          onChange={({ target }) => entry.type(at, target.value)}
          onKeyDown={(event) => {
            if (step === undefined || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
            event.preventDefault();
            by(event.key === "ArrowUp" ? 1 : -1);
          }}
        />
        {unit !== "" && (
          <span className="field-unit" aria-hidden="true">
            {unit}
          </span>
        )}
        {step !== undefined && (
          <button
            type="button"
            tabIndex={-1}
            className="amount-step"
            aria-label={`${label}: ${step} more`}
            onClick={() => by(1)}
          >
            +
          </button>
        )}
      </span>
      {from !== undefined && text !== "" && <span className="quiet amount-from">{from}</span>}
    </Labelled>
  );
}

/** A line of words. */
export function WordsField({ at, label, entry, first = false }: EntryFieldOptions & { readonly first?: boolean }) {
  const id = useId();
  const fault = faultShown(entry, at);
  return (
    <Labelled field={{ id, fault }} label={label}>
      <input
        id={id}
        className="field-line"
        autoComplete="off"
        maxLength={300}
        value={entry.typed[at] ?? ""}
        data-entry-first={first || undefined}
        {...faultProps({ id, fault })}
        onChange={({ target }) => entry.type(at, target.value)}
      />
    </Labelled>
  );
}

/** A day. */
export function DayOfEntry({ at, label, entry }: EntryFieldOptions) {
  const id = useId();
  const fault = faultShown(entry, at);
  return (
    <Labelled field={{ id, fault }} label={label}>
      <DayInput
        id={id}
        value={entry.typed[at] ?? ""}
        {...faultProps({ id, fault })}
        onChange={({ target }) => entry.type(at, target.value)}
      />
    </Labelled>
  );
}

interface ChoiceOptions extends EntryFieldOptions {
  readonly words: Readonly<Record<string, string>>;
  readonly first?: boolean;
}

/** One of a few answers as large targets; none is chosen until a person does. */
export function ChoiceOfEntry({ at, label, entry, words, first = false }: ChoiceOptions) {
  const id = useId();
  const fault = faultShown(entry, at);
  const answers = Object.entries(words);
  return (
    <fieldset className="entry-choice" aria-describedby={fault === undefined ? undefined : `${id}-fault`}>
      <legend className="field-label">{label}</legend>
      <div className="entry-targets">
        {answers.map(([value, word], index) => (
          <label key={value} className="entry-target">
            <input
              type="radio"
              name={id}
              checked={entry.typed[at] === value}
              data-entry-first={(first && index === 0) || undefined}
              aria-invalid={(fault !== undefined && index === 0) || undefined}
              onChange={() => entry.type(at, value)}
            />
            <span>{word}</span>
          </label>
        ))}
      </div>
      {fault !== undefined && (
        <p className="field-fault" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </fieldset>
  );
}
