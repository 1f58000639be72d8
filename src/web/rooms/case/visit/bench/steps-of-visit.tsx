import { type KeyboardEvent, useState } from "react";
import {
  stepStanding,
  type VisitStep,
  withStepDone,
  withStepLeftOut,
  withStepOpen,
} from "../../../../../record/chairside/visit-steps.ts";
import { Button } from "../../../../parts/button.tsx";
import { KeyHint } from "../../../../parts/key-hint.tsx";
import { useShortcut } from "../../../../parts/shortcuts.ts";
import { ChairDialog } from "./chair-dialog.tsx";
import { type Noted, useBenchWays } from "./opened.ts";
import { TemplateOffers } from "./template-offers.tsx";
import { useBench } from "./use-bench.ts";
import { WordsLine } from "./words-line.tsx";

/** What a step opens that records it; a step about anything else is done by the press alone. */
const opens: Partial<Readonly<Record<NonNullable<VisitStep["about"]>, Noted>>> = {
  ...{ timeOut: "timeOut", anaesthetic: "anaesthetic", isolation: "isolation", instruments: "instrument" },
  ...{ irrigation: "irrigant", solvent: "solvent", medicament: "medicament", filling: "filling" },
  ...{ temporary: "temporary", countIn: "count" },
};
const opensFor = ({ about, holdPoint }: VisitStep): Noted | undefined =>
  holdPoint !== undefined ? "holdPoint" : about && opens[about];
const marks = { done: "✓", leftOut: "–", open: "" } as const;

/** The steps that a template asked for, each a large tick; or the templates, where none was taken. */
export function StepsOfVisit() {
  const { visit, readOnly } = useBench("Step done");
  const steps = visit.steps ?? [];
  if (steps.length === 0) return readOnly ? null : <TemplateOffers />;
  return (
    <section className="form-part bench-steps" aria-labelledby="visit-steps-title" id="visit-steps">
      <h2 id="visit-steps-title">Steps{visit.template && <span className="quiet"> {visit.template.name}</span>}</h2>
      <ol onKeyDown={walk}>
        {steps.map((step, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: steps of a visit have no other name than their place
          <Step key={index} {...{ step, index }} />
        ))}
      </ol>
    </section>
  );
}

function Step({ step, index }: { readonly step: VisitStep; readonly index: number }) {
  const done = useBench("Step done");
  const undone = useBench("Step open again");
  const { open } = useBenchWays();
  const [leaving, setLeaving] = useState(false);
  const { visit, readOnly, minute } = done;
  const standing = stepStanding(step);
  const press = () => {
    const opening = opensFor(step);
    if (standing !== "open") undone.record(withStepOpen(visit, index), `“${step.says}”`);
    else if (opening !== undefined) open(opening, index);
    else done.record(withStepDone(visit, index, minute()), `“${step.says}”`);
  };
  return (
    <li data-stands={standing}>
      {index < 9 && !readOnly && <StepKey digit={String(index + 1)} says={step.says} press={press} />}
      <button
        type="button"
        className="bench-step"
        aria-pressed={standing === "done"}
        disabled={readOnly}
        onClick={press}
      >
        <span className="bench-tick" aria-hidden="true">
          {marks[standing]}
        </span>
        <span>
          {step.says}
          {step.holdPoint !== undefined && <span className="bench-holds"> ◇ hold point</span>}
          {step.leftOut !== undefined && <span className="quiet"> left out{step.leftOut && `: ${step.leftOut}`}</span>}
        </span>
        {step.doneAtMin !== undefined && <span className="quiet">{step.doneAtMin} min</span>}
        {index < 9 && !readOnly && <KeyHint keys={String(index + 1)} />}
      </button>
      {!readOnly && standing === "open" && (
        <span className="bench-step-ways">
          {opensFor(step) !== undefined && (
            <Button
              aria-label={`Done: ${step.says}`}
              onClick={() => done.record(withStepDone(visit, index, minute()), `“${step.says}”`)}
            >
              Done
            </Button>
          )}
          <Button aria-label={`Leave out: ${step.says}`} onClick={() => setLeaving(true)}>
            Leave out
          </Button>
        </span>
      )}
      {leaving && <LeaveOut {...{ step, index }} close={() => setLeaving(false)} />}
    </li>
  );
}

interface LeaveOutOptions {
  readonly step: VisitStep;
  readonly index: number;
  readonly close: () => void;
}

function LeaveOut({ step, index, close }: LeaveOutOptions) {
  const { visit, record } = useBench("Step left out");
  const [why, setWhy] = useState("");
  const save = () => {
    record(withStepLeftOut(visit, index, why.trim()), `“${step.says}”`);
    close();
  };
  return (
    <ChairDialog title={`Leave out: ${step.says}`} close={close} records="Leave it out" record={save}>
      <WordsLine label="Left out because" value={why} write={setWhy} />
    </ChairDialog>
  );
}

function StepKey({
  digit,
  says,
  press,
}: {
  readonly digit: string;
  readonly says: string;
  readonly press: () => void;
}) {
  useShortcut(digit, "Visit", says, press);
  return null;
}

/** Arrow keys walk over the ticks. */
function walk(event: KeyboardEvent<HTMLElement>): void {
  if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
  const ticks: Element[] = [...event.currentTarget.querySelectorAll(".bench-step")];
  const at = document.activeElement === null ? -1 : ticks.indexOf(document.activeElement);
  if (at === -1) return;
  event.preventDefault();
  const next = ticks[at + (event.key === "ArrowDown" ? 1 : -1)];
  if (next instanceof HTMLElement) next.focus();
}
