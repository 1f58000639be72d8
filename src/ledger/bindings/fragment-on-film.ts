import { z } from "zod";
import { fragmentOnFilmTopic } from "../../core/radiograph/fragment-on-film-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { partsOf } from "../../record/parts.ts";
import { apexOnFilm } from "../apex-on-film.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { courseOnFilm, startOfTrace } from "../course-on-film.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";
import { type MeasuredOnFilm, measuredOnFilm, noScaleWhy } from "../measured-on-film.ts";

/** Length and place of each fragment that is drawn on a film, in the course of its canal there. */
export const fragmentOnFilmBinding: Binding = {
  topic: fragmentOnFilmTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "fragment").map((fragment) => placeOf(fragment, context)),
    ),
};

function placeOf(fragment: MarkOf<"fragment">, context: BindingContext): Question | Gap {
  const { id, body } = fragment;
  const subject = `fragmentOnFilm of ${id}`;
  const line = { input: "fragment", record: `${id}/points` };
  const measured = measuredOnFilm(fragment, context);
  if (measured === undefined) return { subject, why: noScaleWhy, inputPaths: [line] };
  const around = aroundIt(body, measured, context);
  return {
    subject,
    input: { fragment: measured.inMm(body.points), ...around.input, ...measured.errors },
    inputPaths: [line, measured.scalePath("fragment"), ...around.paths, ...measured.errorPaths],
  };
}

/** The course of the canal, its apex and its largest bend, as far as they are known. */
function aroundIt(
  { film, canal }: MarkOf<"fragment">["body"],
  measured: MeasuredOnFilm,
  context: BindingContext,
): { readonly input: object; readonly paths: readonly InputPath[] } {
  const course = canal === undefined ? undefined : courseOnFilm(context.parts, film, canal);
  if (canal === undefined || course === undefined) return { input: {}, paths: [] };
  const apex = apexOnFilm(context.parts, film, canal);
  const bend = largestBend(course.id, context);
  return {
    input: {
      course: measured.inMm(course.body.points),
      from: startOfTrace(course, context.parts),
      ...(apex === undefined ? {} : { apex: measured.placeInMm(apex.body.at) }),
      ...(bend === undefined ? {} : { bend: bend.bend }),
    },
    paths: [
      { input: "course", record: `${course.id}/points` },
      { input: "from", record: `${course.id}/from` },
      ...(apex === undefined ? [] : [{ input: "apex", record: `${apex.id}/at` }]),
      ...(bend === undefined ? [] : [{ input: "bend", record: `ledger/${bend.entryId}/bends` }]),
    ],
  };
}

const measuredBends = z.object({
  bends: z.array(
    z.object({ angleDeg: z.number(), fromMm: z.number(), toMm: z.number(), radiusMm: z.number().optional() }),
  ),
});

/** The largest bend of a course as its curvature entry has it; a bend without a radius counts as straight there. */
function largestBend(trace: string, { earlier }: BindingContext) {
  const found = earlier(`curvature of ${trace}`);
  const bends = measuredBends.safeParse(found?.output).data?.bends ?? [];
  const bent = bends.filter(({ radiusMm }) => radiusMm !== undefined).sort((a, b) => b.angleDeg - a.angleDeg);
  const [largest] = bent;
  if (found === undefined || largest === undefined) return undefined;
  const { angleDeg, fromMm, toMm } = largest;
  return { entryId: found.entryId, bend: { angleDeg, fromMm, toMm } };
}
