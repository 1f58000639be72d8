import { pointsInPlane } from "../../core/radiograph/points-in-plane.ts";
import { px } from "../../core/units.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { BindingContext } from "../binding.ts";
import { type FilmScaleFound, filmScale } from "../film-scale.ts";
import { marksOn } from "../marks-on.ts";
import { type CanalOnFilm, filmName } from "./canal-on-film.ts";

type Place = [number, number];

/** One film as a view of the topic, how sure its points and scale are, and where each value came from. */
export interface ViewOfFilm {
  readonly view: { readonly points: readonly Place[] } & Readonly<Record<string, unknown>>;
  readonly sigmaMm: number;
  readonly relativeSigma: number | undefined;
  readonly paths: readonly InputPath[];
}

/** A film as the view of that index, with the spots of the names given as landmarks. Takes a film that has a scale. */
export function viewOfFilm(
  course: CanalOnFilm,
  index: number,
  { names, context }: { names: readonly string[]; context: BindingContext },
): ViewOfFilm {
  const { film, trace } = course;
  const scale = filmScale(context, film.id);
  if (scale === undefined) throw new RangeError(`${filmName(course)} has no scale, which is a gap`);
  const spots = landmarksOn(context.parts, film.id).filter(({ body }) => names.includes(body.what));
  const landmarks = Object.fromEntries(spots.map(({ body }) => [body.what, inMm([body.at], scale)[0]]));
  const { horizontalAngleDeg, verticalAngleDeg, uRunsTo } = film.body;
  const facts = { horizontalAngleDeg, uRunsTo, verticalAngleDeg };
  const known = Object.entries(facts).filter(([, value]) => value !== undefined);
  const sigmaPx = trace.body.sigmaPx ?? context.settings.clickSigmaPx;
  const at = `views[${index}]`;
  return {
    view: { ...Object.fromEntries(known), landmarks, points: inMm(trace.body.points, scale) },
    sigmaMm: sigmaPx * Math.sqrt(scale.mmPerPx.column * scale.mmPerPx.row),
    relativeSigma: scale.relativeSigma,
    paths: [
      ...known.map(([field]) => ({ input: `${at}.${field}`, record: `${film.id}/${field}` })),
      ...pathsOfPoints(course, at, scale),
      ...spots.map(({ id, body }) => ({ input: `${at}.landmarks.${body.what}`, record: `${id}/at` })),
    ],
  };
}

function pathsOfPoints({ trace }: CanalOnFilm, at: string, { entryId, relativeSigma }: FilmScaleFound): InputPath[] {
  const scale = relativeSigma === undefined ? [] : [`ledger/${entryId}/relativeSigma`];
  return [
    { input: `${at}.points`, record: `${trace.id}/points` },
    { input: `${at}.points`, record: `ledger/${entryId}/mmPerPx` },
    { input: "sigmaMm", record: trace.body.sigmaPx === undefined ? "settings/clickSigmaPx" : `${trace.id}/sigmaPx` },
    ...scale.map((record) => ({ input: "scaleRelativeSigma", record })),
  ];
}

const inMm = (points: readonly (readonly [number, number])[], { mmPerPx }: FilmScaleFound): Place[] =>
  pointsInPlane(
    points.map(([u, v]) => ({ column: px(u), row: px(v) })),
    mmPerPx,
  ).map(({ x, y }) => [x, y]);

/** The spots that may be seen on other films too: a level of a canal and a filling's end are of one canal and one day. */
const landmarksOn = (parts: BindingContext["parts"], film: string) =>
  marksOn(parts, film, "spot").filter(({ body }) => body.is === undefined || body.is === "apex");

/** The words of the spots that are marked once on every film. */
export function commonSpots(films: readonly CanalOnFilm[], { parts }: BindingContext): string[] {
  const words = films.map(({ film }) => landmarksOn(parts, film.id).map(({ body }) => body.what));
  const once = (word: string) => words.every((on) => on.filter((found) => found === word).length === 1);
  return (words[0] ?? []).filter((word) => word !== "" && once(word));
}
