import { Redirect } from "wouter";
import { Opening } from "../../parts/opening.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useExercise } from "../../record/calibration.ts";
import { MarkingBox } from "./marking/marking-box.tsx";
import { ExerciseResult } from "./result/exercise-result.tsx";

interface ExerciseRoomOptions {
  readonly id: string;
  /** The address is that of the dark room. */
  readonly isMarking: boolean;
}

/** One exercise: marked in the dark room until it is finished, then read on paper; each has its address. */
export function ExerciseRoom({ id, isMarking }: ExerciseRoomOptions) {
  const use = useExercise(id);
  const { view, error } = use;
  useTitle(view?.finished === undefined ? "Click error, exercise" : "Click error, result");
  if (view === undefined)
    return error === null ? <Opening says="Opening the exercise" /> : <SayRefusal of={error} whole />;
  const isDone = view.finished !== undefined;
  if (isDone === isMarking) return <Redirect to={`/calibration/clicks/${id}${isDone ? "" : "/mark"}`} replace />;
  return isDone ? <ExerciseResult view={view} /> : <MarkingBox view={view} use={use} />;
}
