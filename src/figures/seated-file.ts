import { calloutNodes } from "./callouts.ts";
import { courseEnds, courseLine, scaleBar } from "./course-lines.ts";
import { type CoursePoint, type DrawnCourse, drawnCourse } from "./drawn-course.ts";
import { type StrainProfile, stepColour, strainLegend, strainStretches, strainText } from "./strain-ramp.ts";
import { element, type Figure, figureOf, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** A file in its seat in a canal. */
export interface SeatedFile {
  /** As `25/.06`. */
  readonly name: string;
  /** Of the canal, orifice first, mm; at least two points, of a film or of space. */
  readonly course: readonly CoursePoint[];
  readonly tipDepthMm: number;
  /** Strain along the seated part, from the tip on. */
  readonly profile: StrainProfile;
  /** From the tip on, mm. */
  readonly diameters: readonly { readonly atMm: number; readonly diameterMm: number }[];
  /** Where it is bent most; absent in a straight canal. */
  readonly tightest?: { readonly fromTipMm: number; readonly strain: number } | undefined;
  /** Where the course begins, in words; the orifice where absent. */
  readonly beginsAt?: string | undefined;
  /** What the strain says about the true one. */
  readonly bound: string;
  /** A place that is pointed at, mm from the tip. */
  readonly placeMm?: number | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 440;
const seat = { left: 16, right: 214, top: 14, bottom: 300 } as const;
const column = { left: 226, right: width - 4, top: 4 } as const;
/** A file thinner than this could not be seen. */
const thinnestPx = 2.2;

/**
 * A file seated in the course of its canal at true scale, its strain in the colours of the ramp, with the place where it is
 * bent most. A course in space is seen square to the plane that it lies in best.
 */
export function seatedFile(given: SeatedFile): Figure {
  const theme = themes[given.theme];
  const course = drawnCourse(given.course, seat);
  const callouts = calloutNodes(calloutsOf(given, course), { ...column, theme });
  const foot = Math.max(seat.bottom, callouts.foot) + 26;
  const nodes = [
    courseLine(course, theme),
    ...fileNodes(given, course, theme),
    ...courseEnds(course, theme),
    ...callouts.nodes,
    ...markNodes(given, course, theme),
    ...scaleBar(course, { x: seat.left, y: foot }, theme),
    labelNode({ text: "strain, %:", x: 16, y: foot + 28, size: 11.5, fill: theme.quiet }),
    ...strainLegend({ x: 76, y: foot + 28 }, theme, given.theme),
  ];
  return figureOf({ width, height: foot + 38 }, given.widthPx, alternativeOf(given), nodes);
}

const depthOf = ({ tipDepthMm }: SeatedFile, fromTipMm: number): number => tipDepthMm - fromTipMm;

/** The file stretch by stretch, each as broad as it is there; over 10 % it is crossed by strokes as well. */
function fileNodes(given: SeatedFile, course: DrawnCourse, theme: Theme): SvgNode[] {
  return strainStretches(given.profile).flatMap(({ fromMm, toMm, step }) => {
    const places = stepsBetween(fromMm, Math.min(toMm, given.tipDepthMm));
    const side = (sign: 1 | -1) =>
      places.map((mm) => course.beside(depthOf(given, mm), (sign * thickness(given, mm, course)) / 2));
    const body = element("path", {
      "data-part": "file",
      "data-step": step,
      d: pathThrough([...side(1), ...side(-1).reverse()], true),
      ...{ fill: stepColour(step, given.theme), stroke: theme.ink, "stroke-width": 0.5 },
    });
    return step < 4 ? [body] : [body, strokesAcross(given, course, { places, theme })];
  });
}

const stepsBetween = (fromMm: number, toMm: number): readonly number[] => {
  const count = Math.max(1, Math.ceil((toMm - fromMm) / 0.25));
  return Array.from({ length: count + 1 }, (_, at) => fromMm + ((toMm - fromMm) * at) / count);
};

function thickness({ diameters }: SeatedFile, mm: number, { perMm }: DrawnCourse): number {
  const after = diameters.findIndex(({ atMm }) => atMm >= mm);
  const end = diameters[after < 0 ? diameters.length - 1 : after];
  const start = diameters[after - 1] ?? end;
  if (start === undefined || end === undefined) return thinnestPx / perMm;
  const share = end.atMm > start.atMm ? (mm - start.atMm) / (end.atMm - start.atMm) : 0;
  return Math.max(thinnestPx / perMm, start.diameterMm + (end.diameterMm - start.diameterMm) * share);
}

function strokesAcross(
  given: SeatedFile,
  course: DrawnCourse,
  { places, theme }: { readonly places: readonly number[]; readonly theme: Theme },
): SvgNode {
  const d = places
    .map((mm) => {
      const half = thickness(given, mm, course) / 2 + 0.16;
      return pathThrough([course.beside(depthOf(given, mm), -half), course.beside(depthOf(given, mm), half)]);
    })
    .join("");
  return element("path", { "data-part": "overTen", d, stroke: theme.ink, "stroke-width": 1, fill: "none" });
}

const round = { tightest: 7, place: 5 } as const;

function markNodes(given: SeatedFile, course: DrawnCourse, theme: Theme): SvgNode[] {
  const at = (mm: number) => course.at(depthOf(given, mm));
  const { tightest, placeMm } = given;
  const place = placeMm === undefined ? undefined : at(placeMm);
  const ring = tightest === undefined ? undefined : at(tightest.fromTipMm);
  return [
    ...(ring === undefined
      ? []
      : [
          element("circle", {
            "data-part": "tightest",
            ...{ cx: ring.x, cy: ring.y, r: round.tightest, fill: "none", stroke: theme.accent, "stroke-width": 2.2 },
          }),
        ]),
    ...(place === undefined
      ? []
      : [
          element("path", {
            "data-part": "place",
            d: `M${numberText(place.x - 6)} ${numberText(place.y)}l6 -6l6 6l-6 6z`,
            ...{ fill: theme.ink, stroke: theme.surface, "stroke-width": 1.2 },
          }),
        ]),
  ];
}

function calloutsOf(given: SeatedFile, course: DrawnCourse) {
  const { tightest, tipDepthMm, name, bound } = given;
  const tip = {
    near: course.at(tipDepthMm),
    title: `tip of ${name}`,
    says: `${tipDepthMm.toFixed(1)} mm from ${startOf(given)}`,
  };
  const orifice = { near: course.at(0), title: startOf(given).replace("the ", "") };
  const most =
    tightest === undefined
      ? { near: course.at(tipDepthMm / 2), title: "straight", says: bound }
      : {
          near: course.at(depthOf(given, tightest.fromTipMm)),
          title: `most ${strainText(tightest.strain)}`,
          says: `${placesWords(given, tightest.fromTipMm)}; ${bound}`,
          isAccent: true,
        };
  return [orifice, most, tip];
}

const placesWords = (given: SeatedFile, fromTipMm: number): string =>
  `${fromTipMm.toFixed(1)} mm from the tip, ${depthOf(given, fromTipMm).toFixed(1)} mm from ${startOf(given)}`;

const startOf = ({ beginsAt = "the orifice" }: SeatedFile): string => beginsAt;

function alternativeOf(given: SeatedFile): string {
  const { name, tipDepthMm, tightest, bound, profile } = given;
  const most =
    tightest === undefined
      ? "The canal is straight there and does not bend it"
      : `It is bent most ${placesWords(given, tightest.fromTipMm)}: strain ${strainText(tightest.strain)}`;
  const over = profile.some(({ strain }) => strain > 0.1) ? " A part of it is bent beyond 10 %." : "";
  const view = given.course[0]?.length === 3 ? "seen square to the plane that it lies in best" : "as the film shows it";
  return `File ${name} seated in its canal, ${view}. Its tip lies ${tipDepthMm.toFixed(1)} mm from ${startOf(given)}. ${most}; ${bound}.${over}`;
}
