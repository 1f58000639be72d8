import { element, type Figure, figureOf, numberText, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** Curvature along a canal, from where its course begins. */
export interface CurvatureProfile {
  /** In order of the way; at least two. A sign tells the side of a bend and is left out of the drawing. */
  readonly samples: readonly { readonly sMm: number; readonly curvaturePerMm: number }[];
  /** An interval of the curvature along the way. */
  readonly band?: readonly { readonly sMm: number; readonly low: number; readonly high: number }[] | undefined;
  /** Where the course begins, in words; the orifice if it is left out. */
  readonly beginsAt?: string | undefined;
  /** The tightest place, by the fit that found it; the highest sample if it is left out. */
  readonly tightest?: { readonly sMm: number; readonly curvaturePerMm: number } | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const view = { width: 480, height: 190 };
const plot = { left: 46, right: 466, top: 34, bottom: 148 };

/** The scales of a graph: from millimetres along the canal and curvature to a place in the drawing. */
interface Scales {
  readonly x: (sMm: number) => number;
  readonly y: (curvaturePerMm: number) => number;
  readonly lengthMm: number;
  readonly topPerMm: number;
}

/** A graph of curvature along a canal with its tightest place marked and named by its radius. */
export function curvatureProfile(given: CurvatureProfile): Figure {
  const profile = { ...given, samples: given.samples.map(unsigned) };
  const theme = themes[profile.theme];
  const scales = scalesOf(profile);
  const tightest = tightestOf(profile);
  const nodes = [
    ...axes(scales, theme, profile.beginsAt ?? "the orifice"),
    ...bandNode(profile, scales, theme),
    element("path", {
      "data-part": "curve",
      d: pathThrough(
        profile.samples.map(({ sMm, curvaturePerMm }) => ({ x: scales.x(sMm), y: scales.y(curvaturePerMm) })),
      ),
      fill: "none",
      stroke: theme.ink,
      "stroke-width": 2.2,
      "stroke-linejoin": "round",
      "stroke-linecap": "round",
    }),
    ...(tightest === undefined
      ? []
      : mark(tightest, { scales, theme, onCurve: heightOn(profile.samples, tightest.sMm) })),
  ];
  return figureOf(view, profile.widthPx, alternativeOf(profile, tightest), nodes);
}

type Sample = CurvatureProfile["samples"][number];
/** A canal that bends by less than a radius of one metre is called straight. */
const straightPerMm = 0.001;

const unsigned = ({ sMm, curvaturePerMm }: Sample): Sample => ({ sMm, curvaturePerMm: Math.abs(curvaturePerMm) });

function tightestOf({ samples, tightest }: CurvatureProfile): Sample | undefined {
  if (tightest !== undefined) return unsigned(tightest);
  const highest = samples.reduce<Sample | undefined>(
    (most, sample) => (most === undefined || sample.curvaturePerMm > most.curvaturePerMm ? sample : most),
    undefined,
  );
  return highest !== undefined && highest.curvaturePerMm >= straightPerMm ? highest : undefined;
}

function scalesOf({ samples, band = [], tightest }: CurvatureProfile): Scales {
  const all = [...samples, ...band];
  const lengthMm = Math.max(1e-6, ...all.map(({ sMm }) => sMm));
  const highest = Math.max(
    ...samples.map(({ curvaturePerMm }) => curvaturePerMm),
    ...band.map(({ high }) => high),
    Math.abs(tightest?.curvaturePerMm ?? 0),
    0.02,
  );
  const step = niceStep(highest / 3);
  const topPerMm = Math.ceil(highest / step - 1e-9) * step;
  return {
    lengthMm,
    topPerMm,
    x: (sMm) => plot.left + ((plot.right - plot.left) * sMm) / lengthMm,
    y: (perMm) => plot.bottom - ((plot.bottom - plot.top) * Math.max(0, perMm)) / topPerMm,
  };
}

/** The next of 1, 2, 5 times a power of ten. */
function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const factor = [1, 2, 5, 10].find((one) => one * power >= least - 1e-12) ?? 10;
  return factor * power;
}

const ticksTo = (top: number): readonly number[] => {
  const step = niceStep(top / 4);
  return Array.from({ length: Math.floor(top / step + 1e-9) + 1 }, (_, at) => at * step);
};

function axes({ x, y, lengthMm, topPerMm }: Scales, theme: Theme, beginsAt: string): readonly SvgNode[] {
  const quiet = { size: 12, fill: theme.quiet } as const;
  const line = (from: Spot, to: Spot): SvgNode =>
    element("path", {
      d: pathThrough([from, to]),
      stroke: theme.hairline,
      "stroke-opacity": from.y === to.y && from.y < plot.bottom ? 0.45 : 1,
      "stroke-width": 1,
      fill: "none",
    });
  const heights = ticksTo(topPerMm);
  const ways = ticksTo(lengthMm);
  const labels: TextLabel[] = [
    ...heights.map(
      (perMm): TextLabel => ({ ...quiet, text: numberText(perMm), x: plot.left - 8, y: y(perMm) + 4, anchor: "end" }),
    ),
    ...ways.map(
      (sMm): TextLabel => ({ ...quiet, text: numberText(sMm), x: x(sMm), y: plot.bottom + 17, anchor: "middle" }),
    ),
    { ...quiet, text: "curvature, 1/mm", x: plot.left - 8, y: 15 },
    { ...quiet, text: `mm from ${beginsAt}`, x: plot.right, y: plot.bottom + 35, anchor: "end" },
  ];
  return [
    ...heights.map((perMm) => line({ x: plot.left, y: y(perMm) }, { x: plot.right, y: y(perMm) })),
    ...ways.map((sMm) => line({ x: x(sMm), y: plot.bottom }, { x: x(sMm), y: plot.bottom + 4 })),
    ...labels.map(labelNode),
  ];
}

function bandNode({ band = [] }: CurvatureProfile, { x, y }: Scales, theme: Theme): readonly SvgNode[] {
  if (band.length < 2) return [];
  const upper = band.map(({ sMm, high }) => ({ x: x(sMm), y: y(high) }));
  const lower = band.map(({ sMm, low }) => ({ x: x(sMm), y: y(low) })).reverse();
  return [
    element("path", {
      "data-part": "band",
      d: pathThrough([...upper, ...lower], true),
      fill: theme.ink,
      "fill-opacity": 0.14,
    }),
  ];
}

/** The drawn curve's height at a place, between its two neighbours. */
function heightOn(samples: readonly Sample[], sMm: number): number {
  const after = samples.findIndex((sample) => sample.sMm >= sMm);
  const end = samples[after < 0 ? samples.length - 1 : after];
  const start = samples[after - 1] ?? end;
  if (start === undefined || end === undefined) return 0;
  const share = end.sMm > start.sMm ? (sMm - start.sMm) / (end.sMm - start.sMm) : 0;
  return start.curvaturePerMm + (end.curvaturePerMm - start.curvaturePerMm) * share;
}

/** The tightest place: a ring on the curve, a line down to the axis, and its radius in words above the plot. */
function mark(
  sample: Sample,
  { scales, theme, onCurve }: { readonly scales: Scales; readonly theme: Theme; readonly onCurve: number },
): readonly SvgNode[] {
  const at = { x: scales.x(sample.sMm), y: scales.y(onCurve) };
  const size = 13;
  const text = tightestWords(sample);
  const half = textWidth(text, size, "semibold") / 2;
  const axisWords = plot.left + textWidth("curvature, 1/mm", 12) + 6;
  const x = Math.max(axisWords + half, Math.min(plot.right - half, at.x));
  return [
    element("path", {
      d: pathThrough([
        { x: at.x, y: plot.top - 14 },
        { x: at.x, y: plot.bottom },
      ]),
      stroke: theme.accent,
      "stroke-width": 1.2,
      "stroke-dasharray": "3 3",
      fill: "none",
    }),
    element("circle", {
      "data-part": "tightest",
      cx: at.x,
      cy: at.y,
      r: 4.5,
      fill: theme.surface,
      stroke: theme.accent,
      "stroke-width": 2,
    }),
    labelNode({ text, x, y: 15, size, fill: theme.accent, anchor: "middle", weight: "semibold" }),
  ];
}

const tightestWords = ({ sMm, curvaturePerMm }: Sample): string =>
  curvaturePerMm >= straightPerMm
    ? `tightest at ${sMm.toFixed(1)} mm: radius ${(1 / curvaturePerMm).toFixed(1)} mm`
    : `tightest at ${sMm.toFixed(1)} mm: straight`;

function alternativeOf({ samples, band }: CurvatureProfile, tightest: Sample | undefined): string {
  const length = Math.max(0, ...samples.map(({ sMm }) => sMm));
  const said = tightest === undefined ? "The canal is straight" : `The canal is ${tightestWords(tightest)}`;
  const withBand = band === undefined || band.length === 0 ? "" : " A band shows the interval.";
  return `Curvature along ${length.toFixed(1)} mm of canal. ${said}.${withBand}`;
}
