import { type BreakName, breakMark } from "./break-marks.ts";
import { calloutNodes } from "./callouts.ts";
import { courseEnds, courseLine, scaleBar } from "./course-lines.ts";
import { type CoursePoint, type DrawnCourse, drawnCourse } from "./drawn-course.ts";
import { element, type Figure, figureOf, pathThrough, type SvgNode } from "./svg-tree.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** A break in its canal. */
export interface BreakInCanal {
  /** Of the canal, orifice first, mm; of a film or of space. */
  readonly course: readonly CoursePoint[];
  /** Of the tip when it broke, from the orifice. */
  readonly tipDepthMm: number;
  /** The piece; absent where it was not measured. */
  readonly fragment?: { readonly mm: number; readonly low: number; readonly high: number } | undefined;
  /** Where each explanation expects the break, mm from the tip; one without a place is not drawn. */
  readonly explanations: readonly {
    readonly name: BreakName;
    readonly words: string;
    readonly mean?: number | undefined;
    readonly sd?: number | undefined;
  }[];
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 440;
const seat = { left: 16, right: 204, top: 16, bottom: 300 } as const;
const column = { left: 216, right: width - 4, top: 4 } as const;

/** The canal's course with the piece lying in it, and where each explanation would have had it break. */
export function breakInCanal(given: BreakInCanal): Figure {
  const theme = themes[given.theme];
  const course = drawnCourse(given.course, seat, 1.2);
  const callouts = calloutNodes(calloutsOf(given, course), { ...column, theme });
  const foot = Math.max(seat.bottom, callouts.foot) + 26;
  const nodes = [
    courseLine(course, theme),
    ...courseEnds(course, theme),
    ...pieceNodes(given, course, theme),
    ...callouts.nodes,
    ...marks(given, course, theme),
    ...scaleBar(course, { x: seat.left, y: foot }, theme),
  ];
  return figureOf({ width, height: foot + 14 }, given.widthPx, alternativeOf(given), nodes);
}

const depthOf = ({ tipDepthMm }: BreakInCanal, fromTipMm: number): number => Math.max(0, tipDepthMm - fromTipMm);

/** The piece as a bar in the canal; the reach of its head, as its length is known, as a thin line beside it. */
function pieceNodes(given: BreakInCanal, course: DrawnCourse, theme: Theme): SvgNode[] {
  const { fragment, tipDepthMm } = given;
  if (fragment === undefined) return [];
  const reach = [fragment.low, fragment.high].map((mm) => course.beside(depthOf(given, mm), -0.7));
  return [
    element("path", {
      "data-part": "piece",
      d: pathThrough(course.part(depthOf(given, fragment.mm), tipDepthMm)),
      ...{ fill: "none", stroke: theme.accent, "stroke-width": 6, "stroke-linejoin": "round" },
    }),
    element("path", {
      "data-part": "head-between",
      d: pathThrough(reach),
      ...{ fill: "none", stroke: theme.accent, "stroke-width": 2 },
    }),
  ];
}

const placed = ({ explanations }: BreakInCanal) =>
  explanations.flatMap(({ mean, ...one }) => (mean === undefined ? [] : [{ ...one, mean }]));

/** Each place as its mark, with two standard deviations along the canal beside it. */
function marks(given: BreakInCanal, course: DrawnCourse, theme: Theme): SvgNode[] {
  return placed(given).flatMap(({ name, mean, sd = 0 }, at) => {
    const [high, low] = [depthOf(given, mean + 2 * sd), Math.min(given.tipDepthMm, depthOf(given, mean - 2 * sd))];
    const aside = 0.8 + 0.45 * at;
    const places = Array.from({ length: 13 }, (_, step) => course.beside(high + ((low - high) * step) / 12, aside));
    return [
      element("path", {
        "data-part": "spread",
        d: pathThrough(places),
        ...{ fill: "none", stroke: theme.ink, "stroke-width": 1.4, "stroke-opacity": 0.7 },
      }),
      breakMark(name, course.beside(depthOf(given, mean), aside), theme),
    ];
  });
}

function calloutsOf(given: BreakInCanal, course: DrawnCourse) {
  const { fragment } = given;
  const places = placed(given).map(({ words, mean, sd }, at) => ({
    near: course.beside(depthOf(given, mean), 0.8 + 0.45 * at),
    title: words,
    says: `expected ${fromOrifice(given, mean)}${sd === undefined ? "" : `, SD ${sd.toFixed(1)}`}`,
  }));
  const head =
    fragment === undefined
      ? []
      : [
          {
            near: course.at(depthOf(given, fragment.mm)),
            title: "head of the piece",
            says: headWords(given, fragment),
            isAccent: true,
          },
        ];
  return [{ near: course.at(0), title: "orifice" }, ...places, ...head];
}

const fromOrifice = (given: BreakInCanal, fromTipMm: number): string =>
  `${depthOf(given, fromTipMm).toFixed(1)} mm from the orifice`;

const headWords = (given: BreakInCanal, { mm, low, high }: NonNullable<BreakInCanal["fragment"]>): string =>
  `${fromOrifice(given, mm)} (${depthOf(given, high).toFixed(1)} to ${depthOf(given, low).toFixed(1)})`;

function alternativeOf(given: BreakInCanal): string {
  const { fragment, tipDepthMm, explanations } = given;
  const head =
    fragment === undefined ? "The piece was not measured" : `The head of the piece lies ${headWords(given, fragment)}`;
  const lines = explanations.map(({ words, mean, sd }) =>
    mean === undefined
      ? `${words}: expected anywhere.`
      : `${words}: expected ${fromOrifice(given, mean)}${sd === undefined ? "" : `, SD ${sd.toFixed(1)}`}.`,
  );
  return `The break in its canal. The tip lay ${tipDepthMm.toFixed(1)} mm from the orifice. ${head}. ${lines.join(" ")}`;
}
