import { placedLabels } from "./film-labels.ts";
import type { FilmPoint } from "./film-measure.ts";
import { stepColour, strainStep } from "./strain-ramp.ts";
import { element, type Figure, figureOf, group, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";

/** The strain of a file on the film that its canal was traced on, in the film's pixels. */
export interface StrainOnFilm {
  readonly columns: number;
  readonly rows: number;
  /** Of the file that is meant, as `25/.06 in MB1`. */
  readonly name: string;
  /** The seated part, tip first, with the strain at each place. */
  readonly seated: readonly { readonly at: FilmPoint; readonly strain: number }[];
  /** Where it is bent most, in words. */
  readonly tightest?: { readonly at: FilmPoint; readonly label: string } | undefined;
  /** A place that is pointed at. */
  readonly place?: FilmPoint | undefined;
}

const rim = "#0b0a0a";
const [mark, ink] = ["#ff9a5c", "#efe9e0"];
const spotOf = ([x, y]: FilmPoint): Spot => ({ x, y });

/** The course of a seated file over its film, in the colours of the ramp, broader where it is bent more. */
export function strainOnFilm(given: StrainOnFilm): Figure {
  const { columns, rows, seated, tightest, name } = given;
  const unit = Math.max(columns, rows) / 480;
  const spots = seated.map(({ at }) => spotOf(at));
  const tip = spots[0];
  const wishes = [
    ...(tightest === undefined ? [] : [{ text: tightest.label, near: spotOf(tightest.at), fill: mark }]),
    ...(tip === undefined ? [] : [{ text: name, near: tip, fill: ink }]),
  ];
  const labels = placedLabels(wishes, spots, { width: columns - 1, height: rows - 1, size: 14 * unit, halo: rim });
  const nodes = [...strainLines(given, unit), ...labels.map(labelNode)];
  const shifted = group({ transform: "translate(0.5 0.5)" }, nodes);
  return figureOf({ width: columns, height: rows }, columns, alternativeOf(given), [shifted]);
}

/** The same without words, for a view that is zoomed: `unit` is how many of the film's pixels a line of 1 is wide. */
export const strainLines = (
  { seated, tightest, place }: Pick<StrainOnFilm, "seated" | "tightest" | "place">,
  unit: number,
): readonly SvgNode[] => [
  line(
    seated.map(({ at }) => spotOf(at)),
    { "stroke-width": 6.4 * unit, stroke: rim, "stroke-opacity": 0.7 },
  ),
  ...pieces(seated, unit),
  ...(tightest === undefined ? [] : ring(spotOf(tightest.at), unit)),
  ...(place === undefined ? [] : diamond(spotOf(place), unit)),
];

const line = (spots: readonly Spot[], pen: Readonly<Record<string, string | number>>): SvgNode =>
  element("path", {
    d: pathThrough(spots),
    fill: "none",
    "stroke-linecap": "round",
    "stroke-linejoin": "round",
    ...pen,
  });

function pieces(seated: StrainOnFilm["seated"], unit: number): SvgNode[] {
  return seated.slice(1).map((to, index) => {
    const from = seated[index] ?? to;
    const step = strainStep(Math.max(from.strain, to.strain));
    const pen = { stroke: stepColour(step, "film"), "stroke-width": (1.8 + 0.7 * step) * unit };
    return line([spotOf(from.at), spotOf(to.at)], { "data-part": "piece", "data-step": step, ...pen });
  });
}

const ring = ({ x, y }: Spot, unit: number): SvgNode[] =>
  [
    { stroke: rim, "stroke-width": 4.4 * unit, "stroke-opacity": 0.7 },
    { "data-part": "tightest", stroke: mark, "stroke-width": 2 * unit },
  ].map((pen) => element("circle", { cx: x, cy: y, r: 8 * unit, fill: "none", ...pen }));

const diamond = ({ x, y }: Spot, unit: number): SvgNode[] => {
  const far = 6 * unit;
  const corners = [
    { x, y: y - far },
    { x: x + far, y },
    { x, y: y + far },
    { x: x - far, y },
  ];
  return [
    element("path", {
      "data-part": "place",
      d: pathThrough(corners, true),
      ...{ fill: ink, stroke: rim, "stroke-width": 1.4 * unit },
    }),
  ];
};

function alternativeOf({ name, seated, tightest }: StrainOnFilm): string {
  const least = 100 * Math.min(...seated.map(({ strain }) => strain));
  const most = 100 * Math.max(...seated.map(({ strain }) => strain));
  const span = seated.length === 0 ? "nothing is drawn" : `strain ${least.toFixed(1)} to ${most.toFixed(1)} %`;
  const where = tightest === undefined ? "" : ` Marked: ${tightest.label}.`;
  return `Strain of ${name} on the film: ${span}.${where}`;
}
