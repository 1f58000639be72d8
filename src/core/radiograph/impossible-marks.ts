import type { Fault } from "../refusal.ts";
import type { CalibrateInput, Known } from "./calibrate-input.ts";

/** Marks nearer together than this are one place. */
const nearestPx = 0.01;

/**
 * What can't be among the known lengths of a film: marks that coincide, and a sphere that would reach the source.
 * Gives one fault for each, with its path; none where all is possible.
 */
export const impossibleMarks = ({ known, geometry }: CalibrateInput): Fault[] =>
  known.flatMap((one, index) => [...faultOfPlaces(one, index), ...faultOfSphere(one, index, geometry)]);

function faultOfPlaces({ from, to }: Known, index: number): Fault[] {
  if (Math.hypot(to[0] - from[0], to[1] - from[1]) >= nearestPx) return [];
  return [
    { path: `known[${index}].to`, says: `${JSON.stringify(to)} is the same place as from; two places are needed` },
  ];
}

function faultOfSphere({ kind, lengthMm }: Known, index: number, geometry: CalibrateInput["geometry"]): Fault[] {
  if (kind !== "sphere" || geometry === undefined || lengthMm / 2 < geometry.sourceToToothMm) return [];
  const says = `${lengthMm} is a sphere that reaches the source; less than ${2 * geometry.sourceToToothMm} is accepted`;
  return [{ path: `known[${index}].lengthMm`, says }];
}
