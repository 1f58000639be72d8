import { type KeyboardEvent, useEffect, useRef } from "react";
import { attemptsFigure } from "../../../../pages/removal-figures.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { movedWords, removalToolWords } from "../../../../record/words/removal-words.ts";
import { Button } from "../../../parts/button.tsx";
import { momentInWords } from "../../../parts/days-in-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { useField, Within } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { FigureView } from "../../../parts/figure-view.tsx";
import { AttemptClock } from "./attempt-clock.tsx";
import { useRemovalInHand } from "./removal-in-hand.ts";

type Attempt = BodyOf<"removal">["attempts"][number];

/** What was tried, by the clock: minutes, tool, tip, and what it moved. */
export function AttemptLog() {
  const { now, readOnly } = useRemovalInHand();
  const last = now.attempts.length - 1;
  const asks = !readOnly && now.running === undefined && now.attempts[last]?.moved === "notRecorded";
  const { attempts, stopRules } = now;
  const figure =
    attempts.length === 0
      ? undefined
      : attemptsFigure({ attempts, stopRules }, momentInWords, { theme: "paper", widthPx: 640 });
  return (
    <section className="form-part" aria-labelledby="removal-attempts">
      <h2 id="removal-attempts">Attempts</h2>
      <AttemptClock />
      {asks && (
        <Within at={`attempts.${last}`} of={`attempt ${last + 1}`}>
          <WhatMoved key={last} number={last + 1} />
        </Within>
      )}
      {figure && <FigureView figure={figure} />}
      {now.attempts.length === 0 ? (
        <p className="quiet">No attempt yet.</p>
      ) : (
        <Rows
          at="attempts"
          label="Attempts"
          start={() => undefined}
          nameOf={(_, index) => `attempt ${index + 1}`}
          columns={[
            { head: "Began", cell: <Began /> },
            { head: "Minutes", cell: <NumberField at="minutes" label="Minutes" required bare />, figure: true },
            { head: "Tool", cell: <SelectField at="tool" label="Tool" words={removalToolWords} bare /> },
            { head: "Tip", cell: <TextField at="tip" label="Tip" wraps bare />, wide: true },
            { head: "Moved", cell: <SelectField at="moved" label="What moved" words={movedWords} bare /> },
            { head: "Note", cell: <TextField at="note" label="Note" wraps bare />, wide: true },
          ]}
        />
      )}
    </section>
  );
}

function Began() {
  const { value } = useField("at", "Began");
  return <span className="removal-began">{typeof value === "string" ? momentInWords(value) : ""}</span>;
}

const isMoved = (name: string): name is Attempt["moved"] => Object.hasOwn(movedWords, name);
const answers = Object.keys(movedWords)
  .filter(isMoved)
  .filter((one) => one !== "notRecorded");

/** Asks what the attempt that has just ended moved; a digit answers. */
function WhatMoved({ number }: { readonly number: number }) {
  const field = useField("moved", "What moved");
  const group = useRef<HTMLFieldSetElement>(null);
  useEffect(() => group.current?.querySelector("button")?.focus(), []);
  const press = (event: KeyboardEvent) => {
    const answer = answers[Number(event.key) - 1];
    if (answer === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    field.write(answer, movedWords[answer], "now");
  };
  return (
    <fieldset className="removal-moved" ref={group} onKeyDown={press}>
      <legend className="field-label">What moved in attempt {number}?</legend>
      {answers.map((answer, index) => (
        <Button key={answer} hint={String(index + 1)} onClick={() => field.write(answer, movedWords[answer], "now")}>
          {movedWords[answer]}
        </Button>
      ))}
    </fieldset>
  );
}
