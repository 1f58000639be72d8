import type { InstrumentUse } from "./use-of-step.ts";

/**
 * The largest instrument that went all the way: by the size of its tip, then by its taper.
 * Takes the rows of one canal and its working length in mm. Gives nothing where the length, or every depth, is unknown.
 */
export function largestToLength(
  uses: readonly InstrumentUse[],
  workingLengthMm: number | undefined,
): InstrumentUse | undefined {
  if (workingLengthMm === undefined) return undefined;
  const whole = uses.filter(
    ({ depthMm, depthFrom }) => depthMm !== undefined && depthFrom !== "orifice" && depthMm >= workingLengthMm,
  );
  return [...whole].sort((a, b) => b.size - a.size || b.taper - a.taper)[0];
}
