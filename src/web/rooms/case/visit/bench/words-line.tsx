import { useId } from "react";

interface WordsLineOptions {
  readonly label: string;
  readonly value: string;
  readonly write: (text: string) => void;
  readonly number?: boolean;
  readonly fault?: string | undefined;
}

/** A line of words, or a number, in a dialog at the chair. */
export function WordsLine({ label, value, write, number = false, fault }: WordsLineOptions) {
  const id = useId();
  return (
    <div className="field words-line">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="field-line"
        autoComplete="off"
        maxLength={300}
        inputMode={number ? "numeric" : undefined}
        value={value}
        aria-invalid={fault === undefined ? undefined : true}
        aria-describedby={fault === undefined ? undefined : `${id}-fault`}
        onChange={({ target }) => write(target.value)}
      />
      {fault !== undefined && (
        <p className="field-fault" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </div>
  );
}
