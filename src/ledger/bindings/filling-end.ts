import { fillingEndTopic } from "../../core/radiograph/filling-end-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import { apexOnFilm } from "../apex-on-film.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { courseOnFilm } from "../course-on-film.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";
import { measuredOnFilm, noScaleWhy } from "../measured-on-film.ts";

type OnFilm = readonly [number, number];

/** Where a filling ends: a spot that says so, or the end of a course along a filling. */
interface FillingEnd {
  readonly mark: MarkOf<"spot"> | MarkOf<"trace">;
  readonly at: OnFilm;
  readonly record: string;
}

/** How far short of the apex each filling ends, for each end that is marked and each filling that is traced. */
export const fillingEndBinding: Binding = {
  topic: fillingEndTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) => endsOn(film, context).map((end) => distanceOf(end, context))),
};

/** The marked ends, and the ends of traced fillings whose canal has none and whose apex is known. */
function endsOn({ id: film }: PartOf<"film">, { parts }: BindingContext): FillingEnd[] {
  const marked = marksOn(parts, film, "spot").filter(({ body }) => body.is === "fillingEnd");
  const traced = marksOn(parts, film, "trace").filter(
    ({ body }) =>
      body.kind === "filledCanal" &&
      body.canal !== undefined &&
      !marked.some((one) => one.body.canal === body.canal) &&
      apexOf(film, body.canal, parts) !== undefined,
  );
  return [
    ...marked.map((mark): FillingEnd => ({ mark, at: mark.body.at, record: `${mark.id}/at` })),
    ...traced.flatMap((mark): FillingEnd[] => {
      const at = mark.body.points.at(-1);
      return at === undefined ? [] : [{ mark, at, record: `${mark.id}/points` }];
    }),
  ];
}

/** The apex that is marked for the canal, else the end of a course along the canal itself. */
function apexOf(
  film: string,
  canal: string,
  parts: BindingContext["parts"],
): { at: OnFilm; record: string } | undefined {
  const marked = apexOnFilm(parts, film, canal);
  if (marked !== undefined) return { at: marked.body.at, record: `${marked.id}/at` };
  const course = courseOnFilm(parts, film, canal);
  const at = course?.body.points.at(-1);
  if (course === undefined || at === undefined || (course.body.kind ?? "canal") !== "canal") return undefined;
  return { at, record: `${course.id}/points` };
}

function distanceOf({ mark, at, record }: FillingEnd, context: BindingContext): Question | Gap {
  const { film, canal } = mark.body;
  const subject = `fillingEnd of ${mark.id}`;
  const end = { input: "end", record };
  const gap = (why: string): Gap => ({ subject, why, inputPaths: [end] });
  if (canal === undefined) return gap("it is not known which canal the filling lies in; name the canal");
  const apex = apexOf(film, canal, context.parts);
  if (apex === undefined) return gap(`mark the apex of ${canal} on this film, or trace the canal to it`);
  const measured = measuredOnFilm(mark, context);
  if (measured === undefined) return gap(noScaleWhy);
  const course = courseOnFilm(context.parts, film, canal);
  const lies = mark.body.shape === "spot" ? mark.body.lies : undefined;
  const paths: InputPath[] = [
    ...[end, measured.scalePath("end"), { input: "apex", record: apex.record }],
    ...(course === undefined ? [] : [{ input: "course", record: `${course.id}/points` }]),
    ...(lies === undefined ? [] : [{ input: "lies", record: `${mark.id}/lies` }]),
    ...measured.errorPaths,
  ];
  return {
    subject,
    input: {
      end: measured.placeInMm(at),
      apex: measured.placeInMm(apex.at),
      ...(course === undefined ? {} : { course: measured.inMm(course.body.points) }),
      ...(lies === undefined ? {} : { lies }),
      ...measured.errors,
    },
    inputPaths: paths,
  };
}
