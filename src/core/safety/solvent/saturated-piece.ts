import type { AirState } from "./air-state.ts";
import { turnBetween } from "./first-time.ts";
import type { VapourLaw } from "./free-piece.ts";
import { liquidMg, untilFirstGoneMg } from "./liquid.ts";
import type { Settling, VapourPiece } from "./vapour-piece.ts";
import { areaIn, levelIn } from "./vapour-piece.ts";

/**
 * The stretch from a moment on in which the entered zone stays saturated: the liquid gives only what leaves that zone, until it is
 * gone or would give less than leaves.
 * @source docs/methods/solvent.md C7
 */
export function saturatedPiece(law: VapourLaw, state: AirState, mostMin: number): VapourPiece {
  const piece = held(law, state, mostMin);
  const ends = (after: number) => spent(law, state, piece, after);
  return ends(mostMin) ? { ...piece, lengthMin: turnBetween(0, mostMin, ends) } : piece;
}

function held(law: VapourLaw, state: AirState, lengthMin: number): VapourPiece {
  const { air, saturationMgM3: most } = law;
  const { near } = air;
  if (near === undefined) {
    const released = (after: number) => air.outflowM3Min * most * after;
    return { startMin: state.atMin, lengthMin, held: { far: most, near: 0 }, settling: [], released };
  }
  const far: Settling = {
    ratePerMin: (near.exchangeM3Min + air.outflowM3Min) / air.farM3,
    start: state.level.far,
    steady: (near.exchangeM3Min * most) / air.farM3,
    ...{ fading: 0, fadingPerMin: 0, adds: { far: 1, near: 0 } },
  };
  const bare = { startMin: state.atMin, lengthMin, held: { far: 0, near: most }, settling: [far] };
  const piece: VapourPiece = { ...bare, released: () => 0 };
  return { ...bare, released: (after) => near.exchangeM3Min * (most * after - areaIn(piece, "far", after)) };
}

/** What leaves a saturated zone a minute, mg: what would keep it so. */
export function keepsMgPerMin({ air, saturationMgM3: most }: VapourLaw, farLevel: number): number {
  return air.near === undefined ? air.outflowM3Min * most : air.near.exchangeM3Min * (most - farLevel);
}

function spent(law: VapourLaw, { liquid }: AirState, piece: VapourPiece, after: number): boolean {
  const released = piece.released(after);
  if (law.evaporation.kind !== "firstOrder") return released >= untilFirstGoneMg(liquid, law.evaporation);
  const offered = law.evaporation.ratePerMin * (liquidMg(liquid) - released);
  return offered <= keepsMgPerMin(law, levelIn(piece, "far", after));
}
