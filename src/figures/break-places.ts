import { type BreakName, breakMark } from "./break-marks.ts";
import { letterSize, type RowWords, rowName } from "./chance-plot.ts";
import { type Chance, chanceColumn, chanceText } from "./chance-text.ts";
import { mmRuler } from "./mm-ruler.ts";
import { element, type Figure, figureOf, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** One explanation of a break. */
export interface BreakExplanation {
  readonly name: BreakName;
  /** What it is called, as `bending fatigue`. */
  readonly words: string;
  /** Where along the instrument it would break, mm from the tip; absent where nothing tells. */
  readonly mean?: number | undefined;
  readonly sd?: number | undefined;
  /** The same as a curve: share of such breaks per mm. */
  readonly places?: readonly { readonly fromTipMm: number; readonly density: number }[] | undefined;
  readonly posterior: Chance;
}

/** Where each explanation of a break would have it lie along the instrument, and where it lies. */
export interface BreakPlaces {
  /** Diameters from the tip on, mm. */
  readonly profile: readonly { readonly atMm: number; readonly diameterMm: number }[];
  /** From tip to handle, where it is known. */
  readonly lengthMm?: number | undefined;
  /** The piece, with the interval of its length; absent where it was not measured. */
  readonly fragment?: { readonly mm: number; readonly low: number; readonly high: number } | undefined;
  readonly explanations: readonly BreakExplanation[];
  /** The working part. */
  readonly workingMm: number;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 640;
const names = 150;
const left = names + 16;
const [fileY, rowTop] = [44, 76] as const;
/** Widths of the file are drawn this many times as large, so that its taper is seen. */
const widthTimes = 3;

/** The file over a ruler with its piece marked, and below it where each explanation expects the break. */
export function breakPlaces(given: BreakPlaces): Figure {
  const theme = themes[given.theme];
  const numbers = given.explanations.map(({ posterior }) => chanceColumn(posterior));
  const right = width - 16 - Math.max(78, ...numbers.map((text) => textWidth(text, letterSize, "semibold")));
  const mostMm = Math.max(given.lengthMm ?? 0, given.workingMm, given.fragment?.high ?? 0);
  const perMm = (right - left) / mostMm;
  const plot: Plot = { x: (mm) => left + mm * perMm, perMm, right, mostMm, theme };
  let at = rowTop;
  const rows = given.explanations.flatMap((explanation) => {
    const name = rowName(wordsOf(explanation), { names }, theme);
    const height = Math.max(46, name.height + 8);
    const nodes = [...name.at(at).map(labelNode), ...explanationNodes(explanation, { ...plot, top: at, height })];
    at += height + 6;
    return nodes;
  });
  const nodes = [
    ...fileNodes(given, plot),
    ...rows,
    ...pieceNodes(given, { ...plot, foot: at }),
    ...mmRuler({ x: plot.x, mostMm, y: at, perMm }, theme),
    labelNode({ text: "chance (95 %)", x: width - 4, y: fileY + 4, size: 11.5, fill: theme.quiet, anchor: "end" }),
    labelNode({ text: "mm from the tip", x: left, y: at + 36, size: 11.5, fill: theme.quiet }),
  ];
  return figureOf({ width, height: at + 44 }, given.widthPx, alternativeOf(given), nodes);
}

interface Plot {
  readonly x: (mm: number) => number;
  readonly perMm: number;
  readonly right: number;
  readonly mostMm: number;
  readonly theme: Theme;
}

const placeWords = ({ mean, sd }: BreakExplanation): string =>
  mean === undefined ? "anywhere" : `${mean.toFixed(1)} mm${sd === undefined ? "" : `, SD ${sd.toFixed(1)}`}`;

const wordsOf = (explanation: BreakExplanation): RowWords => ({
  label: explanation.words,
  says: explanation.mean === undefined ? "expected anywhere" : `expected at ${placeWords(explanation)}`,
});

function fileNodes({ profile, lengthMm, workingMm }: BreakPlaces, { x, perMm, theme }: Plot): SvgNode[] {
  const half = (mm: number): number => (mm * perMm * widthTimes) / 2;
  const kept = profile.filter(({ atMm }) => atMm <= workingMm + 1e-9);
  const side = (sign: 1 | -1) =>
    kept.map(({ atMm, diameterMm }) => ({ x: x(atMm), y: fileY + sign * half(diameterMm) }));
  const shaft = half(kept.at(-1)?.diameterMm ?? 0);
  const body = { fill: theme.ink, "fill-opacity": 0.28, stroke: theme.ink, "stroke-width": 0.8 };
  return [
    element("path", { "data-part": "file", d: pathThrough([...side(-1), ...side(1).reverse()], true), ...body }),
    ...(lengthMm === undefined || lengthMm <= workingMm
      ? []
      : [
          element("rect", {
            "data-part": "shaft",
            ...{ x: x(workingMm), y: fileY - shaft, width: x(lengthMm) - x(workingMm), height: 2 * shaft },
            ...{ fill: theme.ink, "fill-opacity": 0.12, stroke: theme.quiet, "stroke-width": 0.6 },
          }),
        ]),
    labelNode({ text: `widths drawn ${widthTimes} times as large`, x: 0, y: fileY + 4, size: 11.5, fill: theme.quiet }),
  ];
}

/** The break as a band over all rows, as wide as its interval, with its words above. */
function pieceNodes({ fragment }: BreakPlaces, { x, foot, right, theme }: Plot & { readonly foot: number }): SvgNode[] {
  const size = 12.5;
  if (fragment === undefined)
    return [labelNode({ text: "the piece was not measured", x: left, y: 14, size, fill: theme.quiet })];
  const text = `it broke at ${lengthWords(fragment)}`;
  const half = textWidth(text, size, "semibold") / 2;
  const middle = Math.max(left + half, Math.min(right - half, x(fragment.mm)));
  const band = { x: x(fragment.low), y: 20, width: x(fragment.high) - x(fragment.low), height: foot - 20 };
  return [
    element("rect", { "data-part": "broke-between", ...band, fill: theme.accent, "fill-opacity": 0.18 }),
    element("path", {
      "data-part": "broke",
      d: `M${numberText(x(fragment.mm))} 20V${numberText(foot)}`,
      ...{ stroke: theme.accent, "stroke-width": 1.8, fill: "none" },
    }),
    labelNode({ text, x: middle, y: 14, size, fill: theme.accent, weight: "semibold", anchor: "middle" }),
  ];
}

const lengthWords = ({ mm, low, high }: NonNullable<BreakPlaces["fragment"]>): string =>
  `${mm.toFixed(1)} mm (${low.toFixed(1)} to ${high.toFixed(1)})`;

type RowPlace = Plot & { readonly top: number; readonly height: number };

function explanationNodes(explanation: BreakExplanation, place: RowPlace): SvgNode[] {
  const { x, top, height, theme, mostMm } = place;
  const base = top + height - 8;
  const curve = curveOf(explanation, mostMm);
  const highest = Math.max(1e-9, ...curve.map(({ density }) => density));
  const tall = height - 14;
  const spots = curve.map(({ fromTipMm, density }) => ({ x: x(fromTipMm), y: base - (tall * density) / highest }));
  const [first, last] = [spots[0], spots.at(-1)];
  const shade =
    first === undefined || last === undefined ? [] : [...spots, { x: last.x, y: base }, { x: first.x, y: base }];
  const { mean, posterior, name } = explanation;
  return [
    element("path", {
      "data-part": "expected",
      d: pathThrough(shade, true),
      ...{
        fill: theme.course,
        "fill-opacity": 0.26,
        stroke: theme.course,
        "stroke-width": 1.2,
        "stroke-linejoin": "round",
      },
    }),
    ...(mean === undefined ? [] : [breakMark(name, { x: x(Math.min(mostMm, Math.max(0, mean))), y: base }, theme)]),
    labelNode({
      ...{ text: chanceColumn(posterior), x: width - 4, y: top + 14, size: letterSize, weight: "semibold" },
      ...{ fill: theme.ink, anchor: "end" },
    }),
  ];
}

const steps = 80;

/** The curve as it was given; else the normal one of its mean and spread, or a flat one where nothing tells. */
function curveOf({ places, mean, sd }: BreakExplanation, mostMm: number) {
  if (places !== undefined && places.length > 1) return places.filter(({ fromTipMm }) => fromTipMm <= mostMm + 1e-9);
  const all = Array.from({ length: steps + 1 }, (_, at) => (mostMm * at) / steps);
  if (mean === undefined) return all.map((fromTipMm) => ({ fromTipMm, density: 0.4 / mostMm }));
  const spread = Math.max(0.05, sd ?? 0);
  return all.map((fromTipMm) => ({ fromTipMm, density: Math.exp(-(((fromTipMm - mean) / spread) ** 2) / 2) }));
}

function alternativeOf({ fragment, explanations, workingMm, lengthMm }: BreakPlaces): string {
  const broke =
    fragment === undefined ? "The piece was not measured" : `It broke at ${lengthWords(fragment)} from the tip`;
  const long = lengthMm === undefined ? "" : `, ${numberText(lengthMm)} mm to the handle`;
  const lines = explanations.map(
    (one) =>
      `${one.words}: expected ${one.mean === undefined ? "anywhere" : `at ${placeWords(one)}`}; ${chanceText(one.posterior)}.`,
  );
  return `Where each explanation expects the break, along ${numberText(workingMm)} mm of the instrument${long}. ${broke}. ${lines.join(" ")}`;
}
