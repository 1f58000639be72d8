import { firstLimit, type LeftOfLimit } from "./first-limit.ts";
import type { VapourLaw } from "./free-piece.ts";
import type { GasUnits } from "./molar-volume.ts";
import type { Limit } from "./published-limits.ts";
import { middleOf, type RoomLook } from "./room-look.ts";
import type { SolventOutput } from "./solvent-output.ts";
import type { EvaporatingDose } from "./vapour-course.ts";

interface Asked {
  readonly laws: readonly VapourLaw[];
  readonly looks: readonly RoomLook[];
  readonly doses: readonly EvaporatingDose[];
  readonly dispensedMl: number;
  readonly limits: readonly Limit[];
  /** What the rest of the day adds to the mean over 480 min. */
  readonly otherMgM3: number;
  readonly units: GasUnits;
}

type Told = Pick<SolventOutput, "volumeAtFirstLimitMl" | "firstLimit" | "notComputed">;

/**
 * How much could be dispensed in all, at the same times and in the same shares, until the first limit is met; or why not.
 * @source docs/methods/solvent.md C10
 */
export function volumeAtFirstLimit(asked: Asked): Told {
  const left = leftOfLimits(asked);
  const spent = left.find(({ leftMgM3 }) => leftMgM3 <= 0);
  if (asked.limits.length === 0) return absent("no limit is set in any list that was read");
  if (asked.doses.every(({ mg }) => mg === 0)) return absent("nothing was dispensed that evaporates");
  if (spent !== undefined) return absent(`the day's other cases alone reach the limit of ${spent.limit.authority}`);
  const found = asked.laws.flatMap((law, at) => {
    const look = asked.looks[at];
    const first = look === undefined ? undefined : firstLimit(law, asked.doses, left, look);
    return first === undefined ? [] : [{ ...first, ml: first.scale * asked.dispensedMl }];
  });
  if (found.length < asked.laws.length) return absent("even saturated air stays below every limit");
  const { ml, limit, zone } = middleOf(found);
  const volumes = found.map((one) => one.ml);
  const volumeWithinMl = { low: Math.min(...volumes), high: Math.max(...volumes) };
  return {
    volumeAtFirstLimitMl: ml,
    firstLimit: {
      ...{ authority: limit.authority, averagingMin: limit.averagingMin, zone },
      ...(volumes.length > 1 ? { volumeWithinMl } : {}),
    },
    notComputed: [],
  };
}

const leftOfLimits = ({ limits, otherMgM3, units }: Asked): LeftOfLimit[] =>
  limits.map((limit) => ({
    limit,
    leftMgM3: units.mgM3Of(limit.ppm) - (limit.averagingMin === 480 ? otherMgM3 : 0),
  }));

const absent = (why: string): Told => ({
  notComputed: [
    { name: "volumeAtFirstLimitMl", why },
    { name: "firstLimit", why },
  ],
});
