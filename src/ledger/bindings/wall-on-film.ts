import { wallOnFilmTopic } from "../../core/radiograph/wall-on-film-topic.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";
import { measuredOnFilm, noScaleWhy } from "../measured-on-film.ts";

/** The thickness of each wall that is marked on a film. */
export const wallOnFilmBinding: Binding = {
  topic: wallOnFilmTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "wall").map((wall) => thicknessOf(wall, context)),
    ),
};

function thicknessOf(wall: MarkOf<"wall">, context: BindingContext): Question | Gap {
  const { id, body } = wall;
  const subject = `wallOnFilm of ${id}`;
  const ends = [
    { input: "outer", record: `${id}/from` },
    { input: "canal", record: `${id}/to` },
  ];
  const measured = measuredOnFilm(wall, context);
  if (measured === undefined) return { subject, why: noScaleWhy, inputPaths: ends };
  return {
    subject,
    input: {
      outer: measured.placeInMm(body.from),
      canal: measured.placeInMm(body.to),
      ...(body.side === undefined ? {} : { side: body.side }),
      ...measured.errors,
    },
    inputPaths: [
      ...ends,
      measured.scalePath("outer"),
      ...(body.side === undefined ? [] : [{ input: "side", record: `${id}/side` }]),
      ...measured.errorPaths,
    ],
  };
}
