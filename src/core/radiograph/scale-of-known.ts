import type { CalibrateInput, Known } from "./calibrate-input.ts";
import { chiSquareTail } from "./chi-square-tail.ts";
import type { MmPerPx } from "./points-in-plane.ts";
import { sphereShadowMm } from "./projection.ts";

/** One known length as measured: its length in square pixels of the film's mean spacing, and what a click error does. */
interface MeasuredKnown {
  readonly lengthMm: number;
  readonly onFilmPx: number;
  readonly sigmaPx: number;
}

/** The scale that all known lengths give together. */
export interface ScaleOfKnown {
  readonly mmPerPx: MmPerPx;
  /** The geometric mean of column and row. */
  readonly meanMmPerPx: number;
  /** From the clicks alone. */
  readonly clickRelativeSigma: number;
  /** The same, widened where the known lengths disagree beyond the clicks. */
  readonly relativeSigma: number;
  readonly measured: readonly MeasuredKnown[];
  readonly disagreement?: Disagreement;
}

/** How far several known lengths disagree with their mean, against what the clicks allow. */
export interface Disagreement {
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  readonly p: number;
}

/** Below this chance the disagreement counts as more than the clicks allow. */
export const disagreementLevel = 0.05;

/**
 * The scale of a film from objects of known size marked on it.
 * Takes at least one known length, each with its marks at two places; the shape of a pixel (column and row spacing, of which only the ratio counts), and
 * the tube's geometry where it is known. Gives mm per px; px per mm is averaged by inverse variance, because the
 * clicks err in px.
 * @source Birge RT, The calculation of errors by the method of least squares, Phys Rev, 1932, 40:207-227 (memory), for
 * the widening; docs/methods/calibrate C1, C3, C7
 */
export function scaleOfKnown(
  known: readonly Known[],
  shape: MmPerPx,
  geometry: CalibrateInput["geometry"],
): ScaleOfKnown {
  const square = squareShape(shape);
  const measured = known.map((one) => measure(one, square, trueSize(one, geometry)));
  const weights = measured.map((one) => (one.lengthMm / one.sigmaPx) ** 2);
  const weight = weights.reduce((sum, one) => sum + one, 0);
  const pxPerMm =
    measured.reduce((sum, one, index) => sum + (weights[index] ?? 0) * (one.onFilmPx / one.lengthMm), 0) / weight;
  const disagreement = disagreementOf(measured, pxPerMm);
  const clickRelativeSigma = 1 / Math.sqrt(weight) / pxPerMm;
  const meanMmPerPx = 1 / pxPerMm;
  return {
    mmPerPx: { column: square.column * meanMmPerPx, row: square.row * meanMmPerPx },
    meanMmPerPx,
    clickRelativeSigma,
    relativeSigma: clickRelativeSigma * wideningOf(disagreement),
    measured,
    ...(disagreement === undefined ? {} : { disagreement }),
  };
}

/** A pixel's shape with its mean size taken out, so that only the ratio of column to row stays. */
function squareShape({ column, row }: MmPerPx): MmPerPx {
  const mean = Math.sqrt(column * row);
  return { column: column / mean, row: row / mean };
}

function trueSize(one: Known, geometry: CalibrateInput["geometry"]): number {
  if (one.kind !== "sphere" || geometry === undefined) return one.lengthMm;
  return sphereShadowMm(one.lengthMm, geometry.sourceToToothMm);
}

function measure(one: Known, square: MmPerPx, lengthMm: number): MeasuredKnown {
  const across = square.column * (one.to[0] - one.from[0]);
  const down = square.row * (one.to[1] - one.from[1]);
  const onFilmPx = Math.hypot(across, down);
  // Both ends err on both axes; an axis counts by its spacing and by how far the length runs along it.
  const sigmaPx = (one.sigmaPx * Math.SQRT2 * Math.hypot(square.column * across, square.row * down)) / onFilmPx;
  return { lengthMm, onFilmPx, sigmaPx };
}

function disagreementOf(measured: readonly MeasuredKnown[], pxPerMm: number): Disagreement | undefined {
  if (measured.length < 2) return undefined;
  const chiSquare = measured.reduce(
    (sum, one) => sum + ((one.onFilmPx - pxPerMm * one.lengthMm) / one.sigmaPx) ** 2,
    0,
  );
  const degreesOfFreedom = measured.length - 1;
  return { chiSquare, degreesOfFreedom, p: chiSquareTail(chiSquare, degreesOfFreedom) };
}

/** Birge's ratio, where the lengths disagree; 1 where the clicks explain what is seen. */
function wideningOf(disagreement: Disagreement | undefined): number {
  if (disagreement === undefined || disagreement.p >= disagreementLevel) return 1;
  return Math.max(1, Math.sqrt(disagreement.chiSquare / disagreement.degreesOfFreedom));
}
