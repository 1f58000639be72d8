import type { FractureOutput } from "./fracture-input.ts";
import type { Instrument } from "./instrument-fields.ts";
import { diameterAt, type InstrumentShape } from "./instrument-shape.ts";
import { lengthSeries } from "./other-places.ts";

/** Largest shear stress under a torque T is this times T / d^3, d the diameter of the circle around the section. */
const stressOf: Partial<Record<NonNullable<Instrument["section"]>, number>> = {
  circle: 16 / Math.PI,
  // Of side d / sqrt 2.
  square: Math.SQRT2 ** 3 / 0.208,
  // Of side d sqrt 3 / 2.
  triangle: 20 / (Math.sqrt(3) / 2) ** 3,
};

/**
 * What twisting would have done at a break: its stress beside that at the usual place of torsional breaks.
 * Takes the instrument, its shape and the place in mm from the tip. Gives MPa, elastic: a stress above what the alloy
 * bears means that it yields there. For a section without a simple law the share alone.
 * @source timoshenko-goodier-1970 (memory): 16 T / (pi d^3), T / (0.208 a^3), 20 T / a^3; docs/methods/fracture.md C13
 */
export function twistAtBreak(
  { section, torqueLimitNmm }: Instrument,
  shape: InstrumentShape,
  fromTipMm: number,
): NonNullable<FractureOutput["twist"]> {
  const usualMm = lengthSeries.reduce((sum, { meanMm }) => sum + meanMm, 0) / lengthSeries.length;
  const diameter = diameterAt(shape, fromTipMm);
  const constant = section === undefined ? undefined : stressOf[section];
  const perNmmMPa = constant === undefined ? undefined : constant / diameter ** 3;
  return {
    usualMm,
    ofUsualPlace: (diameterAt(shape, usualMm) / diameter) ** 3,
    ...(perNmmMPa === undefined ? {} : { perNmmMPa }),
    ...(perNmmMPa === undefined || torqueLimitNmm === undefined ? {} : { atLimitMPa: perNmmMPa * torqueLimitNmm }),
  };
}
