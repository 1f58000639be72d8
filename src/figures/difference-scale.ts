import { element, type Figure, figureOf, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/**
 * How a difference picture is drawn, in standard deviations of what grain and small shifts leave: up to the first nothing
 * is shown, so that nobody reads noise; from the second on it is black or white.
 */
export const noiseSigmas = 2;
/** See {@link noiseSigmas}. */
export const fullSigmas = 8;

/** The grey of a difference, 0 to 255 with 128 for none: brighter where more mineral is in the beam. */
export function greyOfDifference(difference: number, sigma: number): number {
  const beyond = (Math.abs(difference) - noiseSigmas * sigma) / ((fullSigmas - noiseSigmas) * sigma);
  return 128 + Math.sign(difference) * Math.round(127 * Math.min(1, Math.max(0, beyond)));
}

/** What the scale of a difference picture stands for. */
export interface DifferenceScale {
  /** Standard deviation of the difference where nothing changed, as a share of the full range of grey; above 0. */
  readonly sigma: number;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const view = { width: 480, height: 74 };
const bar = { left: 20, right: 460, top: 24, height: 16 };
const steps = 96;

/** The scale of a difference picture: grey against change, with the band in which nothing is told from noise. */
export function differenceScale({ sigma, theme: name, widthPx }: DifferenceScale): Figure {
  const theme = themes[name];
  const x = (sigmas: number): number => bar.left + ((sigmas + fullSigmas) / (2 * fullSigmas)) * (bar.right - bar.left);
  const ramp = Array.from({ length: steps }, (_, at): SvgNode => {
    const from = -fullSigmas + (2 * fullSigmas * at) / steps;
    const grey = greyOfDifference((from + fullSigmas / steps) * sigma, sigma);
    // Steps overlap a little, so that no seam shows between two of them.
    const width = (bar.right - bar.left) / steps + (at === steps - 1 ? 0 : 0.6);
    return element("rect", { x: x(from), y: bar.top, width, height: bar.height, fill: `rgb(${grey},${grey},${grey})` });
  });
  const nodes = [...ramp, frame(theme), ...ticks(sigma, theme, x), ...words(theme, x)];
  return figureOf(view, widthPx, alternativeOf(sigma), nodes);
}

const frame = (theme: Theme): SvgNode =>
  element("rect", {
    ...{ x: bar.left, y: bar.top, width: bar.right - bar.left, height: bar.height },
    ...{ fill: "none", stroke: theme.hairline, "stroke-width": 1 },
  });

const ticks = (sigma: number, theme: Theme, x: (sigmas: number) => number): SvgNode[] =>
  [-fullSigmas, -noiseSigmas, noiseSigmas, fullSigmas].flatMap((at) => [
    element("path", {
      d: `M${x(at)} ${bar.top + bar.height}v5`,
      ...{ stroke: theme.ink, "stroke-width": 1.2, fill: "none" },
    }),
    labelNode({
      ...{ text: shareText(at * sigma), x: x(at), y: bar.top + bar.height + 19, size: 13, fill: theme.ink },
      anchor: at === -fullSigmas ? "start" : at === fullSigmas ? "end" : "middle",
    }),
  ]);

const words = (theme: Theme, x: (sigmas: number) => number): SvgNode[] => [
  labelNode({ text: "less mineral", x: bar.left, y: 15, size: 13, fill: theme.ink }),
  labelNode({ text: "not told from noise", x: x(0), y: 15, size: 13, fill: theme.quiet, anchor: "middle" }),
  labelNode({ text: "more mineral", x: bar.right, y: 15, size: 13, fill: theme.ink, anchor: "end" }),
];

/** A change in percent of the full range of grey, with its sign. */
function shareText(share: number): string {
  const percent = Math.abs(100 * share);
  return `${share < 0 ? "−" : "+"}${percent.toFixed(percent < 10 ? 1 : 0)} %`;
}

const alternativeOf = (sigma: number): string =>
  `Scale of the difference. Middle grey: within ${shareText(noiseSigmas * sigma).slice(1)} of the full range of grey either way, which grain and small shifts give by themselves. Brighter to ${shareText(fullSigmas * sigma)}: more mineral in the beam. Darker to ${shareText(-fullSigmas * sigma)}: less.`;
