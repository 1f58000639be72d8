import { Link } from "wouter";
import { clickErrorHistory } from "../../../figures/click-error-history.ts";
import type { CalibrationView, ExerciseLine } from "../../../server/api.ts";
import { dayInWords, momentInWords, today } from "../../parts/days-in-words.ts";
import { FigureView } from "../../parts/figure-view.tsx";
import { countOf } from "../../parts/figures-in-words.ts";
import { offeredOf, readClickAnswer } from "./click-answer.ts";
import { endsInWords, pxInWords } from "./click-rows.ts";

/** The exercises that were done: their errors over time, and a line for each. */
export function ExercisesDone({ room }: { readonly room: CalibrationView }) {
  const done = room.exercises.filter(({ finished }) => finished !== undefined);
  const used = room.clickSigma.from?.exerciseId;
  return (
    <section className="exercises-done" aria-labelledby="exercises-done">
      <h3 id="exercises-done">Done so far</h3>
      {done.length === 0 ? (
        <p className="quiet">None yet: the error is assumed until the first exercise is worked out.</p>
      ) : (
        <div className="exercises-told">
          <History done={done} used={used} />
          <ol className="exercise-lines">
            {done.map((line) => (
              <Line key={line.id} line={line} isUsed={line.id === used} />
            ))}
          </ol>
        </div>
      )}
    </section>
  );
}

function History({ done, used }: { readonly done: readonly ExerciseLine[]; readonly used: string | undefined }) {
  const exercises = [...done].reverse().flatMap(({ id, finished }) => {
    const answer = readClickAnswer(finished?.answer);
    if (finished === undefined || answer === undefined) return [];
    const { sigmaPx, interval } = offeredOf(answer);
    const day = dayInWords(today(new Date(finished.at)));
    return [{ day, sigmaPx, low: interval.low, high: interval.high, isUsed: id === used }];
  });
  if (exercises.length === 0) return null;
  return <FigureView figure={clickErrorHistory({ exercises, assumedPx: 1, theme: "paper", widthPx: 560 })} />;
}

function Line({ line: { id, who, finished }, isUsed }: { readonly line: ExerciseLine; readonly isUsed: boolean }) {
  const answer = readClickAnswer(finished?.answer);
  const offered = answer && offeredOf(answer);
  return (
    <li>
      <Link href={`/calibration/clicks/${id}`}>{finished && momentInWords(finished.at)}</Link>
      <strong>{offered ? pxInWords(offered.sigmaPx) : "not read here"}</strong>
      <span className="quiet">{offered && endsInWords(offered.interval)}</span>
      <span className="quiet">
        {[
          who,
          answer ? countOf(answer.clicks, "click") : "",
          answer && answer.outliers.length > 0 ? `without ${countOf(answer.outliers.length, "pair")} out of line` : "",
        ]
          .filter((text) => text !== "")
          .join(", ")}
      </span>
      {isUsed && <span className="exercise-used">in use</span>}
    </li>
  );
}
