import { type LabelWish, placedLabels } from "./film-labels.ts";
import { chainsOf, type FilmMeasure, kindWords, labelPlace } from "./film-measure.ts";
import { measureLines } from "./measure-lines.ts";
import { element, type Figure, figureOf, group, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";

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
      : [{ text: measure.label, near: spotOf(labelPlace(measure)), fill: pen.stroke }],
  );
  const drawnSpots = measures.flatMap((measure) => spotsAlong(measure, 6 * unit));
  const labels = placedLabels(wishes, drawnSpots, { width: columns - 1, height: rows - 1, size: 14 * unit, halo: rim });
  const nodes = drawn.map(({ measure, pen }) => measureNode(measure, pen, unit));
  // The first pixel's middle is [0, 0], its corner the view's.
  const shifted = group({ transform: "translate(0.5 0.5)" }, [...nodes, ...labels.map(labelNode)]);
  return figureOf({ width: columns, height: rows }, columns, alternativeOf(measures), [shifted]);
}

/** What is read off as a length or a ratio is warm; what follows or names the tooth is light. */
const warm: readonly FilmMeasure["kind"][] = ["known", "length", "crownRoot", "wall", "fragment"];
const usualPen = ({ kind }: FilmMeasure): Pen => (warm.includes(kind) ? pens.warm : pens.light);
const spotOf = ([x, y]: readonly [number, number]): Spot => ({ x, y });

/** Spots of a measure's lines no farther apart than a step, for labels to keep off. */
function spotsAlong(measure: FilmMeasure, step: number): readonly Spot[] {
  return chainsOf(measure).flatMap((chain) => {
    const corners = chain.map(spotOf);
    return corners.flatMap((from, at) => {
      const to = corners[at + 1] ?? from;
      const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
      return Array.from({ length: count }, (_, index) => ({
        x: from.x + ((to.x - from.x) * index) / count,
        y: from.y + ((to.y - from.y) * index) / count,
      }));
    });
  });
}

function measureNode(measure: FilmMeasure, pen: Pen, unit: number): SvgNode {
  const lines = measureLines(measure, unit);
  const width = 1.7 * unit;
  const dash = pen.dashed ? `${round(6 * unit)} ${round(3.5 * unit)}` : undefined;
  const path = (d: string, stroke: string, wide: number, dashes?: string): readonly SvgNode[] =>
    d === ""
      ? []
      : [
          element("path", {
            d,
            fill: "none",
            stroke,
            "stroke-width": round(wide),
            "stroke-linecap": dashes === undefined ? "round" : "butt",
            "stroke-linejoin": "round",
            "stroke-dasharray": dashes,
            "stroke-opacity": stroke === rim ? 0.7 : undefined,
          }),
        ];
  return group({ "data-part": measure.kind }, [
    ...path(lines.thin, rim, 0.9 * unit + 1.6 * unit),
    ...path(lines.main + lines.ends, rim, width + 2.4 * unit),
    ...path(lines.thin, pen.stroke, 0.9 * unit, `${round(2 * unit)} ${round(2.5 * unit)}`),
    ...path(lines.main, pen.stroke, width, dash),
    ...path(lines.ends, pen.stroke, width),
    ...(lines.disc === undefined ? [] : [dot(lines.disc, pen, unit)]),
  ]);
}

const dot = ({ x, y }: Spot, pen: Pen, unit: number): SvgNode =>
  element("circle", { cx: x, cy: y, r: round(3.2 * unit), fill: pen.stroke, stroke: rim, "stroke-width": round(unit) });

const round = (value: number): number => Math.round(value * 100) / 100 || 0;

function alternativeOf(measures: readonly FilmMeasure[]): string {
  if (measures.length === 0) return "Nothing is drawn on this film.";
  const said = measures.map(({ kind, label }) =>
    label === undefined || label === "" ? kindWords[kind] : `${kindWords[kind]} ${label}`,
  );
  return `Measures drawn on the film: ${said.join("; ")}.`;
}
