import { axesOf, plotted } from "./graph-axes.ts";
import {
  legendWidth,
  type StrainProfile,
  stepColour,
  strainLegend,
  strainStretches,
  strainText,
} from "./strain-ramp.ts";
import { element, type Figure, figureOf, numberText, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** Strain along a file in its seat. */
export interface StrainAlong {
  /** From the tip on; at least two places. */
  readonly profile: StrainProfile;
  /** Where it is bent most; absent in a straight canal. */
  readonly peak?:
    | {
        readonly fromTipMm: number;
        readonly strain: number;
        readonly interval?: { readonly low: number; readonly high: number } | undefined;
      }
    | undefined;
  /** Draws the line of 10 % also where the strain stays far below it. */
  readonly tenPercent?: boolean | undefined;
  /** A place that is pointed at, mm from the tip. */
  readonly placeMm?: number | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const view = { width: 480, height: 230 } as const;
const plot = { left: 40, right: 466, top: 44, bottom: 166 } as const;
const tenPercent = 0.1;

/** A graph of the strain along a file, coloured by the ramp, with its largest value, its interval and the line of 10 %. */
export function strainAlong(given: StrainAlong): Figure {
  const theme = themes[given.theme];
  const { profile, peak } = given;
  const highest = Math.max(0.005, ...profile.map(({ strain }) => strain), peak?.interval?.high ?? peak?.strain ?? 0);
  const isTenIn = given.tenPercent === true || highest > 0.07;
  const axes = axesOf({
    plot,
    most: {
      across: Math.max(0.1, ...profile.map(({ fromTipMm }) => fromTipMm)),
      up: 100 * Math.max(highest, isTenIn ? 0.11 : 0),
    },
    words: { up: "strain, %", across: "mm from the tip" },
  });
  const spot = ({ fromTipMm, strain }: StrainProfile[number]): Spot => ({
    x: axes.x(fromTipMm),
    y: axes.y(100 * strain),
  });
  const nodes = [
    ...plotted(axes, theme),
    ...(isTenIn ? tenNodes(axes.y(100 * tenPercent), theme) : []),
    ...curveNodes(given, spot),
    ...(peak === undefined ? [] : peakNodes(peak, { spot, theme })),
    ...placeNodes(given, spot, theme),
    ...strainLegend({ x: view.width - 14 - legendWidth, y: view.height - 12 }, theme, given.theme),
    labelNode({ text: "strain, %:", x: 4, y: view.height - 12, size: 11.5, fill: theme.quiet }),
  ];
  return figureOf(view, given.widthPx, alternativeOf(given), nodes);
}

/** The line of 10 % with its words at its end; the axis has its number. */
const tenNodes = (y: number, theme: Theme): SvgNode[] => [
  element("path", {
    "data-part": "tenPercent",
    d: `M${plot.left} ${numberText(y)}H${plot.right}`,
    ...{ stroke: theme.accent, "stroke-width": 1.2, "stroke-dasharray": "7 4", fill: "none" },
  }),
];

/** The curve piece by piece in the colours of the ramp, over a shade down to the axis. */
function curveNodes({ profile, theme }: StrainAlong, spot: (place: StrainProfile[number]) => Spot): SvgNode[] {
  const whole = element("path", {
    "data-part": "curve",
    d: pathThrough(profile.map(spot)),
    ...{ fill: "none", stroke: "none" },
  });
  const pieces = strainStretches(profile).flatMap(({ fromMm, toMm, step }) => {
    const inner = profile.filter(({ fromTipMm }) => fromTipMm > fromMm && fromTipMm < toMm);
    const spots = [placeAt(profile, fromMm), ...inner, placeAt(profile, toMm)].map(spot);
    const [first, last] = [spots[0], spots.at(-1)];
    if (first === undefined || last === undefined) return [];
    const shade = [...spots, { x: last.x, y: plot.bottom }, { x: first.x, y: plot.bottom }];
    const fill = stepColour(step, theme);
    return [
      element("path", { d: pathThrough(shade, true), fill, "fill-opacity": 0.28 }),
      element("path", {
        "data-part": "stretch",
        "data-step": step,
        d: pathThrough(spots),
        ...{ fill: "none", stroke: fill, "stroke-width": 2 + 0.5 * step, "stroke-linejoin": "round" },
      }),
    ];
  });
  return [...pieces, whole];
}

/** A place of the profile between its neighbours. */
function placeAt(profile: StrainProfile, fromTipMm: number): StrainProfile[number] {
  const after = profile.findIndex((one) => one.fromTipMm >= fromTipMm);
  const end = profile[after < 0 ? profile.length - 1 : after];
  const start = profile[Math.max(0, (after < 0 ? profile.length : after) - 1)] ?? end;
  if (start === undefined || end === undefined) return { fromTipMm, strain: 0 };
  const share = end.fromTipMm > start.fromTipMm ? (fromTipMm - start.fromTipMm) / (end.fromTipMm - start.fromTipMm) : 0;
  return { fromTipMm, strain: start.strain + (end.strain - start.strain) * share };
}

interface Marking {
  readonly spot: (place: StrainProfile[number]) => Spot;
  readonly theme: Theme;
}

function peakNodes(peak: NonNullable<StrainAlong["peak"]>, { spot, theme }: Marking): SvgNode[] {
  const { x, y } = spot(peak);
  const text = peakWords(peak);
  const [size, weight] = [13, "semibold"] as const;
  const half = textWidth(text, size, weight) / 2;
  const least = plot.left + textWidth("strain, %", 11.5) + half;
  const ink = { stroke: theme.accent, fill: "none" };
  const { interval } = peak;
  const ends = interval && [interval.low, interval.high].map((strain) => spot({ ...peak, strain }).y);
  return [
    element("path", {
      d: `M${numberText(x)} ${plot.top - 22}V${plot.bottom}`,
      ...{ ...ink, "stroke-width": 1, "stroke-dasharray": "3 3" },
    }),
    ...(ends === undefined
      ? []
      : [
          element("path", {
            "data-part": "interval",
            d: `M${numberText(x)} ${numberText(ends[0] ?? y)}V${numberText(ends[1] ?? y)}${ends.map((at) => `M${numberText(x - 5)} ${numberText(at)}h10`).join("")}`,
            ...{ ...ink, "stroke-width": 1.8 },
          }),
        ]),
    element("circle", {
      "data-part": "peak",
      ...{ cx: x, cy: y, r: 4.5, fill: theme.surface, stroke: theme.accent, "stroke-width": 2 },
    }),
    labelNode({
      ...{ text, size, weight, fill: theme.accent, anchor: "middle" },
      ...{ x: Math.max(least, Math.min(plot.right - half, x)), y: 14 },
    }),
  ];
}

function placeNodes({ profile, placeMm }: StrainAlong, spot: Marking["spot"], theme: Theme): SvgNode[] {
  if (placeMm === undefined) return [];
  const { x, y } = spot(placeAt(profile, placeMm));
  return [
    element("path", { d: `M${numberText(x)} ${plot.top}V${plot.bottom}`, stroke: theme.ink, "stroke-width": 1.2 }),
    element("path", {
      "data-part": "place",
      d: pathThrough(
        [
          { x, y: y - 6 },
          { x: x + 6, y },
          { x, y: y + 6 },
          { x: x - 6, y },
        ],
        true,
      ),
      ...{ fill: theme.ink, stroke: theme.surface, "stroke-width": 1.2 },
    }),
  ];
}

const peakWords = ({ fromTipMm, strain, interval }: NonNullable<StrainAlong["peak"]>): string => {
  const ends =
    interval === undefined ? "" : ` (${(100 * interval.low).toFixed(1)} to ${(100 * interval.high).toFixed(1)} %)`;
  return `most ${strainText(strain)}${ends}, ${fromTipMm.toFixed(1)} mm from the tip`;
};

function alternativeOf({ profile, peak }: StrainAlong): string {
  const long = Math.max(0, ...profile.map(({ fromTipMm }) => fromTipMm));
  const said = peak === undefined ? "The canal is straight there and does not bend it" : capital(peakWords(peak));
  const over = profile.some(({ strain }) => strain > tenPercent)
    ? "A part of it lies over 10 %"
    : "All of it lies below 10 %";
  return `Strain along ${long.toFixed(1)} mm of the file. ${said}. ${over}.`;
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
