import { calloutNodes } from "./callouts.ts";
import { courseEnds, courseLine, scaleBar } from "./course-lines.ts";
import { type CoursePoint, type DrawnCourse, drawnCourse } from "./drawn-course.ts";
import { element, type Figure, figureOf, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** What the straight path leaves of one side. */
export interface SightWall {
  readonly side: string;
  readonly toCutMm: number;
  /** Absent where the wall is not known. */
  readonly leftMm?: number | undefined;
}

/** The straight line from the orifice to the head of a fragment. */
export interface SightLine {
  /** Of the canal, orifice first, mm; of a film or of space. */
  readonly course: readonly CoursePoint[];
  readonly headDepthMm: number;
  /** How far the orifice is moved away from the inner wall; 0 where absent. */
  readonly orificeShiftMm?: number | undefined;
  /** The largest distance of the course from the line, and where along the canal. */
  readonly maxOffset: { readonly mm: number; readonly atMm: number };
  readonly walls?: readonly SightWall[] | undefined;
  /** What became of the path, as `refused: ...`. */
  readonly verdict?: string | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 440;
const seat = { left: 16, right: 204, top: 16, bottom: 280 } as const;
const column = { left: 216, right: width - 4, top: 4 } as const;

/** The canal with the straight line to the head beside it, the largest distance between both, and what it leaves. */
export function sightLine(given: SightLine): Figure {
  const theme = themes[given.theme];
  const course = drawnCourse(given.course, seat, 1.2 + (given.orificeShiftMm ?? 0));
  const line = lineOf(given, course);
  const callouts = calloutNodes(calloutsOf(given, course, line), { ...column, theme });
  const foot = Math.max(seat.bottom, callouts.foot) + 26;
  const nodes = [
    courseLine(course, theme),
    ...courseEnds(course, theme),
    ...lineNodes(given, course, line, theme),
    ...callouts.nodes,
    ...scaleBar(course, { x: seat.left, y: foot }, theme),
  ];
  return figureOf({ width, height: foot + 14 }, given.widthPx, alternativeOf(given), nodes);
}

interface Line {
  readonly from: Spot;
  readonly to: Spot;
  /** Where the course is farthest from it, on the course and on the line. */
  readonly onCourse: Spot;
  readonly onLine: Spot;
}

/** The inner wall lies where the chord does; the orifice is moved to the other side of the canal. */
function lineOf({ headDepthMm, orificeShiftMm = 0, maxOffset }: SightLine, course: DrawnCourse): Line {
  const to = course.at(headDepthMm);
  const middle = headDepthMm / 2;
  const chord = nearestOn(course.at(0), to, course.at(middle));
  const right = course.beside(middle, 1);
  const at = course.at(middle);
  const inner = (chord.x - at.x) * (right.x - at.x) + (chord.y - at.y) * (right.y - at.y) >= 0 ? 1 : -1;
  const from = course.beside(0, -inner * orificeShiftMm);
  const onCourse = course.at(maxOffset.atMm);
  return { from, to, onCourse, onLine: nearestOn(from, to, onCourse) };
}

function nearestOn(from: Spot, to: Spot, spot: Spot): Spot {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const square = x * x + y * y;
  const share = square < 1e-9 ? 0 : ((spot.x - from.x) * x + (spot.y - from.y) * y) / square;
  return { x: from.x + share * x, y: from.y + share * y };
}

function lineNodes({ headDepthMm }: SightLine, course: DrawnCourse, line: Line, theme: Theme): SvgNode[] {
  const head = [course.beside(headDepthMm, -0.5), course.beside(headDepthMm, 0.5)];
  return [
    element("path", {
      "data-part": "sight",
      d: pathThrough([line.from, line.to]),
      ...{ stroke: theme.ink, "stroke-width": 1.8, "stroke-dasharray": "7 4", fill: "none" },
    }),
    element("path", {
      "data-part": "offset",
      d: pathThrough([line.onCourse, line.onLine]),
      ...{ stroke: theme.accent, "stroke-width": 2.2, fill: "none" },
    }),
    element("path", {
      "data-part": "head",
      d: pathThrough(head),
      ...{ stroke: theme.ink, "stroke-width": 4, "stroke-linecap": "round", fill: "none" },
    }),
  ];
}

const wallWords = ({ side, toCutMm, leftMm }: SightWall): string =>
  `${side}: ${toCutMm.toFixed(1)} mm to cut, ${leftMm === undefined ? "wall not known" : leftMm < 0 ? `${(-leftMm).toFixed(1)} mm beyond the root` : `${leftMm.toFixed(1)} mm left`}`;

const shiftWords = ({ orificeShiftMm = 0 }: SightLine): string =>
  orificeShiftMm > 0 ? `moved ${orificeShiftMm.toFixed(1)} mm away from the inner wall` : "not moved";

function calloutsOf(given: SightLine, course: DrawnCourse, line: Line) {
  const { maxOffset, walls = [], verdict, headDepthMm } = given;
  const said = [...walls.map(wallWords), ...(verdict === undefined ? [] : [verdict])].join("; ");
  return [
    { near: line.from, title: "orifice", says: shiftWords(given) },
    {
      near: line.onCourse,
      title: `${maxOffset.mm.toFixed(2)} mm off the straight line`,
      says: `${maxOffset.atMm.toFixed(1)} mm from the orifice${said === "" ? "" : `; ${said}`}`,
      isAccent: true,
    },
    { near: course.at(headDepthMm), title: "head of the piece", says: `${headDepthMm.toFixed(1)} mm from the orifice` },
  ];
}

function alternativeOf(given: SightLine): string {
  const { headDepthMm, maxOffset, walls = [], verdict } = given;
  const sides = walls.length === 0 ? "" : ` Walls: ${walls.map(wallWords).join("; ")}.`;
  const told = verdict === undefined ? "" : ` ${verdict.replace(/\.$/, "")}.`;
  return `Straight line from the orifice to the head of the piece, ${headDepthMm.toFixed(1)} mm deep. The orifice is ${shiftWords(given)}. The canal lies at most ${maxOffset.mm.toFixed(2)} mm off the line, ${maxOffset.atMm.toFixed(1)} mm from the orifice.${sides}${told}`;
}
