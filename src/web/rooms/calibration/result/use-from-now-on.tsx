import { Button } from "../../../parts/button.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { Refused } from "../../../record/api.ts";
import { useUseOfExercise } from "../../../record/calibration.ts";
import { useSettings } from "../../../record/readings.ts";
import { clickSigmaOrigin } from "../../../words/click-sigma-words.ts";
import { type ClickAnswer, offeredOf } from "../click-answer.ts";
import { pxInWords } from "../click-rows.ts";

interface UseFromNowOnOptions {
  readonly id: string;
  readonly answer: ClickAnswer;
}

/** Lets every sum use this error from now on, with one press; without the pairs out of line where there are some. */
export function UseFromNowOn({ id, answer }: UseFromNowOnOptions) {
  const settings = useSettings().data;
  const { use, busy, job, error } = useUseOfExercise(id);
  const offered = offeredOf(answer);
  const isUsed = settings?.clickSigmaFrom?.exerciseId === id;
  useShortcut("u", "Exercise", "Use this error from now on", () => !isUsed && !busy && use(offered.which));
  return (
    <section className="result-use" aria-label="Use of this error">
      {isUsed ? (
        <p role="status">
          <strong>In use:</strong> sums take {pxInWords(settings.clickSigmaPx)}, {clickSigmaOrigin(settings)}.
        </p>
      ) : (
        <>
          <Button weight="strong" hint="u" disabled={busy || settings === undefined} onClick={() => use(offered.which)}>
            Use {pxInWords(offered.sigmaPx)} from now on
          </Button>
          {answer.without !== undefined && (
            <Button disabled={busy} onClick={() => use("all")}>
              Use {pxInWords(answer.sigmaPx)}, all pairs
            </Button>
          )}
          {settings && (
            <p className="quiet">
              Sums use now: {settings.clickSigmaFrom && `${pxInWords(settings.clickSigmaPx)}, `}
              {clickSigmaOrigin(settings)}. A new error works the ledgers of all cases out anew; entries that stand in
              documents stay as they are.
            </p>
          )}
        </>
      )}
      <Progress busy={busy} job={job} />
      {error && <SayRefusal of={error} />}
      {job?.refusal && <SayRefusal of={refusedBy(job.refusal)} />}
    </section>
  );
}

type Following = Pick<ReturnType<typeof useUseOfExercise>, "busy" | "job">;

const Progress = ({ busy, job }: Following) =>
  busy ? (
    <p className="result-progress" role="status">
      <progress max={1} value={job?.fraction ?? 0} aria-label="Ledgers worked out anew" />
      <span>{job?.says ?? "Keeping your click error"}</span>
    </p>
  ) : null;

const refusedBy = ({ code, message, facts, faults }: NonNullable<NonNullable<Following["job"]>["refusal"]>): Refused =>
  new Refused(code, message, facts, faults);
