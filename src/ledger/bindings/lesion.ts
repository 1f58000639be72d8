import { lesionTopic } from "../../core/radiograph/lesion-topic.ts";
import { pointsInPlane } from "../../core/radiograph/points-in-plane.ts";
import { px } from "../../core/units.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { isCalled, namesIn } from "../mark-notes.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

/** The size of each outline that is called a lesion, in the scale of its film, with the apex marked there. */
export const lesionBinding: Binding = {
  topic: lesionTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "outline")
        .filter(({ body }) => isCalled(body.what, "lesion"))
        .map((outline) => sizeOf(outline, context)),
    ),
};

function sizeOf({ id, body }: MarkOf<"outline">, context: BindingContext): Question | Gap {
  const subject = `lesion of ${id}`;
  const scale = filmScale(context, body.film);
  const points = { input: "points", record: `${id}/points` };
  if (scale === undefined)
    return { subject, why: "the film has no scale; mark a known length on it", inputPaths: [points] };
  const { mmPerPx, relativeSigma, entryId } = scale;
  const inPlane = (places: readonly (readonly [number, number])[]) =>
    pointsInPlane(
      places.map(([u, v]) => ({ column: px(u), row: px(v) })),
      mmPerPx,
    ).map(({ x, y }): [number, number] => [x, y]);
  const apex = apexOf(body, context);
  const at = apex === undefined ? undefined : inPlane([apex.body.at])[0];
  return {
    subject,
    input: {
      points: inPlane(body.points),
      sigmaMm: (body.sigmaPx ?? context.settings.clickSigmaPx) * Math.sqrt(mmPerPx.column * mmPerPx.row),
      ...(relativeSigma === undefined ? {} : { scaleRelativeSigma: relativeSigma }),
      ...(at === undefined ? {} : { apex: at }),
    },
    inputPaths: [
      points,
      { input: "points", record: `ledger/${entryId}/mmPerPx` },
      { input: "sigmaMm", record: body.sigmaPx === undefined ? "settings/clickSigmaPx" : `${id}/sigmaPx` },
      ...(relativeSigma === undefined
        ? []
        : [{ input: "scaleRelativeSigma", record: `ledger/${entryId}/relativeSigma` }]),
      ...(apex === undefined ? [] : [{ input: "apex", record: `${apex.id}/at` }]),
    ],
  };
}

/**
 * Of the spots on the film that are called an apex, the one that the lesion's note names as well ("lesion at MB1" and
 * "apex MB1"), or the one nearest to the outline's middle where its note names none. An apex that another root's name
 * stands beside is never taken for a lesion that names its own.
 */
function apexOf(outline: MarkOf<"outline">["body"], { parts }: BindingContext): MarkOf<"spot"> | undefined {
  const apices = marksOn(parts, outline.film, "spot").filter(({ body }) => isCalled(body.what, "apex"));
  const named = namesIn(outline.what);
  const own = apices.filter(({ body }) => {
    const names = namesIn(body.what);
    return named.length === 0 || names.length === 0 || names.some((name) => named.includes(name));
  });
  const mean = (axis: 0 | 1) => outline.points.reduce((sum, place) => sum + place[axis], 0) / outline.points.length;
  const [u, v] = [mean(0), mean(1)];
  const away = ({ body: { at } }: MarkOf<"spot">): number => Math.hypot(at[0] - u, at[1] - v);
  return [...own].sort((a, b) => away(a) - away(b))[0];
}
