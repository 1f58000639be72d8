import { type LabelWish, placedLabels } from "./film-labels.ts";
import { element, type Figure, figureOf, group, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";

/** A closed outline in pixels of the film, [u to the right, v down]. */
type Outline = readonly (readonly [number, number])[];

/** A film's size, and lesions on it as they were and as they are. */
export interface LesionThenAndNow {
  readonly columns: number;
  readonly rows: number;
  readonly before: readonly Outline[];
  readonly after: readonly Outline[];
}

/** Bright on a grey film; the two differ in dash as well as in hue. */
const pens = {
  before: { stroke: "#b6f2e2", dashed: true },
  after: { stroke: "#ff9a5c", dashed: false },
} as const;
const rim = "#0b0a0a";

/**
 * Outlines of lesions at two dates, as a drawing to lay over a film: its view is the film's own pixels. What was is broken
 * lines, what is now whole ones; each outline is named.
 */
export function lesionThenAndNow({ columns, rows, before, after }: LesionThenAndNow): Figure {
  const unit = Math.max(columns, rows) / 480;
  const all = [
    ...before.map((outline) => ({ outline, when: "before" as const })),
    ...after.map((outline) => ({ outline, when: "after" as const })),
  ];
  const wishes = all.flatMap(({ outline, when }): LabelWish[] => {
    const near = when === "before" ? leftmost(outline) : rightmost(outline);
    return near === undefined ? [] : [{ text: when, near, fill: pens[when].stroke }];
  });
  const drawn = all.flatMap(({ outline }) => outline.map(spotOf));
  const labels = placedLabels(wishes, drawn, { width: columns - 1, height: rows - 1, size: 14 * unit, halo: rim });
  const lines = all.flatMap(({ outline, when }) => outlineNodes(outline, when, unit));
  // The first pixel's middle is [0, 0], its corner the view's.
  const shifted = group({ transform: "translate(0.5 0.5)" }, [...lines, ...labels.map(labelNode)]);
  return figureOf({ width: columns, height: rows }, columns, alternativeOf(before.length, after.length), [shifted]);
}

const spotOf = ([x, y]: readonly [number, number]): Spot => ({ x, y });
const leftmost = (outline: Outline): Spot | undefined => outline.map(spotOf).sort((a, b) => a.x - b.x)[0];
const rightmost = (outline: Outline): Spot | undefined => outline.map(spotOf).sort((a, b) => b.x - a.x)[0];

function outlineNodes(outline: Outline, when: "before" | "after", unit: number): SvgNode[] {
  const { stroke, dashed } = pens[when];
  const d = pathThrough(outline.map(spotOf), true);
  const line = { d, fill: "none", "stroke-linejoin": "round" } as const;
  return [
    element("path", { ...line, stroke: rim, "stroke-width": round(4.1 * unit), "stroke-opacity": 0.7 }),
    element("path", {
      ...{ "data-part": when, ...line, stroke, "stroke-width": round(1.7 * unit) },
      ...(dashed ? { "stroke-dasharray": `${round(6 * unit)} ${round(3.5 * unit)}` } : {}),
    }),
  ];
}

const round = (value: number): number => Math.round(value * 100) / 100 || 0;

function alternativeOf(before: number, after: number): string {
  if (before + after === 0) return "No lesion is outlined.";
  const count = (many: number, when: string): string[] =>
    many === 0 ? [] : [`${many === 1 ? "one lesion" : `${many} lesions`} as outlined ${when}`];
  return `Outlines on the film: ${[...count(before, "before"), ...count(after, "after")].join("; ")}.`;
}
