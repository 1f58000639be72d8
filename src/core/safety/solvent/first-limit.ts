import { entryZone } from "./air-state.ts";
import type { VapourLaw } from "./free-piece.ts";
import { figureFor } from "./held-to-limits.ts";
import type { Limit } from "./published-limits.ts";
import { type RoomLook, roomLook, zonesOf } from "./room-look.ts";
import type { ZoneName } from "./room-modes.ts";
import type { EvaporatingDose } from "./vapour-course.ts";

/** A limit by mg/m3, after what the rest of the day has taken of it. */
export interface LeftOfLimit {
  readonly limit: Limit;
  readonly leftMgM3: number;
}

/** By how much all doses are multiplied when the first limit is met, and which. */
export interface FirstLimit {
  readonly scale: number;
  readonly limit: Limit;
  readonly zone: ZoneName;
}

/**
 * The first limit that is met as all doses grow together.
 * Takes what is left of each limit, above 0, and what the doses make of the room at their own size.
 * Gives nothing where nothing is dosed, or where the saturated air stays below every limit.
 * @source proportion, as long as the air is not saturated; secants beyond; docs/methods/solvent.md C10
 */
export function firstLimit(
  law: VapourLaw,
  doses: readonly EvaporatingDose[],
  limits: readonly LeftOfLimit[],
  look: RoomLook,
): FirstLimit | undefined {
  const zones = zonesOf(law);
  const first = nearest(zones, limits, look);
  if (first === undefined) return undefined;
  const entered = look.figures[entryZone(law.air)]?.peak ?? 0;
  const growsEvenly = !look.course.saturated && entered * Math.max(1, first.scale) <= law.saturationMgM3;
  if (growsEvenly) return first;
  const at = (scale: number) =>
    nearest(
      zones,
      limits,
      roomLook(
        law,
        doses.map(({ atMin, mg }) => ({ atMin, mg: mg * scale })),
      ),
    );
  return metAt(at, first);
}

/** The limit that would be met first if everything grew by one factor. */
function nearest(
  zones: readonly ZoneName[],
  limits: readonly LeftOfLimit[],
  { figures }: RoomLook,
): FirstLimit | undefined {
  const met = zones.flatMap((zone) => {
    const found = figures[zone];
    return found === undefined
      ? []
      : limits.map(({ limit, leftMgM3 }) => ({ limit, zone, scale: leftMgM3 / figureFor(limit, found) }));
  });
  const finite = met.filter(({ scale }) => Number.isFinite(scale));
  return finite.reduce<FirstLimit | undefined>(
    (best, one) => (best === undefined || one.scale < best.scale ? one : best),
    undefined,
  );
}

/**
 * The size of the doses by secants over logarithms: where vapour grows slower than its doses, a step by proportion falls short.
 */
function metAt(at: (scale: number) => FirstLimit | undefined, guess: FirstLimit): FirstLimit | undefined {
  let before = { size: 0, away: Math.log(guess.scale) };
  let size = before.away;
  for (let step = 0; step < 40; step += 1) {
    const found = at(Math.exp(size));
    if (found === undefined) return undefined;
    const away = Math.log(found.scale);
    if (Math.abs(away) < 1e-11) return { ...found, scale: Math.exp(size) };
    const slope = (away - before.away) / (size - before.size);
    before = { size, away };
    size += slope < -0.05 ? -away / slope : away;
  }
  return undefined;
}
