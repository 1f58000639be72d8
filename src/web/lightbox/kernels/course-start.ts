import type { Gesture } from "../../../record/change.ts";
import type { FilmInCase } from "./film-gestures.ts";
import { type Film, filmName } from "./film-name.ts";
import { type Mark, type MarkBody, markName } from "./mark-shape.ts";

type Trace = Extract<MarkBody, { shape: "trace" }>;
/** Where a course begins. */
export type CourseStart = NonNullable<Trace["from"]>;

/** The places where a course can begin, each in words. */
export const startWords: Readonly<Record<CourseStart, string>> = {
  orifice: "the orifice",
  referencePoint: "the reference point",
};

/** Where a course on a film begins that says nothing of its own: on a film that measures length at the reference point. */
export const usualStart = ({ body: { purpose } }: Film): CourseStart =>
  purpose === "workingLength" || purpose === "masterCone" ? "referencePoint" : "orifice";

/** Where a course begins. */
export const startOfCourse = (body: Trace, film: Film): CourseStart => body.from ?? usualStart(film);

/** A course that begins elsewhere than was thought: its points stay, what they measure has another name. */
export const courseBegins = (
  mark: Mark,
  body: Trace,
  from: CourseStart,
  { film, presentedOn }: FilmInCase,
): Gesture => ({
  words: `${markName(body)} begins at ${startWords[from]} on ${filmName(film, presentedOn)}`.replace(/^./, (letter) =>
    letter.toUpperCase(),
  ),
  operations: [{ op: "put", id: mark.id, kind: "mark", baseRevision: mark.revision, body: { ...body, from } }],
});
