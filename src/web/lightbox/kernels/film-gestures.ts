import type { FilmLook } from "../../../imaging/looked-at.ts";
import type { ConstructionName } from "../../../pages/on-film/construction-measure.ts";
import type { Gesture, Operation } from "../../../record/change.ts";
import { capital } from "../../words/capital.ts";
import type { Polarity } from "../tools/tool-step.ts";
import { type Course, pointsOfCourse } from "./course-segments.ts";
import { recordedLook } from "./film-look.ts";
import { type Film, filmName } from "./film-name.ts";
import type { FilmOrientation } from "./film-placement.ts";
import { pairOf } from "./film-point.ts";
import type { GreyWindow } from "./grey-window.ts";
import { type BodyOfShape, type Mark, type MarkBody, markName } from "./mark-shape.ts";

/** A film in a case, with the day from which its days are counted. */
export interface FilmInCase {
  readonly film: Film;
  readonly presentedOn: string;
}

const asRecorded = (course: Course) => ({
  anchors: course.anchors.map(pairOf),
  points: pointsOfCourse(course).map(pairOf),
});

/** A course as the record keeps it: dark lines are a canal, bright ones what the film's purpose lets expect. */
export const traceBody = (film: Film, course: Course, polarity: Polarity): BodyOfShape<"trace"> => ({
  ...{ shape: "trace", film: film.id, polarity },
  kind: polarity === "dark" ? "canal" : brightOn(film),
  ...asRecorded(course),
});

/** A bright line is an instrument on a film for length, else a filling; the person may say otherwise. */
const brightOn = ({ body: { purpose } }: Film): "instrument" | "filledCanal" =>
  purpose === "workingLength" || purpose === "masterCone" ? "instrument" : "filledCanal";

/** A fragment as the record keeps it. */
export const fragmentBody = (film: string, course: Course): BodyOfShape<"fragment"> => ({
  ...{ shape: "fragment", film },
  ...asRecorded(course),
});

/** A mark that belongs to a canal or a root. */
export type BoundBody = BodyOfShape<"trace" | "fragment" | "crownRoot" | "wall" | "spot">;

/** A new mark on a film, in words: "MB1 traced on the film of day 0". */
export function markMade(id: string, body: MarkBody, on: FilmInCase): Gesture {
  const where = filmName(on.film, on.presentedOn);
  return { words: `${madeWords(body)} on ${where}`, operations: [putNew(id, body)] };
}

function madeWords(body: MarkBody): string {
  switch (body.shape) {
    case "trace":
      return `${body.canal ?? "Canal"} traced`;
    case "knownLength":
      return `Known length of ${body.lengthMm} mm marked`;
    case "distance":
      return "Distance marked";
    case "outline":
      return "Outline drawn";
    case "spot":
      return body.is === undefined ? "Spot marked" : `${capital(markName(body))} marked`;
    case "fragment":
      return `${capital(markName(body))} drawn`;
    case "crownRoot":
    case "wall":
      return `${capital(markName(body))} measured`;
  }
}

/** A mark with another form. */
export const markReshaped = (mark: Mark, body: MarkBody, on: FilmInCase): Gesture => ({
  words: `${capital(markName(body))} moved on ${filmName(on.film, on.presentedOn)}`,
  operations: [put(mark, body)],
});

/** A mark under another name; for a course, bound to another canal. An empty name takes the name away. */
export function markNamed(mark: Mark, name: string, on: FilmInCase): Gesture {
  const before = capital(markName(mark.body));
  const words = name === "" ? `${before}: name taken away` : `${before} named ${name}`;
  const operations = [put(mark, namedBody(mark.body, name))];
  return { words: `${words} on ${filmName(on.film, on.presentedOn)}`, operations };
}

function namedBody(body: MarkBody, name: string): MarkBody {
  if (body.shape === "knownLength") return body;
  if (body.shape === "distance" || body.shape === "outline" || (body.shape === "spot" && body.is === undefined))
    return { ...body, what: name };
  return boundTo(body, name);
}

/** A mark bound to a canal (crown and root: to a root), or to none; an apex carries the name in its words as well. */
export function boundTo(body: BoundBody, name: string): BoundBody {
  if (body.shape === "crownRoot") {
    const { root: _root, ...unbound } = body;
    return name === "" ? unbound : { ...unbound, root: name };
  }
  const { canal: _canal, ...rest } = body;
  const unbound = rest.shape === "spot" && rest.is === "apex" ? { ...rest, what: `apex ${name}`.trim() } : rest;
  return name === "" ? unbound : { ...unbound, canal: name };
}

/** A mark with another fact of it said: "Distal wall: side said on ..". */
export const markSaid = (mark: Mark, body: MarkBody, said: string, on: FilmInCase): Gesture => ({
  words: `${capital(markName(body))}: ${said} on ${filmName(on.film, on.presentedOn)}`,
  operations: [put(mark, body)],
});

/** A course with the construction of a measure drawn over the film, or taken off it again. */
export function constructionDrawn(
  mark: Mark & { readonly body: BodyOfShape<"trace"> },
  { name, says }: { readonly name: ConstructionName; readonly says: string },
  on: FilmInCase,
): Gesture {
  const { drawn = [], ...bare } = mark.body;
  const isDrawn = drawn.includes(name);
  const rest = isDrawn ? drawn.filter((one) => one !== name) : [...drawn, name];
  const body = rest.length === 0 ? bare : { ...bare, drawn: rest };
  return markSaid(mark, body, `${says} ${isDrawn ? "no longer drawn" : "drawn"}`, on);
}

/** A mark taken off; nobody is asked because it can be taken back. */
export const markTakenOff = (mark: Mark, on: FilmInCase): Gesture => ({
  words: `${capital(markName(mark.body))} taken off ${filmName(on.film, on.presentedOn)}`,
  operations: [remove(mark)],
});

/** A film taken out of the case with everything that was marked on it. */
export const filmTakenOut = ({ film, presentedOn }: FilmInCase, marks: readonly Mark[]): Gesture => ({
  words: `${capital(filmName(film, presentedOn))} taken out${marks.length > 0 ? " with its marks" : ""}`,
  operations: [...marks.map(remove), { op: "remove", id: film.id, kind: "film", baseRevision: film.revision }],
});

/** How the film is looked at, kept with it; what was done to it comes in words: "Turned", "Gamma 1.4". */
export function filmViewed(
  { film, presentedOn }: FilmInCase,
  view: { readonly window: GreyWindow; readonly look: FilmLook; readonly orientation: FilmOrientation },
  did: string,
): Gesture {
  const { centre, width, invert } = view.window;
  const grey = { windowCentre: centre, windowWidth: width, invert, ...recordedLook(view.look) };
  const body = { ...film.body, view: { ...grey, ...view.orientation } };
  const operation: Operation = { op: "put", id: film.id, kind: "film", baseRevision: film.revision, body };
  return { words: `${did}: ${filmName(film, presentedOn)}`, operations: [operation] };
}

const putNew = (id: string, body: MarkBody): Operation => ({ op: "put", id, kind: "mark", baseRevision: 0, body });
const put = ({ id, revision }: Mark, body: MarkBody): Operation => ({
  op: "put",
  id,
  kind: "mark",
  baseRevision: revision,
  body,
});
const remove = ({ id, revision }: Mark): Operation => ({ op: "remove", id, kind: "mark", baseRevision: revision });
