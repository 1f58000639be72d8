import marsicovetere from "../../../data/marsicovetere-1996/source.json" with { type: "json" };
import wu from "../../../data/wu-2011/source.json" with { type: "json" };
import { diameterAt, type InstrumentShape } from "./instrument-shape.ts";
import { densityOf, evenDensity, type PlaceDensity } from "./place-density.ts";

/** A published series of lengths of fragments, as a mean and a standard deviation. */
export interface LengthSeries {
  readonly name: string;
  readonly meanMm: number;
  readonly sdMm: number;
  readonly n?: number;
  readonly source: string;
}

/** The published lengths of fragments, in the order in which they are told. */
export const lengthSeries: readonly LengthSeries[] = [
  { name: "turned until they broke", ...marsicovetere.brokeFromTip, source: marsicovetere.id },
  { name: "in use, larger coronal taper", ...wu.fragments.firstStage, source: wu.id },
  { name: "in use, larger tip", ...wu.fragments.lastStage, source: wu.id },
];

/**
 * Where torsional overload breaks an instrument: just above the part that binds, as far from the tip as published.
 * Takes the end of the instrument in mm from its tip. Gives the three series weighed alike.
 * @source marsicovetere-1996, wu-2011 (seen); docs/methods/fracture.md C5
 */
export function torsionPlaces(endMm: number): PlaceDensity {
  const weight = (fromTipMm: number): number =>
    lengthSeries.reduce((sum, { meanMm, sdMm }) => sum + Math.exp(-(((fromTipMm - meanMm) / sdMm) ** 2) / 2) / sdMm, 0);
  return densityOf(endMm, weight) ?? evenDensity(endMm);
}

/**
 * Where it breaks when it binds elsewhere: anywhere along the instrument, more where less torque breaks it, 1 / d^3.
 * @source 16 T / (pi d^3): timoshenko-goodier-1970 (memory); docs/methods/fracture.md C5
 */
export const boundElsewhere = (shape: InstrumentShape, endMm: number): PlaceDensity =>
  densityOf(endMm, (fromTipMm) => diameterAt(shape, fromTipMm) ** -3) ?? evenDensity(endMm);

/** Anywhere up to a place, all places alike. */
export const anywhereUpTo = (seatedMm: number, endMm: number): PlaceDensity =>
  densityOf(endMm, (fromTipMm) => (fromTipMm <= seatedMm ? 1 : 0)) ?? evenDensity(endMm);

/**
 * Where a flaw or joint breaks it: anywhere below, and the third next to the handle, where more of them are.
 * @source common practice; docs/methods/fracture.md C6
 */
export function flawPlaces(endMm: number): readonly [PlaceDensity, PlaceDensity] {
  const fromMm = (2 / 3) * endMm;
  const high = densityOf(endMm, (fromTipMm) => (fromTipMm > fromMm ? 1 : 0));
  return [anywhereUpTo(fromMm, endMm), high ?? evenDensity(endMm)];
}
