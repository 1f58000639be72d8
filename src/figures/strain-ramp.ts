import { element, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import type { Theme, ThemeName } from "./theme.ts";

/** Strain along a file, from its tip on, as a fraction. */
export type StrainProfile = readonly { readonly fromTipMm: number; readonly strain: number }[];

/** Where one step of the ramp ends and the next begins. */
const stepEnds = [0.01, 0.025, 0.05, 0.1] as const;
const stepWords = ["0–1", "1–2.5", "2.5–5", "5–10", "over 10"] as const;

/** On a ground: five steps that differ in lightness as well as in hue, so that they are told apart without hue. */
export type StrainGround = ThemeName | "film";
const onLight = ["#6b8fb0", "#6a6fae", "#8c4494", "#8f2346", "#450a10"] as const;
const onDark = ["#5b7fb5", "#9488dc", "#dd94c6", "#ffbd8c", "#fff0b8"] as const;
const onFilm = ["#7fa8e6", "#a99ff0", "#e6a3d2", "#ffc08f", "#fff3c4"] as const;
const colours: Readonly<Record<StrainGround, readonly string[]>> = {
  paper: onLight,
  print: onLight,
  dark: onDark,
  film: onFilm,
};

/** The step of the ramp that a strain belongs to, from 0. */
export const strainStep = (strain: number): number => stepEnds.filter((end) => strain >= end).length;

/** The colour of a strain on a ground. */
export const strainColour = (strain: number, ground: StrainGround): string => colours[ground][strainStep(strain)] ?? "";

/** A strain in percent: `4.3 %`. */
export const strainText = (strain: number): string => `${(100 * strain).toFixed(1)} %`;

/** A part of a file whose strain lies in one step. */
export interface StrainStretch {
  readonly fromMm: number;
  readonly toMm: number;
  readonly step: number;
}

/** A profile cut where its strain passes from one step to the next, from the tip on. */
export function strainStretches(profile: StrainProfile): readonly StrainStretch[] {
  const stretches: StrainStretch[] = [];
  for (const piece of profile.slice(1).flatMap((to, at) => piecesBetween(profile[at] ?? to, to))) {
    const last = stretches.at(-1);
    if (last?.step === piece.step) stretches[stretches.length - 1] = { ...last, toMm: piece.toMm };
    else stretches.push(piece);
  }
  return stretches;
}

type Place = StrainProfile[number];

function piecesBetween(from: Place, to: Place): StrainStretch[] {
  const crossed = stepEnds
    .filter((end) => (from.strain - end) * (to.strain - end) < 0)
    .map((end) => (end - from.strain) / (to.strain - from.strain))
    .sort((a, b) => a - b);
  const shares = [0, ...crossed, 1];
  const at = (share: number): number => from.fromTipMm + (to.fromTipMm - from.fromTipMm) * share;
  return shares.slice(1).map((share, index) => {
    const before = shares[index] ?? 0;
    const middle = from.strain + ((to.strain - from.strain) * (before + share)) / 2;
    return { fromMm: at(before), toMm: at(share), step: strainStep(middle) };
  });
}

/** The colour of a step on a ground. */
export const stepColour = (step: number, ground: StrainGround): string => colours[ground][step] ?? "";

const swatch = { width: 18, high: 9, apart: 10 } as const;
const widths = [30, 38, 44, 38, 50] as const;

/** How wide the legend is. */
export const legendWidth = widths.reduce((sum, one) => sum + one + swatch.width + swatch.apart, 0) - swatch.apart;

/** The steps of the ramp with what each stands for; over 10 % is crossed as well. */
export function strainLegend({ x, y }: { readonly x: number; readonly y: number }, theme: Theme, ground: ThemeName) {
  let left = x;
  return stepWords.flatMap((text, step): SvgNode[] => {
    const at = left;
    left += (widths[step] ?? 0) + swatch.width + swatch.apart;
    const box = { x: at, y: y - swatch.high, width: swatch.width, height: swatch.high, fill: stepColour(step, ground) };
    const label = `${text}${step === stepWords.length - 1 ? " %" : ""}`;
    return [
      element("rect", { "data-part": "legend", ...box, stroke: theme.ink, "stroke-width": 0.6 }),
      labelNode({ text: label, x: at + swatch.width + 4, y, size: 11.5, fill: theme.quiet }),
    ];
  });
}
