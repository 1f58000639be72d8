import type { ZoneLooks } from "./held-to-limits.ts";
import { meanSeries } from "./mean-series.ts";
import type { GasUnits } from "./molar-volume.ts";
import { middleOf, type RoomLook } from "./room-look.ts";
import type { ZoneName } from "./room-modes.ts";
import type { Level, Zone } from "./solvent-output.ts";
import type { ZoneFigures } from "./zone-figures.ts";
import { zoneSeries } from "./zone-series.ts";

const none: ZoneFigures = { peak: 0, peakAtMin: 0, mean15: 0, mean60: 0, mean480: 0 };

/** The figures of a zone over the rates, with what the rest of the day adds to the mean over 8 hours. */
export function zoneWithDay(zone: ZoneName, looks: readonly RoomLook[], otherMgM3: number): ZoneLooks {
  const all = looks.map(({ figures }) => {
    const found = figures[zone] ?? none;
    return { ...found, mean480: found.mean480 + otherMgM3 };
  });
  return { zone, all, middle: middleOf(all) };
}

/** How a zone is told. */
export function zoneTold(
  { zone, middle, all }: ZoneLooks,
  {
    looks,
    times,
    units,
    atOnce,
    otherMgM3,
  }: {
    looks: readonly RoomLook[];
    times: readonly number[];
    units: GasUnits;
    atOnce: boolean;
    otherMgM3: number;
  },
): Zone {
  const told = (of: (figures: ZoneFigures) => number) => levelOver(of(middle), all.map(of), units);
  return {
    peak: { ...told(({ peak }) => peak), atMin: middle.peakAtMin },
    mean15: told(({ mean15 }) => mean15),
    mean60: told(({ mean60 }) => mean60),
    mean480: told(({ mean480 }) => mean480),
    upperBound: atOnce && zone === "near",
    series: zoneSeries(zone, times, middleOf(looks), looks),
    means: meanSeries({ zone, looks, times, units, otherMgM3 }),
  };
}

function levelOver(mgM3: number, all: readonly number[], { ppmOf }: GasUnits): Level {
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const both = (value: number) => ({ mgM3: value, ppm: ppmOf(value) });
  return { ...both(mgM3), ...(all.length > 1 ? { within: { low: both(low), high: both(high) } } : {}) };
}
