import { useState } from "react";
import { momentInWords, timeInWords, today } from "../../../parts/days-in-words.ts";
import { atTimeOfDay } from "./with-step.ts";

interface StepTimeOptions {
  /** When the step was noted as done, a moment in UTC. */
  readonly at: string;
  /** The step in a few words, for who can't see where the time stands. */
  readonly of: string;
  readonly readOnly: boolean;
  readonly write: (at: string) => void;
}

/** When a step was done; a time that was noted late is corrected in place, on the same day. */
export function StepTime({ at, of, readOnly, write }: StepTimeOptions) {
  const stands = timeInWords(new Date(at));
  const [typed, type] = useState<string>();
  if (readOnly) return <span className="mishap-step-at">{dayBefore(at) + stands}</span>;
  const text = typed ?? stands;
  const asked = atTimeOfDay(at, text);
  const fault =
    asked === undefined ? "write it as 14:02" : asked > new Date().toISOString() ? "it is not that late" : "";
  const leave = () => {
    if (fault === "" && asked !== undefined && text !== stands) write(asked);
    type(undefined);
  };
  return (
    <span className="mishap-step-at">
      {fault !== "" && <span className="look">◆ {fault} </span>}
      {dayBefore(at)}
      <input
        className="field-line"
        inputMode="numeric"
        value={text}
        aria-label={`Time of: ${of}`}
        aria-invalid={fault !== ""}
        onChange={({ target }) => type(target.value)}
        onBlur={leave}
        onKeyDown={(event) => {
          if (event.key === "Enter") leave();
          if (event.key === "Escape") type(undefined);
        }}
      />
    </span>
  );
}

/** `noted`, with its day where that is not today. */
const dayBefore = (at: string): string =>
  today(new Date(at)) === today() ? "noted " : `noted ${momentInWords(at).replace(/\d+:\d+$/, "")}`;
