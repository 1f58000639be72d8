import { Opening } from "../../parts/opening.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useExercise } from "../../record/calibration.ts";
import { MarkingBox } from "./marking/marking-box.tsx";
import { ExerciseResult } from "./result/exercise-result.tsx";

/** One exercise: marked in the dark room until it is finished, then read on paper. */
export function ExerciseRoom({ id }: { readonly id: string }) {
  const use = useExercise(id);
  const { view, error } = use;
  useTitle(view?.finished === undefined ? "Click error, exercise" : "Click error, result");
  if (view === undefined)
    return error === null ? <Opening says="Opening the exercise" /> : <SayRefusal of={error} whole />;
  return view.finished === undefined ? <MarkingBox view={view} use={use} /> : <ExerciseResult view={view} />;
}
