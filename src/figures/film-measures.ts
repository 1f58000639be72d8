import { type LabelWish, placedLabels } from "./film-labels.ts";
import { element, type Figure, figureOf, group, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";

/** A place in a film in pixels, [u to the right, v down]; [0, 0] is the middle of the first pixel. */
type FilmPoint = readonly [number, number];

/** Something drawn on a film. */
export type FilmMeasure = { readonly label?: string | undefined } & (
  | { /** A canal's course, from orifice to foramen. */ readonly kind: "trace"; readonly points: readonly FilmPoint[] }
  | { /** A border, closed. */ readonly kind: "outline"; readonly points: readonly FilmPoint[] }
  | { /** An object whose length is known. */ readonly kind: "known"; readonly from: FilmPoint; readonly to: FilmPoint }
  | { /** A distance. */ readonly kind: "length"; readonly from: FilmPoint; readonly to: FilmPoint }
  | { /** A point. */ readonly kind: "spot"; readonly at: FilmPoint }
);

/** A film's size and what is drawn on it. */
export interface FilmDrawing {
  readonly columns: number;
  readonly rows: number;
  readonly measures: readonly FilmMeasure[];
}

/** Two pens that differ in lightness and dash as well as in hue, both bright on a grey film; every line has a dark rim. */
const pens = { light: { stroke: "#b6f2e2", dashed: false }, warm: { stroke: "#ff9a5c", dashed: true } } as const;
type Pen = (typeof pens)[keyof typeof pens];
const rim = "#0b0a0a";

/**
 * What was measured on a film, as a drawing to lay over it: its view is the film's own pixels.
 * Takes the film's columns and rows and the measures in pixels; courses take the two pens in turn.
 * Gives lines that grow with the film's longer side, and labels that stay inside the frame.
 */
export function filmMeasures({ columns, rows, measures }: FilmDrawing): Figure {
  // An upright film is shown as high as a broad one is wide: the longer side sets the size of lines and letters.
  const unit = Math.max(columns, rows) / 480;
  let courses = 0;
  const drawn = measures.map((measure) => {
    const pen = measure.kind === "trace" && courses++ % 2 === 1 ? pens.warm : usualPen(measure);
    return { measure, pen };
  });
  const wishes = drawn.flatMap(({ measure, pen }): LabelWish[] =>
    measure.label === undefined || measure.label === ""
      ? []
      : [{ text: measure.label, near: labelSpot(measure), fill: pen.stroke }],
  );
  const drawnSpots = measures.flatMap((measure) => spotsAlong(measure, 6 * unit));
  const labels = placedLabels(wishes, drawnSpots, { width: columns - 1, height: rows - 1, size: 14 * unit, halo: rim });
  const nodes = drawn.map(({ measure, pen }) => measureNode(measure, pen, unit));
  // The first pixel's middle is [0, 0], its corner the view's.
  const shifted = group({ transform: "translate(0.5 0.5)" }, [...nodes, ...labels.map(labelNode)]);
  return figureOf({ width: columns, height: rows }, columns, alternativeOf(measures), [shifted]);
}

const usualPen = ({ kind }: FilmMeasure): Pen => (kind === "known" || kind === "length" ? pens.warm : pens.light);
const spotOf = ([x, y]: FilmPoint): Spot => ({ x, y });

/** Spots of a measure's lines no farther apart than a step, for labels to keep off. */
function spotsAlong(measure: FilmMeasure, step: number): readonly Spot[] {
  const corners = cornersOf(measure).map(spotOf);
  return corners.flatMap((from, at) => {
    const to = corners[at + 1] ?? from;
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
    return Array.from({ length: count }, (_, index) => ({
      x: from.x + ((to.x - from.x) * index) / count,
      y: from.y + ((to.y - from.y) * index) / count,
    }));
  });
}

function cornersOf(measure: FilmMeasure): readonly FilmPoint[] {
  if (measure.kind === "spot") return [measure.at];
  if (measure.kind === "trace") return measure.points;
  return measure.kind === "outline" ? [...measure.points, ...measure.points.slice(0, 1)] : [measure.from, measure.to];
}

/** The middle of a distance, the end of a course (its foramen), the highest point of a border. */
function labelSpot(measure: FilmMeasure): Spot {
  switch (measure.kind) {
    case "trace":
      return spotOf(measure.points.at(-1) ?? [0, 0]);
    case "outline":
      return spotOf([...measure.points].sort((a, b) => a[1] - b[1])[0] ?? [0, 0]);
    case "spot":
      return spotOf(measure.at);
    default:
      return spotOf([(measure.from[0] + measure.to[0]) / 2, (measure.from[1] + measure.to[1]) / 2]);
  }
}

function measureNode(measure: FilmMeasure, pen: Pen, unit: number): SvgNode {
  const lines = linesOf(measure, unit);
  const width = 1.7 * unit;
  const dash = pen.dashed ? `${round(6 * unit)} ${round(3.5 * unit)}` : undefined;
  const path = (d: string, stroke: string, wide: number, dashes?: string): SvgNode =>
    element("path", {
      d,
      fill: "none",
      stroke,
      "stroke-width": round(wide),
      "stroke-linecap": dashes === undefined ? "round" : "butt",
      "stroke-linejoin": "round",
      "stroke-dasharray": dashes,
      "stroke-opacity": stroke === rim ? 0.7 : undefined,
    });
  return group({ "data-part": measure.kind }, [
    path(lines.main + lines.ends, rim, width + 2.4 * unit),
    ...(lines.main === "" ? [] : [path(lines.main, pen.stroke, width, dash)]),
    ...(lines.ends === "" ? [] : [path(lines.ends, pen.stroke, width)]),
    ...(lines.foramen === undefined ? [] : [dot(lines.foramen, pen, unit)]),
  ]);
}

interface MeasureLines {
  readonly main: string;
  readonly ends: string;
  readonly foramen?: Spot;
}

/** The lines of a measure: what may be dashed, and the end markers, which never are. */
function linesOf(measure: FilmMeasure, unit: number): MeasureLines {
  switch (measure.kind) {
    case "trace": {
      const spots = measure.points.map(spotOf);
      const [first, last] = [spots[0], spots.at(-1)];
      if (first === undefined || last === undefined) return { main: "", ends: "" };
      return { main: pathThrough(spots), ends: circlePath(first, 4 * unit), foramen: last };
    }
    case "outline":
      return { main: pathThrough(measure.points.map(spotOf), true), ends: "" };
    case "spot": {
      const { x, y } = spotOf(measure.at);
      const arm = 7 * unit;
      const across =
        pathThrough([
          { x: x - arm, y },
          { x: x + arm, y },
        ]) +
        pathThrough([
          { x, y: y - arm },
          { x, y: y + arm },
        ]);
      return { main: "", ends: across + circlePath({ x, y }, 4 * unit) };
    }
    default:
      return segmentLines(spotOf(measure.from), spotOf(measure.to), unit);
  }
}

/** A line with a tick across each end. */
function segmentLines(from: Spot, to: Spot, unit: number): MeasureLines {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const half = 5 * unit;
  const normal =
    length === 0 ? { x: half, y: 0 } : { x: (-(to.y - from.y) / length) * half, y: ((to.x - from.x) / length) * half };
  const tick = ({ x, y }: Spot): string =>
    pathThrough([
      { x: x - normal.x, y: y - normal.y },
      { x: x + normal.x, y: y + normal.y },
    ]);
  return { main: pathThrough([from, to]), ends: tick(from) + tick(to) };
}

/** The foramen: a full disc, so that the two ends of a course differ in shape. */
const dot = ({ x, y }: Spot, pen: Pen, unit: number): SvgNode =>
  element("circle", { cx: x, cy: y, r: round(3.2 * unit), fill: pen.stroke, stroke: rim, "stroke-width": round(unit) });

const circlePath = ({ x, y }: Spot, radius: number): string =>
  `M${round(x - radius)} ${round(y)}a${round(radius)} ${round(radius)} 0 1 0 ${round(2 * radius)} 0a${round(radius)} ${round(radius)} 0 1 0 ${round(-2 * radius)} 0`;

const round = (value: number): number => Math.round(value * 100) / 100 || 0;

const kindWords = {
  trace: "canal course",
  outline: "outline",
  known: "known length",
  length: "distance",
  spot: "point",
} as const;

function alternativeOf(measures: readonly FilmMeasure[]): string {
  if (measures.length === 0) return "Nothing is drawn on this film.";
  const said = measures.map(({ kind, label }) =>
    label === undefined || label === "" ? kindWords[kind] : `${kindWords[kind]} ${label}`,
  );
  return `Measures drawn on the film: ${said.join("; ")}.`;
}
