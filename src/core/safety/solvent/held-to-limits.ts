import type { GasUnits } from "./molar-volume.ts";
import type { Limit } from "./published-limits.ts";
import type { ZoneName } from "./room-modes.ts";
import type { LimitRow } from "./solvent-output.ts";
import type { ZoneFigures } from "./zone-figures.ts";

/** The figures of one zone over the rates: the middle one, and all of them. */
export interface ZoneLooks {
  readonly zone: ZoneName;
  readonly middle: ZoneFigures;
  readonly all: readonly ZoneFigures[];
}

/** What a limit of an averaging time is held against, mg/m3. */
export function figureFor({ averagingMin }: Pick<Limit, "averagingMin">, figures: ZoneFigures): number {
  if (averagingMin === 0) return figures.peak;
  if (averagingMin === 15) return figures.mean15;
  return averagingMin === 60 ? figures.mean60 : figures.mean480;
}

/**
 * Every limit in each zone, the strictest first: the lowest, of equals the one that averages least; the near zone before the far one.
 * A value at its limit has not passed it.
 * @source docs/methods/solvent.md C9
 */
export function heldToLimits(limits: readonly Limit[], zones: readonly ZoneLooks[], units: GasUnits): LimitRow[] {
  const rows = limits.flatMap((limit) => zones.map((zone) => rowOf(limit, zone, units)));
  return rows.sort((a, b) => a.ppm - b.ppm || a.averagingMin - b.averagingMin || b.zone.localeCompare(a.zone));
}

function rowOf(limit: Limit, { zone, middle, all }: ZoneLooks, units: GasUnits): LimitRow {
  const mgM3 = figureFor(limit, middle);
  const ppm = units.ppmOf(mgM3);
  const ratios = all.map((figures) => units.ppmOf(figureFor(limit, figures)) / limit.ppm);
  const [low, high] = [Math.min(...ratios), Math.max(...ratios)];
  return {
    ...limit,
    ...{ mgM3: units.mgM3Of(limit.ppm), zone, value: { mgM3, ppm }, ratio: ppm / limit.ppm },
    ...(all.length > 1 ? { ratioWithin: { low, high } } : {}),
    passed: high > 1,
    stands: standing(low, high),
  };
}

function standing(low: number, high: number): LimitRow["stands"] {
  if (low > 1) return "above";
  if (high > 1) return "dependsOnRate";
  return high === 1 ? "at" : "below";
}
