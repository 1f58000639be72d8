import { useId } from "react";
import { type GuidedStep, mishapGuide } from "../../../../record/mishap-guide/mishap-guide.ts";
import { Button } from "../../../parts/button.tsx";
import { momentInWords } from "../../../parts/days-in-words.ts";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { SourceMark } from "../plan/source-mark.tsx";
import { StepTime } from "./step-time.tsx";
import { useMishap } from "./use-mishap.ts";
import { nextStep, type StepDone, stepsOfOthers, withStep, withTime } from "./with-step.ts";

/** The usual immediate steps; one press notes one with its time, another takes it back. */
export function StepsList() {
  const { mishap, readOnly, write } = useMishap("Usual steps");
  const guide = mishapGuide(mishap.what);
  const done = mishap.steps ?? [];
  const next = nextStep(guide, done);
  const heading = useId();
  const toggle = ({ id, says }: GuidedStep) => {
    const steps = withStep(done, id, new Date().toISOString());
    write({ ...mishap, steps }, `${steps.length > done.length ? "done" : "not done"}, “${shortened(says)}”`);
  };
  const correct = ({ id, says }: GuidedStep, at: string) =>
    write({ ...mishap, steps: withTime(done, id, at) }, `“${shortened(says)}” at ${momentInWords(at)}`);
  useShortcut("n", "Mishap", "The next of the usual steps is done", () =>
    next === undefined || readOnly ? false : toggle(next),
  );
  const others = stepsOfOthers(guide, done);
  return (
    <section className="form-part mishap-steps" aria-labelledby={heading}>
      <header className="mishap-line">
        <h2 id={heading}>The usual immediate steps</h2>
        <span className="quiet">
          {guide.steps.length - openOf(guide.steps, done)} of {guide.steps.length} noted
        </span>
        {!readOnly && (
          <Button hint="n" disabled={next === undefined} onClick={() => next && toggle(next)}>
            Note the next as done
          </Button>
        )}
      </header>
      <p className="quiet">
        Your own protocol and licensed judgement come first. Where no source stands beside a line, it is common
        practice.
      </p>
      <ol>
        {guide.steps.map((step) => (
          <Step
            key={step.id}
            {...{ step, readOnly }}
            done={done.find((one) => one.step === step.id)}
            isNext={step === next}
            toggle={() => toggle(step)}
            correct={(at) => correct(step, at)}
          />
        ))}
      </ol>
      {others.length > 0 && <p className="quiet">Noted under another kind, and kept: {others.join(" · ")}</p>}
      {guide.cautions.length > 0 && (
        <ul className="mishap-cautions" aria-label="What speaks for care">
          {guide.cautions.map(({ says, ...from }) => (
            <li key={says}>
              {says} <FromSource {...from} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

interface StepOptions {
  readonly step: GuidedStep;
  readonly done: StepDone | undefined;
  readonly isNext: boolean;
  readonly readOnly: boolean;
  readonly toggle: () => void;
  /** Writes another time at which it was done. */
  readonly correct: (at: string) => void;
}

function Step({ step, done, isNext, readOnly, toggle, correct }: StepOptions) {
  return (
    <li data-done={done !== undefined} data-next={isNext}>
      <div className="mishap-step">
        <label>
          <input type="checkbox" checked={done !== undefined} disabled={readOnly} onChange={toggle} />
          <span>
            {step.says} <FromSource {...step} />
          </span>
        </label>
        {done && <StepTime at={done.at} of={shortened(step.says)} readOnly={readOnly} write={correct} />}
      </div>
      {step.caution !== undefined && <span className="mishap-step-more">◇ {step.caution}</span>}
    </li>
  );
}

/** The source of a line; that it is common practice is said once, above all of them. */
const FromSource = ({ source, mark }: Pick<GuidedStep, "source" | "mark">) =>
  mark === "common practice" ? null : <SourceMark {...{ source, mark }} />;

const openOf = (steps: readonly GuidedStep[], done: readonly StepDone[]): number =>
  steps.filter(({ id }) => !done.some(({ step }) => step === id)).length;

const shortened = (says: string): string => (says.length > 60 ? `${says.slice(0, 59).trimEnd()}…` : says);
