import { curvatureTopic } from "../../core/radiograph/curvature-topic.ts";
import { pointsInPlane } from "../../core/radiograph/points-in-plane.ts";
import { px } from "../../core/units.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

/** Length and curvature of each traced course, in the scale of its film. */
export const curvatureBinding: Binding = {
  topic: curvatureTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "trace").map((trace) => courseOf(trace, context)),
    ),
};

function courseOf({ id, body }: MarkOf<"trace">, context: BindingContext): Question | Gap {
  const subject = `curvature of ${id}`;
  const scale = filmScale(context, body.film);
  const points = { input: "points", record: `${id}/points` };
  if (scale === undefined)
    return { subject, why: "the film has no scale; mark a known length on it", inputPaths: [points] };
  const sigmaPx = body.sigmaPx ?? context.settings.clickSigmaPx;
  const places = pointsInPlane(
    body.points.map(([u, v]) => ({ column: px(u), row: px(v) })),
    scale.mmPerPx,
  );
  const { relativeSigma } = scale;
  return {
    subject,
    input: {
      points: places.map(({ x, y }) => [x, y]),
      sigmaMm: sigmaPx * Math.sqrt(scale.mmPerPx.column * scale.mmPerPx.row),
      ...(relativeSigma === undefined ? {} : { scaleRelativeSigma: relativeSigma }),
    },
    inputPaths: [
      points,
      { input: "points", record: `ledger/${scale.entryId}/mmPerPx` },
      { input: "sigmaMm", record: body.sigmaPx === undefined ? "settings/clickSigmaPx" : `${id}/sigmaPx` },
      ...(relativeSigma === undefined
        ? []
        : [{ input: "scaleRelativeSigma", record: `ledger/${scale.entryId}/relativeSigma` }]),
    ],
  };
}
