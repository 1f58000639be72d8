import { z } from "zod";
import type { FilmMeasure, FilmPoint } from "../../figures/film-measure.ts";
import { mmToFilm } from "../../ledger/mm-to-film.ts";
import type { PartOf } from "../../record/parts.ts";
import type { LedgerReader } from "../ledger-reader.ts";
import { builtIn, type ConstructionName, constructionMeasure } from "./construction-measure.ts";

/** A mark on a film. */
export type Mark = PartOf<"mark">;

/**
 * What is drawn over a film for a mark: the mark itself, and what the ledger measured of it.
 * Takes the mark and the entries that hold. Gives measures in the film's own pixels, each with its value in words.
 */
export function measuresOfMark(mark: Mark, read: LedgerReader): FilmMeasure[] {
  const { body } = mark;
  const { film } = body;
  const toFilm = mmToFilm(read.entry(`calibrate of ${film}`));
  switch (body.shape) {
    case "trace":
      return [{ kind: "trace", points: body.points, label: courseWords(mark, read) }, ...constructionsOf(mark, read)];
    case "knownLength":
      return [{ kind: "known", from: body.from, to: body.to, label: `${body.lengthMm} mm` }];
    case "distance":
      return [{ kind: "length", from: body.from, to: body.to, label: body.what }];
    case "outline":
      return [{ kind: "outline", points: body.points, label: body.what }];
    case "spot":
      return spotMeasures(mark.id, body, { read, toFilm });
    case "fragment":
      return [{ kind: "fragment", points: body.points, label: valueWords(read, mark.id, "fragment") }];
    case "wall":
      return [{ kind: "wall", from: body.from, to: body.to, label: valueWords(read, mark.id, "wall") }];
    case "crownRoot": {
      const { crown, level, apex } = body;
      return [
        {
          kind: "crownRoot",
          crown,
          level,
          foot: footOf(mark, read, toFilm),
          apex,
          label: valueWords(read, mark.id, "crownRoot"),
        },
      ];
    }
  }
}

type ToFilm = ((place: readonly number[]) => FilmPoint) | undefined;

/** `MB1 19.2 mm`. */
function courseWords({ id, body }: Mark, read: LedgerReader): string {
  const length = read.number(`curvature of ${id}`, "lengthMm", 1)?.text;
  const canal = body.shape === "trace" ? body.canal : undefined;
  return [canal, length === undefined ? undefined : `${length} mm`].filter((piece) => piece !== undefined).join(" ");
}

/** The measures of a course that the person had drawn, each as it was built. */
function constructionsOf({ id, body }: Mark, read: LedgerReader): FilmMeasure[] {
  if (body.shape !== "trace" || body.drawn === undefined) return [];
  const entry = read.entry(`curvature of ${id}`);
  const built = builtIn(entry?.output);
  const toFilm = z.looseObject({ unit: z.literal("px") }).safeParse(entry?.input).success
    ? ([u = 0, v = 0]: readonly number[]): FilmPoint => [u, v]
    : mmToFilm(read.entry(`calibrate of ${body.film}`));
  if (built === undefined || toFilm === undefined) return [];
  return body.drawn.flatMap(
    (name) => constructionMeasure(built, name, toFilm, constructionWords(read, id, name)) ?? [],
  );
}

/** What is read off each construction, as a value of the entry. */
const readOff: Readonly<Record<ConstructionName, readonly [name: string, head: string, unit: string]>> = {
  schneider: ["schneiderDeg", "Schneider", "°"],
  weine: ["weineDeg", "Weine", "°"],
  pruett: ["pruettRadiusMm", "radius", "mm"],
  access: ["accessAngleDeg", "access", "°"],
  height: ["heightMm", "height", "mm"],
  tightest: ["minRadiusMm", "tightest", "mm"],
};

function constructionWords(read: LedgerReader, id: string, name: ConstructionName): string {
  const [value, head, unit] = readOff[name];
  const text = read.number(`curvature of ${id}`, value, unit === "°" ? 0 : 1)?.text;
  const turned = name === "pruett" ? read.number(`curvature of ${id}`, "pruettDeg", 0)?.text : undefined;
  const said = text === undefined ? undefined : `${head} ${text}${unit === "°" ? unit : ` ${unit}`}`;
  return [turned && `${turned}°`, said].filter((piece) => piece !== undefined && piece !== "").join(", ") || head;
}

/** The one value of each kind that stands beside its drawing. */
const besideDrawing = {
  fragment: ["fragmentOnFilm", "lengthMm", "fragment", 1, " mm"],
  wall: ["wallOnFilm", "thicknessMm", "wall", 1, " mm"],
  crownRoot: ["crownRoot", "crownToRoot", "crown to root", 2, ""],
} as const;

function valueWords(read: LedgerReader, id: string, kind: keyof typeof besideDrawing): string {
  const [topic, name, head, digits, unit] = besideDrawing[kind];
  const text = read.number(`${topic} of ${id}`, name, digits)?.text;
  return text === undefined ? head : `${head} ${text}${unit}`;
}

interface OnFilm {
  readonly read: LedgerReader;
  readonly toFilm: ToFilm;
}

const places = z.array(z.array(z.number()));
const place = z.array(z.number());

function spotMeasures(
  id: string,
  body: Extract<Mark["body"], { shape: "spot" }>,
  { read, toFilm }: OnFilm,
): FilmMeasure[] {
  if (body.is === "fillingEnd") {
    const subject = `fillingEnd of ${id}`;
    const way = placesIn(read, subject, "way", places)?.map((at) => toFilm?.(at) ?? body.at);
    const words = [body.canal, gapWords(read, subject)].filter((piece) => piece).join(" ");
    return way === undefined || way.length < 2
      ? [{ kind: "spot", at: body.at, label: words }]
      : [{ kind: "gap", points: way, label: words }];
  }
  if (body.is === "level") {
    const subject = `levelOnCanal of ${id}`;
    const depth = read.number(subject, "fromStartMm", 1)?.text;
    const label = [body.what, depth === undefined ? undefined : `${depth} mm`].filter((piece) => piece).join(" ");
    const along = placesIn(read, subject, "direction", place);
    const onCourse = placesIn(read, subject, "onCourse", place);
    if (along === undefined || onCourse === undefined || toFilm === undefined)
      return [{ kind: "spot", at: body.at, label }];
    const [from, to] = [toFilm(onCourse), toFilm(onCourse.map((value, axis) => value + (along[axis] ?? 0)))];
    return [{ kind: "level", at: from, along: [to[0] - from[0], to[1] - from[1]], label }];
  }
  return [{ kind: "spot", at: body.at, label: body.what === "" && body.is === "apex" ? "apex" : body.what }];
}

/** `1.2 mm short`, `0.4 mm beyond`, or the distance alone. */
function gapWords(read: LedgerReader, subject: string): string {
  const distance = read.number(subject, "distanceMm", 1)?.text;
  if (distance === undefined) return "filling's end";
  const lies = read.text(subject, "lies")?.text;
  if (lies === "short" || lies === "beyond") return `${distance} mm ${lies}`;
  return `${distance} mm from the apex`;
}

function footOf({ id, body }: Mark, read: LedgerReader, toFilm: ToFilm): FilmPoint {
  const subject = `crownRoot of ${id}`;
  const foot = placesIn(read, subject, "foot", place);
  const level = body.shape === "crownRoot" ? body.level : ([0, 0] as const);
  if (foot === undefined) return level;
  return toFilm === undefined ? [foot[0] ?? 0, foot[1] ?? 0] : toFilm(foot);
}

/** A list of numbers in an entry's output, read by its form. */
function placesIn<Value>(read: LedgerReader, subject: string, name: string, form: z.ZodType<Value>): Value | undefined {
  const output = read.entry(subject)?.output;
  return form.safeParse(typeof output === "object" && output !== null ? Reflect.get(output, name) : undefined).data;
}
