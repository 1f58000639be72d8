import { crownRootTopic } from "../../core/radiograph/crown-root-topic.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Question } from "../binding.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";
import { clickSigmaPx, clickSigmaRecord, measuredOnFilm } from "../measured-on-film.ts";

/** The ratio of each crown and root that are marked on a film; without a scale in px, for the ratio alone. */
export const crownRootBinding: Binding = {
  topic: crownRootTopic,
  ask: (context) =>
    partsOf(context.parts, "film").flatMap((film) =>
      marksOn(context.parts, film.id, "crownRoot").map((mark) => ratioOf(mark, context)),
    ),
};

const places = ["crown", "level", "apex"] as const;

function ratioOf(mark: MarkOf<"crownRoot">, context: BindingContext): Question {
  const { id, body } = mark;
  const subject = `crownRoot of ${id}`;
  const { levelIs } = body;
  const paths = [...places, "levelIs"].map((field) => ({ input: field, record: `${id}/${field}` }));
  const measured = measuredOnFilm(mark, context);
  if (measured === undefined)
    return {
      subject,
      input: { ...placesIn(body, ([u, v]) => [u, v]), levelIs, unit: "px", sigmaPx: clickSigmaPx(mark, context) },
      inputPaths: [...paths, { input: "sigmaPx", record: clickSigmaRecord(mark) }],
    };
  return {
    subject,
    input: { ...placesIn(body, measured.placeInMm), levelIs, ...measured.errors },
    inputPaths: [...paths, measured.scalePath("crown"), ...measured.errorPaths],
  };
}

const placesIn = (
  body: MarkOf<"crownRoot">["body"],
  read: (place: readonly [number, number]) => [number, number],
): Record<string, [number, number]> => Object.fromEntries(places.map((name) => [name, read(body[name])]));
