import type { Interval } from "../basis.ts";
import { reach95 } from "../radiograph/interval-around.ts";
import { quantile } from "../statistics/quantile.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { peakStrain, type Seated, type Strained, thickerBy } from "./bending-strain.ts";
import type { CanalBending } from "./canal-bending.ts";

/** Largest strain and its place with their intervals; what can't be told is absent. */
export interface BendIntervals {
  readonly peakStrain?: Interval;
  readonly fromTipMm?: Interval;
}

/**
 * How sure the largest strain and its place are.
 * Takes the seated instrument with how its canal bends. Gives, for points, what courses that they allow as well come to
 * with diameters drawn from the tolerance; for an arc the tolerance alone; nothing where no family fits.
 * @source docs/methods/bend C6
 */
export function bendIntervals(seated: Seated, bending: CanalBending): BendIntervals {
  if (bending.known === "arc") return { peakStrain: ofTolerance(seated) };
  const peaks = drawnPeaks(seated, bending);
  if (peaks.length === 0) return {};
  return {
    peakStrain: middle95(peaks.map(({ strain }) => strain)),
    ...(peaks.every(({ strain }) => strain > 0) ? { fromTipMm: middle95(peaks.map((peak) => peak.fromTipMm)) } : {}),
  };
}

function ofTolerance(seated: Seated): Interval {
  const by = seated.shape.toleranceMm;
  const [low, high] = [-by, by].map((mm) => peakStrain({ ...seated, shape: thickerBy(seated.shape, mm) }).strain);
  return { low: low ?? 0, high: high ?? 0, level: 0.95 };
}

/** The largest strains on courses that the points allow as well, of instruments within the tolerance; seeded. */
function drawnPeaks(seated: Seated, bending: CanalBending): Strained[] {
  const random = seededRandom(3_630);
  return bending.drawn().map((drawn) => {
    const byMm = (seated.shape.toleranceMm / reach95) * random.normal();
    const tipDepthMm = Math.min(seated.tipDepthMm, drawn.lengthMm);
    return peakStrain({ ...seated, bending: drawn, tipDepthMm, shape: thickerBy(seated.shape, byMm) });
  });
}

function middle95(values: readonly number[]): Interval {
  const sorted = values.toSorted((a, b) => a - b);
  return { low: quantile(sorted, 0.025), high: quantile(sorted, 0.975), level: 0.95 };
}
