import type { GasUnits } from "./molar-volume.ts";
import { middleOf, type RoomLook } from "./room-look.ts";
import type { ZoneName } from "./room-modes.ts";
import type { Zone } from "./solvent-output.ts";
import { short, thinned } from "./thinned.ts";

const averagingTimes = [15, 60, 480] as const;

interface Asked {
  readonly zone: ZoneName;
  readonly looks: readonly RoomLook[];
  readonly times: readonly number[];
  readonly units: GasUnits;
  /** What the rest of the day adds to the mean over 480 min. */
  readonly otherMgM3: number;
}

/**
 * The running means of one zone: at each time the mean over the minutes before it, so that each can be drawn against limits of its
 * own averaging time. Told at as many of the times as straight lines between need to be within 2 %.
 * @source differences of exact areas, as for the worst means; docs/methods/solvent.md C8
 */
export function meanSeries({ zone, looks, times, units, otherMgM3 }: Asked): Zone["means"] {
  const areas = looks.map(({ reading }) => reading[zone]?.areaUntil ?? (() => 0));
  const middle = areas.indexOf(middleOf(areas));
  const until = areas.map((areaUntil) => times.map(areaUntil));
  return averagingTimes.map((averagingMin) => {
    const others = averagingMin === 480 ? otherMgM3 : 0;
    const meansAt = (tMin: number, at: number): number[] =>
      areas.map(
        (areaUntil, look) => ((until[look]?.[at] ?? 0) - areaUntil(tMin - averagingMin)) / averagingMin + others,
      );
    const means = times.map(meansAt);
    const stay = thinned(
      times,
      looks.map((_, look) => means.map((all) => all[look] ?? 0)),
    );
    const series = stay.map((at) => pointOf(times[at] ?? 0, means[at] ?? [], middle, units));
    return { averagingMin, series };
  });
}

function pointOf(tMin: number, all: readonly number[], middle: number, { ppmOf }: GasUnits) {
  const mgM3 = all[middle] ?? 0;
  const band = { lowPpm: short(ppmOf(Math.min(...all))), highPpm: short(ppmOf(Math.max(...all))) };
  return { tMin: short(tMin), mgM3: short(mgM3), ppm: short(ppmOf(mgM3)), ...(all.length > 1 ? band : {}) };
}
