import { Link } from "wouter";
import type { CalibrationView } from "../../../server/api.ts";
import { Opening } from "../../parts/opening.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useCalibration } from "../../record/calibration.ts";
import { clickSigmaOrigin } from "../../words/click-sigma-words.ts";
import { ClickExercise } from "./click-exercise.tsx";
import { pxInWords } from "./click-rows.ts";
import { ExercisesDone } from "./exercises-done.tsx";
import "./calibration-room.css";

/** The room in which a person's own reading is measured, one kind of exercise below the other. */
export function CalibrationRoom() {
  useTitle("Calibration");
  const room = useCalibration();
  if (room.data === undefined)
    return room.error ? <SayRefusal of={room.error} retry={() => void room.refetch()} whole /> : <Opening />;
  return (
    <>
      <PageHead>
        <h1 className="calibration-title">Calibration</h1>
        <span className="quiet">how well you read, measured</span>
      </PageHead>
      <main className="calibration">
        <article className="calibration-kind" aria-labelledby="click-error">
          <header>
            <h2 id="click-error">Click error</h2>
            <p>
              Every length, angle and area on a film carries an interval, and most of that interval is how far a mark of
              yours misses. Mark the same places twice, and it is measured instead of assumed.
            </p>
          </header>
          <InUse room={room.data} />
          <ClickExercise room={room.data} />
          <ExercisesDone room={room.data} />
        </article>
      </main>
    </>
  );
}

/** The error that sums use now, and where it came from. */
function InUse({ room: { clickSigma } }: { readonly room: CalibrationView }) {
  const { px, from } = clickSigma;
  const settings = { clickSigmaPx: px, ...(from === undefined ? {} : { clickSigmaFrom: from }) };
  return (
    <p className="calibration-use">
      <span className="quiet">Sums use now</span>
      {from && <strong>{pxInWords(px)}</strong>}
      <span>{clickSigmaOrigin(settings)}</span>
      {from && (
        <Link href={`/calibration/clicks/${from.exerciseId}`} className="quiet">
          its exercise
        </Link>
      )}
    </p>
  );
}
