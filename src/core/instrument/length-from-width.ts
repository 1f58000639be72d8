import { reach95 } from "../radiograph/interval-around.ts";
import { diameterAt, type InstrumentShape } from "./instrument-shape.ts";
import type { Measured } from "./measured.ts";
import { isOnePlace, nominalPlaces } from "./place-of-diameter.ts";

/** The standard deviation of a diameter where nobody says another: the tolerance holds 95 %. */
export const diameterSigmaOf = ({ toleranceMm }: InstrumentShape): number => toleranceMm / reach95;

/**
 * The length of a fragment from the diameter at its broken end: l = (w - d0) / taper.
 * Takes the shape, the measured width and the standard deviation of the instrument's own diameter, in mm.
 * Gives mm with the standard deviation sqrt(sw^2 + sd^2) / taper; undefined where the instrument has that width at many
 * places, as one without a taper.
 * @source plane geometry; docs/methods/fit C4
 */
export function lengthFromWidth(
  shape: InstrumentShape,
  width: Measured,
  diameterSigmaMm: number,
): Measured | undefined {
  const [place, ...more] = nominalPlaces(shape.stations, width.value);
  if (place === undefined || more.length > 0 || !isOnePlace(place)) return undefined;
  const value = (place.fromMm + place.toMm) / 2;
  return { value, sigma: Math.hypot(width.sigma, diameterSigmaMm) / Math.abs(growthAt(shape, value)) };
}

/** How far to both sides growth is looked at, mm. */
const besideMm = 0.02;

/** How fast the diameter grows at a place, in mm per mm, from the known part on both sides of it. */
export function growthAt(shape: InstrumentShape, fromTipMm: number, reachMm = besideMm): number {
  const endMm = shape.stations.at(-1)?.atMm ?? 0;
  const from = Math.max(0, Math.min(fromTipMm, endMm) - reachMm);
  const to = Math.min(endMm, fromTipMm + reachMm);
  return to > from ? (diameterAt(shape, to) - diameterAt(shape, from)) / (to - from) : 0;
}
