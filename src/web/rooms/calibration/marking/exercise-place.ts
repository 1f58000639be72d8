import type { ExerciseStepView, ExerciseView } from "../../../../server/api.ts";

/** Where an exercise is: what is shown, what is marked next, and how much is done. */
export interface ExercisePlace {
  readonly step: ExerciseStepView;
  readonly stepIndex: number;
  /** The place of the step that is marked next. */
  readonly placeIndex: number;
  /** The marks of this showing; those of earlier showings stay hidden. */
  readonly marks: ExerciseView["marks"];
}

/** Where an exercise is; undefined when everything is marked. */
export function exercisePlace({ steps, marks }: Pick<ExerciseView, "steps" | "marks">): ExercisePlace | undefined {
  let before = 0;
  for (const [stepIndex, step] of steps.entries()) {
    const here = marks.slice(before, before + step.places.length);
    if (here.length < step.places.length) return { step, stepIndex, placeIndex: here.length, marks: here };
    before += step.places.length;
  }
  return undefined;
}

/** All marks of an exercise. */
export const marksInAll = ({ steps }: Pick<ExerciseView, "steps">): number =>
  steps.reduce((sum, { places }) => sum + places.length, 0);

/** What lies toward the left and the right edge of the screen. */
export function edgesOf({
  uRunsTo,
  mirrored,
}: Pick<ExerciseStepView, "uRunsTo" | "mirrored">): readonly [string, string] {
  const rightIs = mirrored ? otherSide(uRunsTo) : uRunsTo;
  return [otherSide(rightIs), rightIs];
}

const otherSide = (side: "mesial" | "distal"): "mesial" | "distal" => (side === "mesial" ? "distal" : "mesial");
