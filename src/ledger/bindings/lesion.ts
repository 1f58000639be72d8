import { lesionTopic } from "../../core/radiograph/lesion-topic.ts";
import { pointsInPlane } from "../../core/radiograph/points-in-plane.ts";
import { px } from "../../core/units.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

/** The size of each outline that is called a lesion, in the scale of its film, with the nearest apex marked there. */
export const lesionBinding: Binding = {
  topic: lesionTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "outline")
        .filter(({ body }) => isCalled(body.what, "lesion"))
        .map((outline) => sizeOf(outline, context)),
    ),
};

/** A mark is called by the first word of what a person wrote on it: "lesion at MB1", "Apex". */
const isCalled = (what: string, word: string): boolean => what.trim().toLowerCase().split(/\W/)[0] === word;

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
  const apex = nearestApex(body, context);
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

/** Of the spots on the film that are called an apex, the one nearest to any corner of the outline. */
function nearestApex(outline: MarkOf<"outline">["body"], { parts }: BindingContext): MarkOf<"spot"> | undefined {
  const apices = marksOn(parts, outline.film, "spot").filter(({ body }) => isCalled(body.what, "apex"));
  const away = ({ body: { at } }: MarkOf<"spot">): number =>
    Math.min(...outline.points.map(([u, v]) => Math.hypot(u - at[0], v - at[1])));
  return [...apices].sort((a, b) => away(a) - away(b))[0];
}
