import type { ToothFacts } from "../core/tooth/teeth.ts";
import type { Spot } from "./svg-tree.ts";

/** A section of a tooth at the level of its orifices, in half widths: x to the mesial, y to the lingual, within -1..1. */
export interface ToothOutline {
  /** Mesiodistal and buccolingual width in mm, for the proportions of the drawing. */
  readonly mesiodistalMm: number;
  readonly buccolingualMm: number;
  readonly spots: readonly Spot[];
}

const shape = (mesiodistalMm: number, buccolingualMm: number, spots: readonly (readonly [number, number])[]) => ({
  mesiodistalMm,
  buccolingualMm,
  spots: spots.map(([x, y]) => ({ x, y })),
});

const oval = (mesiodistalMm: number, buccolingualMm: number, lingualTaper: number): ToothOutline =>
  shape(mesiodistalMm, buccolingualMm, [
    [0, -1],
    [0.72, -0.72],
    [1, -0.08],
    [0.74 * lingualTaper, 0.66],
    [0, 1],
    [-0.74 * lingualTaper, 0.66],
    [-1, -0.08],
    [-0.72, -0.72],
  ]);

/** Widths are rounded textbook sizes at the neck of the tooth (common practice); the drawing is a picture, not a measure. */
const outlines: Readonly<Record<string, ToothOutline>> = {
  upperIncisor: oval(6.6, 6.2, 0.86),
  lowerIncisor: oval(3.9, 5.8, 0.9),
  upperCanine: oval(5.8, 8, 0.86),
  lowerCanine: oval(5.4, 7.6, 0.86),
  lowerPremolar: oval(5.6, 6.8, 0.92),
  upperPremolar: shape(5.2, 8.6, [
    [0.04, -1],
    [0.78, -0.74],
    [0.98, -0.28],
    [0.76, 0.1],
    [0.8, 0.6],
    [0.06, 1],
    [-0.74, 0.7],
    [-0.92, 0],
    [-0.78, -0.72],
  ]),
  upperMolar: shape(8.2, 9.6, [
    [0.5, -1],
    [0.95, -0.76],
    [0.98, -0.2],
    [0.82, 0.34],
    [0.56, 0.86],
    [0.02, 1],
    [-0.56, 0.86],
    [-0.86, 0.36],
    [-0.94, -0.2],
    [-0.86, -0.72],
    [-0.4, -0.93],
    [0.04, -0.88],
  ]),
  lowerMolar: shape(9.2, 8.6, [
    [0.56, -0.98],
    [0.94, -0.66],
    [1, 0],
    [0.92, 0.66],
    [0.5, 0.98],
    [0, 0.9],
    [-0.5, 0.94],
    [-0.88, 0.62],
    [-0.98, 0],
    [-0.88, -0.66],
    [-0.5, -0.96],
    [0, -0.9],
  ]),
  cShaped: shape(9.4, 8.2, [
    [0.5, -0.98],
    [0.92, -0.66],
    [1, 0.06],
    [0.88, 0.7],
    [0.52, 0.98],
    [0.2, 0.8],
    [0, 0.66],
    [-0.2, 0.78],
    [-0.52, 0.96],
    [-0.88, 0.7],
    [-0.98, 0],
    [-0.88, -0.68],
    [-0.46, -0.98],
    [0, -0.96],
  ]),
};

/** The outline that is typical for a tooth; fused roots with a C-shaped canal have a groove on the lingual side. */
export function toothOutline(tooth: ToothFacts, cShaped: boolean): ToothOutline {
  const kind = tooth.type.charAt(0).toUpperCase() + tooth.type.slice(1);
  const usual = outlines[`${tooth.arch}${kind}`] ?? oval(6, 7, 0.9);
  return cShaped ? (outlines.cShaped ?? usual) : usual;
}

/**
 * Whether the mesial side lies to the right when the tooth is seen from its crown with the buccal side up.
 * Looking down on the lower row the mouth is a mirror image of looking up at the upper one.
 */
export const mesialIsRight = (tooth: ToothFacts): boolean => (tooth.arch === "upper") === (tooth.side === "right");

/** How the two sides across the row are called in this tooth. */
export function sideWords(tooth: ToothFacts): { readonly outer: string; readonly inner: string } {
  const front = tooth.type === "incisor" || tooth.type === "canine";
  return { outer: front ? "labial" : "buccal", inner: tooth.arch === "upper" ? "palatal" : "lingual" };
}
