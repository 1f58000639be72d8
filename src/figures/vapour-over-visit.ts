import { type Axes, axesOf } from "./graph-axes.ts";
import { element, type Figure, figureOf, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";
import { type PanelPlace, panelLabels, panelLimits, type VapourLimit } from "./vapour-limits.ts";

/** A concentration at a time, with the least and the most over the rates of evaporation. */
interface VapourPoint {
  readonly tMin: number;
  readonly ppm: number;
  readonly lowPpm?: number | undefined;
  readonly highPpm?: number | undefined;
}

/** The air near the mouth, or the rest of the room. */
export interface VapourCurve {
  readonly zone: "near" | "far";
  readonly points: readonly VapourPoint[];
}

/** What is averaged over one time, with the limits of that time and no other. */
export interface VapourPanel {
  /** 0: as it is at each moment. */
  readonly averagingMin: 0 | 15 | 60 | 480;
  readonly curves: readonly VapourCurve[];
  /** The same if something were otherwise. */
  readonly supposed?: readonly VapourCurve[] | undefined;
  readonly limits: readonly VapourLimit[];
}

/** Concentrations over a visit, one panel below the other by what they are averaged over. */
export interface VapourOverVisit {
  readonly panels: readonly VapourPanel[];
  readonly doses: readonly { readonly atMin: number; readonly volumeMl: number }[];
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 640;
const left = 54;
const right = 440;
const small = 11.5;
const titleHeight = 26;
/** Where the doses are named, between the first panel and its title. */
const doseStrip = 28;
const title = (theme: Theme) => ({ size: small, fill: theme.ink, weight: "medium" }) as const;

/** A momentary curve never stands beside a limit of a longer time: each has its own panel over the same minutes. */
export function vapourOverVisit(given: VapourOverVisit): Figure {
  const theme = themes[given.theme];
  const until = lastMinute(given);
  const { nodes: legend, height } = legendOf(given, theme);
  let at = height;
  const panels = given.panels.flatMap((panel, index) => {
    const labels = panelLabels(panel, width - right - 24);
    const tall = Math.max(panel.averagingMin === 0 ? 132 : 74, labels.height);
    const above = titleHeight + (index === 0 ? doseStrip : 0);
    const place = placeOf(panel, { top: at + above, tall, until, theme });
    const doses = index === 0 ? doseNodes(given.doses, place) : [];
    at += above + tall + 26;
    return [
      labelNode({ text: titles[panel.averagingMin], x: 4, y: place.axes.plot.top - above + 13, ...title(theme) }),
      ...panelNodes(panel, place),
      ...doseLines(given.doses, place),
      ...doses,
      ...panelLimits(panel, place, labels),
    ];
  });
  const words = labelNode({
    text: "minutes of the visit",
    x: right,
    y: at + 8,
    size: small,
    fill: theme.quiet,
    anchor: "end",
  });
  return figureOf({ width, height: at + 16 }, given.widthPx, alternativeOf(given), [...legend, ...panels, words]);
}

const curvesOf = ({ curves, supposed = [] }: VapourPanel): readonly VapourCurve[] => [...curves, ...supposed];

const lastMinute = ({ panels, doses }: VapourOverVisit): number =>
  panels
    .flatMap(curvesOf)
    .flatMap(({ points }) => points.slice(-1).map(({ tMin }) => tMin))
    .reduce((last, tMin) => Math.max(last, tMin), Math.max(10, ...doses.map(({ atMin }) => atMin + 10)));

const highest = (curves: readonly VapourCurve[]): number =>
  curves.flatMap(({ points }) => points).reduce((most, { ppm, highPpm = ppm }) => Math.max(most, ppm, highPpm), 0);

interface PlaceWish {
  readonly top: number;
  readonly tall: number;
  readonly until: number;
  readonly theme: Theme;
}

/** The scale is that of the curves, and of limits that lie less than twice above them; others are named at the top. */
function placeOf(panel: VapourPanel, { top, tall, until, theme }: PlaceWish): PanelPlace {
  const most = highest(curvesOf(panel));
  const shown = panel.limits.map(({ ppm }) => ppm).filter((ppm) => ppm <= 2 * most);
  const up = Math.max(most, ...shown) * 1.04 || 1;
  const axes = axesOf({
    plot: { left, right, top, bottom: top + tall },
    most: { across: until, up },
    words: { up: "", across: "" },
  });
  return { axes, theme };
}

const titles = {
  0: "at each moment, ppm; against ceilings alone",
  15: "mean over the 15 min before, ppm",
  60: "mean over the 60 min before, ppm",
  480: "mean over the 480 min before, ppm",
} as const;

function panelNodes(panel: VapourPanel, place: PanelPlace): SvgNode[] {
  const { axes, theme } = place;
  return [
    ...scaleNodes(axes, theme),
    ...panel.curves.flatMap((curve) => bandNodes(curve, place)),
    ...panel.curves.map((curve) => curveNode(curve, place, "recorded")),
    ...(panel.supposed ?? []).map((curve) => curveNode(curve, place, "supposed")),
  ];
}

function scaleNodes({ plot, x, y, ticks }: Axes, theme: Theme): SvgNode[] {
  const quiet = { size: small, fill: theme.quiet } as const;
  const line = (d: string, opacity: number) =>
    element("path", { d, stroke: theme.hairline, "stroke-opacity": opacity, "stroke-width": 1, fill: "none" });
  const up = plot.bottom - plot.top < 100 ? ticks.up.filter((_, at) => at % 2 === 0) : ticks.up;
  return [
    ...up.flatMap((value) => [
      line(`M${left} ${numberText(y(value))}H${right}`, value === 0 ? 1 : 0.45),
      labelNode({ ...quiet, text: tickText(value), x: left - 7, y: y(value) + 4, anchor: "end" }),
    ]),
    ...ticks.across.flatMap((value) => [
      line(`M${numberText(x(value))} ${numberText(plot.bottom)}v4`, 1),
      labelNode({ ...quiet, text: numberText(value), x: x(value), y: plot.bottom + 16, anchor: "middle" }),
    ]),
  ];
}

/** Few figures, however small the scale. */
const tickText = (value: number): string => String(Number(value.toPrecision(3)));

/** Near the mouth a full line, the rest of the room a dashed one; what is supposed is drawn in dots, in the ink of words. */
const curveLook = {
  near: { "stroke-width": 2.2 },
  far: { "stroke-width": 1.6, "stroke-dasharray": "7 4" },
} as const;
const supposedDash = { near: "1.5 3", far: "1.5 6" } as const;

function curveNode({ zone, points }: VapourCurve, { axes, theme }: PanelPlace, kind: "recorded" | "supposed"): SvgNode {
  const look = curveLook[zone];
  return element("path", {
    "data-part": `${kind}-${zone}`,
    d: pathThrough(points.map(({ tMin, ppm }) => ({ x: axes.x(tMin), y: axes.y(ppm) }))),
    ...{ ...look, fill: "none", "stroke-linejoin": "round" },
    ...(kind === "recorded" ? { stroke: theme.course } : { stroke: theme.ink, "stroke-dasharray": supposedDash[zone] }),
  });
}

function bandNodes({ zone, points }: VapourCurve, { axes, theme }: PanelPlace): SvgNode[] {
  if (points.every(({ highPpm }) => highPpm === undefined)) return [];
  const edge = (of: (point: VapourPoint) => number) =>
    points.map((point) => ({ x: axes.x(point.tMin), y: axes.y(of(point)) }));
  const around = [...edge(({ ppm, highPpm = ppm }) => highPpm), ...edge(({ ppm, lowPpm = ppm }) => lowPpm).reverse()];
  return [
    element("path", {
      "data-part": `band-${zone}`,
      d: pathThrough(around, true),
      ...{ fill: theme.course, "fill-opacity": zone === "near" ? 0.16 : 0.1, stroke: "none" },
    }),
  ];
}

type Dose = VapourOverVisit["doses"][number];

const doseLines = (doses: readonly Dose[], { axes, theme }: PanelPlace): SvgNode[] =>
  doses.map(({ atMin }) =>
    element("path", {
      d: `M${numberText(axes.x(atMin))} ${numberText(axes.plot.bottom)}V${numberText(axes.plot.top)}`,
      ...{ stroke: theme.quiet, "stroke-opacity": 0.45, "stroke-width": 1, "stroke-dasharray": "2 4", fill: "none" },
    }),
  );

/** A wedge at each dose with its volume; those whose words would meet share them. */
function doseNodes(doses: readonly Dose[], place: PanelPlace): SvgNode[] {
  const { axes, theme } = place;
  const wedges = doses.map(({ atMin }) => {
    const [x, y] = [numberText(axes.x(atMin)), numberText(axes.plot.top - 1)];
    return element("path", { "data-part": "dose", d: `M${x} ${y}l-4 -7h8Z`, fill: theme.ink });
  });
  const labels = doseWords(doses, axes).map(({ text, x }) =>
    labelNode({ text, x, y: axes.plot.top - 13, size: small, fill: theme.ink }),
  );
  return [...wedges, ...labels];
}

function doseWords(doses: readonly Dose[], { x }: Axes): { readonly text: string; readonly x: number }[] {
  const groups: Dose[][] = [];
  for (const dose of doses.toSorted((a, b) => a.atMin - b.atMin)) {
    const last = groups.at(-1);
    const [first] = last ?? [];
    const meets =
      first !== undefined && x(dose.atMin) - x(first.atMin) < 14 + textWidth(volumesText(last ?? []), small);
    if (meets) last?.push(dose);
    else groups.push([dose]);
  }
  return groups.map((group) => {
    const text = volumesText(group);
    return { text, x: Math.min(right - textWidth(text, small) - 2, x(group[0]?.atMin ?? 0) - 4) };
  });
}

const volumesText = (doses: readonly Dose[]): string => {
  const total = doses.reduce((sum, { volumeMl }) => sum + volumeMl, 0);
  const volume = `${Number(total.toPrecision(3))} ml`;
  return doses.length > 1 ? `${doses.length} doses, ${volume}` : volume;
};

function legendOf(given: VapourOverVisit, theme: Theme): { readonly nodes: SvgNode[]; readonly height: number } {
  const zones = new Set(given.panels.flatMap(({ curves }) => curves.map(({ zone }) => zone)));
  const supposes = given.panels.some(({ supposed }) => supposed !== undefined);
  const samples = [
    ...(zones.has("near") ? [{ text: "near the mouth", ...curveLook.near, stroke: theme.course }] : []),
    ...(zones.has("far")
      ? [{ text: zones.has("near") ? "rest of the room" : "the room", ...curveLook.far, stroke: theme.course }]
      : []),
    ...(supposes
      ? [{ text: "what if", "stroke-width": 2.2, "stroke-dasharray": supposedDash.near, stroke: theme.ink }]
      : []),
  ];
  let x = 4;
  const nodes = samples.flatMap(({ text, ...line }) => {
    const at = x;
    x += 38 + textWidth(text, small) + 22;
    return [
      element("path", { d: `M${numberText(at)} 12h30`, ...line, fill: "none" }),
      labelNode({ text, x: at + 38, y: 16, size: small, fill: theme.ink }),
    ];
  });
  return { nodes, height: 26 };
}

function alternativeOf({ panels, doses }: VapourOverVisit): string {
  const given = doses
    .map(({ atMin, volumeMl }) => `${numberText(volumeMl)} ml at minute ${numberText(atMin)}`)
    .join(", ");
  const lines = panels.map((panel) => {
    const peaks = panel.curves.map((curve) => `${zoneWords[curve.zone]} at most ${peakText([curve])}`);
    const otherwise = panel.supposed === undefined ? "" : `; what if: at most ${peakText(panel.supposed)}`;
    const limits = panel.limits.map(({ label }) => label).join(", ");
    const against = limits === "" ? "no limit of this time was read" : `against ${limits}`;
    return `${averagedWords[panel.averagingMin]}: ${peaks.join(", ")}${otherwise}; ${against}.`;
  });
  return `Solvent in the air over the visit. Doses: ${given === "" ? "none" : given}. ${lines.join(" ")}`;
}

const zoneWords = { near: "near the mouth", far: "in the room" } as const;
const averagedWords = {
  0: "At each moment",
  15: "Mean over 15 min",
  60: "Mean over 60 min",
  480: "Mean over 480 min",
} as const;

function peakText(curves: readonly VapourCurve[]): string {
  const middle = curves.flatMap(({ points }) => points).reduce((most, { ppm }) => Math.max(most, ppm), 0);
  const most = highest(curves);
  const figure = (value: number): string => String(Number(value.toPrecision(2)));
  return most > middle * 1.02 ? `${figure(middle)} ppm, ${figure(most)} at some rates` : `${figure(middle)} ppm`;
}
