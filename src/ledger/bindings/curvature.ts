import { curvatureTopic } from "../../core/radiograph/curvature-topic.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Question } from "../binding.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";
import { clickSigmaPx, clickSigmaRecord, measuredOnFilm } from "../measured-on-film.ts";

/** Length and curvature of each traced course in the scale of its film; its angles alone where the film has none. */
export const curvatureBinding: Binding = {
  topic: curvatureTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "trace").map((trace) => courseOf(trace, context)),
    ),
};

function courseOf(trace: MarkOf<"trace">, context: BindingContext): Question {
  const { id, body } = trace;
  const subject = `curvature of ${id}`;
  const points = { input: "points", record: `${id}/points` };
  const measured = measuredOnFilm(trace, context);
  if (measured === undefined)
    return {
      subject,
      input: { points: body.points, unit: "px", sigmaPx: clickSigmaPx(trace, context) },
      inputPaths: [points, { input: "sigmaPx", record: clickSigmaRecord(trace) }],
    };
  return {
    subject,
    input: { points: measured.inMm(body.points), ...measured.errors },
    inputPaths: [points, measured.scalePath("points"), ...measured.errorPaths],
  };
}
