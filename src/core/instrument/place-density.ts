import type { Measured } from "./measured.ts";

/** Shares of breaks per mm along an instrument, at the middles of equal steps from its tip. */
export interface PlaceDensity {
  readonly stepMm: number;
  readonly perMm: Float64Array;
}

/** The steps of a density, mm. */
const stepMm = 0.2;

/** The middle of a step, mm from the tip. */
export const middleMm = (index: number): number => (index + 0.5) * stepMm;

/**
 * A density along an instrument from weights of any size.
 * Takes the end in mm from the tip and the weight of a place. Gives undefined where no place has a weight.
 * @source plane arithmetic
 */
export function densityOf(endMm: number, weight: (fromTipMm: number) => number): PlaceDensity | undefined {
  const perMm = Float64Array.from({ length: stepsOf(endMm) }, (_, index) => weight(middleMm(index)));
  const area = perMm.reduce((sum, one) => sum + one, 0) * stepMm;
  return area > 0 ? { stepMm, perMm: perMm.map((one) => one / area) } : undefined;
}

/** All places of an instrument alike. */
export function evenDensity(endMm: number): PlaceDensity {
  const count = stepsOf(endMm);
  return { stepMm, perMm: new Float64Array(count).fill(1 / (count * stepMm)) };
}

const stepsOf = (endMm: number): number => Math.max(1, Math.round(endMm / stepMm));

/** A density in which each place counts to a power; the largest counts first, so that no power is too large to write. */
export function raised({ perMm }: PlaceDensity, power: number): PlaceDensity {
  const most = perMm.reduce((best, one) => Math.max(best, one), 0);
  const weights = perMm.map((one) => (one / most) ** power);
  const area = weights.reduce((sum, one) => sum + one, 0) * stepMm;
  return { stepMm, perMm: weights.map((one) => one / area) };
}

/** Densities of one length added up, each with its share; shares add to 1. */
export function mixed(parts: readonly { readonly of: PlaceDensity; readonly share: number }[]): PlaceDensity {
  const [first] = parts;
  const perMm = new Float64Array(first?.of.perMm.length ?? 0);
  for (const { of, share } of parts)
    for (let index = 0; index < perMm.length; index++)
      perMm[index] = (perMm[index] ?? 0) + share * (of.perMm[index] ?? 0);
  return { stepMm, perMm };
}

/** How likely a measured place is under a density, per mm: the density as the measure blurs it. */
export function likelihoodOf({ perMm }: PlaceDensity, { value, sigma }: Measured): number {
  // Narrower than a step the sum would miss the place between two middles.
  const blur = Math.hypot(sigma, stepMm / 2);
  const sum = perMm.reduce(
    (total, one, index) => total + one * Math.exp(-(((middleMm(index) - value) / blur) ** 2) / 2),
    0,
  );
  return (sum * stepMm) / (blur * Math.sqrt(2 * Math.PI));
}

/** Mean and standard deviation of a density, mm from the tip. */
export function momentsOf({ perMm }: PlaceDensity): { mean: number; sd: number } {
  const mean = perMm.reduce((sum, one, index) => sum + one * middleMm(index), 0) * stepMm;
  const variance = perMm.reduce((sum, one, index) => sum + one * (middleMm(index) - mean) ** 2, 0) * stepMm;
  return { mean, sd: Math.sqrt(variance) };
}
