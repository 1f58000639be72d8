import { levelOnCanalTopic } from "../../core/radiograph/level-on-canal-topic.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { courseOnFilm, startOfTrace } from "../course-on-film.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";
import { measuredOnFilm, noScaleWhy } from "../measured-on-film.ts";

/** The depth of each level that is marked on a canal, along that canal's course on the same film. */
export const levelOnCanalBinding: Binding = {
  topic: levelOnCanalTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "spot")
        .filter(({ body }) => body.is === "level")
        .map((level) => depthOf(level, context)),
    ),
};

function depthOf(level: MarkOf<"spot">, context: BindingContext): Question | Gap {
  const { id, body } = level;
  const subject = `levelOnCanal of ${id}`;
  const at = { input: "at", record: `${id}/at` };
  const gap = (why: string): Gap => ({ subject, why, inputPaths: [at] });
  if (body.canal === undefined) return gap("it is not known which canal the level lies on; name the canal");
  const course = courseOnFilm(context.parts, body.film, body.canal);
  if (course === undefined) return gap(`trace ${body.canal} on this film: the level is read along its course`);
  const measured = measuredOnFilm(level, context);
  if (measured === undefined) return gap(noScaleWhy);
  return {
    subject,
    input: {
      at: measured.placeInMm(body.at),
      course: measured.inMm(course.body.points),
      from: startOfTrace(course, context.parts),
      ...(body.what === "" ? {} : { what: body.what }),
      ...measured.errors,
    },
    inputPaths: [
      at,
      measured.scalePath("at"),
      { input: "course", record: `${course.id}/points` },
      { input: "from", record: `${course.id}/from` },
      ...(body.what === "" ? [] : [{ input: "what", record: `${id}/what` }]),
      ...measured.errorPaths,
    ],
  };
}
