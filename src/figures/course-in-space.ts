import { type Eye, eyeOf } from "./eye-in-space.ts";
import { filmDashes } from "./film-dashes.ts";
import { acrossOn, cornersOf, type FilmFrame, type FilmInSpace, imageOf } from "./film-in-space.ts";
import { less, type Pose, poseWords, type ToothPlace } from "./seen-from.ts";
import { bandAround } from "./spread-band.ts";
import { element, type Figure, figureOf, group, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, rimmedLabel } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";
import { toothAxes } from "./tooth-axes.ts";

/** A canal's course in the axes of its tooth, as two films or more gave it. */
export interface CourseInSpace {
  readonly name: string;
  /** From orifice to foramen, mm; at least two places. */
  readonly course: readonly ToothPlace[];
  /** Standard deviations of places along the course, in order and at even steps; drawn as the band that holds 95 %. */
  readonly spread?: readonly ToothPlace[] | undefined;
  /** The films, the straightest first: its plane stands behind the canal with the canal's image on it. */
  readonly films: readonly FilmInSpace[];
  readonly pose: Pose;
  /** What lies to the right where the pose is straight on, and whether the apex is drawn down or up. */
  readonly rightIs: "distal" | "mesial";
  readonly apexIs: "down" | "up";
  /** A place of the course that is pointed at, as a share of its way. */
  readonly place?: number | undefined;
  /** What the side across from buccal is called. */
  readonly innerSide?: "lingual" | "palatal" | undefined;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const usualView = { width: 400, height: 310 } as const;
/** Air between canal and film plane, and beyond the canal on it, mm. */
const airMm = 1.5;

/**
 * A canal in space from any side: its course over the planes of its films with its image on each, the tooth's axes named,
 * the band in which single places lie, and a place on it that is pointed at.
 */
export function courseInSpace(given: CourseInSpace): Figure {
  const theme = themes[given.theme];
  const { letters = 1 } = given;
  // On a large drawing the names of the films lie in its empty corner; a small one has none.
  const top = letters > 1 ? legendLine * given.films.length : 0;
  const view = { width: usualView.width / letters, height: usualView.height / letters + top, top };
  const frames = framesOf(given);
  const eye = eyeOf(given, view, [...given.course, ...given.films.flatMap((film, at) => edgesOf(film, frames[at]))]);
  const nodes = [
    ...given.films.flatMap((film, at) => filmNodes(film, frames[at], { given, eye, theme, at })),
    ...toothAxes({ ...middleAndReach(given), innerSide: given.innerSide ?? "lingual" }, eye, theme),
    ...bandAround(given, eye, theme),
    ...courseNodes(given, eye, theme),
    ...placeNodes(given, frames, eye, theme),
  ];
  return figureOf(view, given.widthPx, alternativeOf(given), nodes);
}

/** Behind everything that the course reaches to lingual. */
function framesOf({ course, films }: CourseInSpace): readonly FilmFrame[] {
  const reach = Math.max(...course.map(([x, y]) => Math.hypot(x, y)));
  const behindMm = reach + airMm;
  const down = course.map(([, , z]) => z);
  const downMm = [Math.min(...down) - airMm, Math.max(...down) + airMm] as const;
  return films.map((film) => {
    const across = course.map((place) => acrossOn(film, behindMm, place));
    return { behindMm, acrossMm: [Math.min(...across) - 2 * airMm, Math.max(...across) + 2 * airMm], downMm };
  });
}

/** Where the cross of the axes stands: under the foramen, as wide as the course and a little more. */
function middleAndReach({ course }: CourseInSpace) {
  const [x, y] = [0, 1].map((axis) => {
    const along = course.map((place) => place[axis] ?? 0);
    return (Math.min(...along) + Math.max(...along)) / 2;
  });
  const reachMm = Math.max(2, ...course.map((place) => Math.hypot(place[0] - (x ?? 0), place[1] - (y ?? 0)))) + airMm;
  const zs = course.map(([, , z]) => z);
  return { x: x ?? 0, y: y ?? 0, fromMm: Math.min(...zs), floorMm: Math.max(...zs) + airMm, reachMm };
}

const edgesOf = (film: FilmInSpace, frame: FilmFrame | undefined): readonly ToothPlace[] =>
  frame === undefined ? [] : cornersOf(film, frame);

interface Brush {
  readonly given: CourseInSpace;
  readonly eye: Eye;
  readonly theme: Theme;
  readonly at: number;
}

function filmNodes(
  film: FilmInSpace,
  frame: FilmFrame | undefined,
  { given, eye, theme, at }: Brush,
): readonly SvgNode[] {
  if (frame === undefined) return [];
  const corners = cornersOf(film, frame).map(eye.spot);
  const image = given.course.map((place) => eye.spot(imageOf(film, frame.behindMm, place)));
  return [
    group({ "data-part": "film" }, [
      element("path", {
        d: pathThrough(corners, true),
        fill: theme.ink,
        "fill-opacity": 0.04,
        stroke: theme.hairline,
        "stroke-width": 1,
      }),
      element("path", {
        "data-part": "image",
        d: pathThrough(image),
        fill: "none",
        stroke: theme.quiet,
        "stroke-width": 1.6,
        "stroke-dasharray": filmDashes[at % filmDashes.length],
        "stroke-linejoin": "round",
      }),
    ]),
    ...legendNodes(film.name, at, theme),
  ];
}

const legendLine = 16;
/** The dashes of a film's image with its name, at the upper left, a line each. */
function legendNodes(name: string, at: number, theme: Theme): readonly SvgNode[] {
  const y = 16 + legendLine * at;
  return [
    element("path", {
      d: `M6 ${y - 4}h26`,
      stroke: theme.quiet,
      "stroke-width": 1.6,
      "stroke-dasharray": filmDashes[at % filmDashes.length],
    }),
    labelNode({ text: name, x: 38, y, size: 11.5, fill: theme.quiet }),
  ];
}

/** The course: thicker where it is nearer to the eye; a ring at the orifice, a disc at the foramen, as on a film. */
function courseNodes({ course, name }: CourseInSpace, eye: Eye, theme: Theme): readonly SvgNode[] {
  const [first, last] = [course[0], course.at(-1)];
  if (first === undefined || last === undefined) return [];
  const depths = course.map(eye.toward);
  const [far, near] = [Math.min(...depths), Math.max(...depths)];
  const spots = course.map(eye.spot);
  const pieces = spots.slice(1).map((to, at) => {
    const share = near - far < 0.2 ? 0.5 : ((depths[at] ?? far) - far) / (near - far);
    return element("path", {
      d: pathThrough([spots[at] ?? to, to]),
      fill: "none",
      stroke: theme.course,
      "stroke-width": 2.4 + 2.2 * share,
      "stroke-linecap": "round",
    });
  });
  const [start, end] = [eye.spot(first), eye.spot(last)];
  return [
    group({ "data-part": "course" }, pieces),
    element("circle", { cx: start.x, cy: start.y, r: 5, fill: theme.surface, stroke: theme.course, "stroke-width": 2 }),
    element("circle", { cx: end.x, cy: end.y, r: 4.5, fill: theme.course, stroke: theme.surface, "stroke-width": 1.2 }),
    ...rimmedLabel({
      ...{ text: name, x: start.x + 9, y: start.y + 1, size: 13, fill: theme.course },
      ...{ weight: "semibold", halo: theme.surface },
    }),
  ];
}

/** The place pointed at: on the course, on each film's image, and the rays between. */
function placeNodes(given: CourseInSpace, frames: readonly FilmFrame[], eye: Eye, theme: Theme): readonly SvgNode[] {
  const place = given.place === undefined ? undefined : placeOn(given.course, given.place);
  if (place === undefined) return [];
  const at = eye.spot(place);
  const images = given.films.flatMap((film, index) => {
    const frame = frames[index];
    return frame === undefined ? [] : [eye.spot(imageOf(film, frame.behindMm, place))];
  });
  return [
    ...images.flatMap((image) => [
      element("path", { d: pathThrough([at, image]), stroke: theme.accent, "stroke-width": 0.9, fill: "none" }),
      element("circle", { cx: image.x, cy: image.y, r: 2.6, fill: theme.accent }),
    ]),
    element("circle", {
      "data-part": "place",
      ...{ cx: at.x, cy: at.y, r: 5.5, fill: theme.surface, stroke: theme.accent, "stroke-width": 2 },
    }),
  ];
}

function placeOn(course: readonly ToothPlace[], share: number): ToothPlace | undefined {
  return course[Math.round(Math.min(1, Math.max(0, share)) * (course.length - 1))];
}

function alternativeOf({ name, course, films, pose, innerSide = "lingual" }: CourseInSpace): string {
  const [x = 0, y = 0, z = 0] = less(course.at(-1) ?? [0, 0, 0], course[0] ?? [0, 0, 0]);
  const widest = course.reduce(
    (most, place) => (Math.abs(place[1]) > Math.abs(most[1]) ? place : most),
    course[0] ?? [0, 0, 0],
  );
  const side = (value: number, above: string, below: string): string =>
    `${Math.abs(value).toFixed(1)} mm to ${value >= 0 ? above : below}`;
  const end = `Its foramen lies ${side(x, "distal", "mesial")}, ${side(y, "buccal", innerSide)} and ${Math.abs(z).toFixed(1)} mm ${z >= 0 ? "apical" : "coronal"} of its orifice`;
  const far = `it comes as far as ${side(widest[1], "buccal", innerSide)}`;
  const behind = films.length === 0 ? "" : ` Behind it its image on ${films.map((film) => film.name).join(" and ")}.`;
  return `Canal ${name} in space, seen ${poseWords(pose)}. ${end}; ${far}.${behind}`;
}
