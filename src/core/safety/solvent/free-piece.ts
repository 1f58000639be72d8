import { type AirState, entryM3, entryZone, inAirMg } from "./air-state.ts";
import { crowdedBetween, turnBetween } from "./first-time.ts";
import { type Evaporation, liquidMg, offeredMgPerMin, untilFirstGoneMg } from "./liquid.ts";
import { type RoomAir, roomModes } from "./room-modes.ts";
import { levelIn, type VapourPiece } from "./vapour-piece.ts";

/** The law that the room follows. */
export interface VapourLaw {
  readonly air: RoomAir;
  readonly evaporation: Evaporation;
  readonly saturationMgM3: number;
}

/**
 * The stretch from a moment on in which the liquid evaporates as it would: until it is gone, the air is saturated, or the time is up.
 * @source docs/methods/solvent.md C4 to C7
 */
export function freePiece(law: VapourLaw, state: AirState, mostMin: number): VapourPiece {
  const { evaporation } = law;
  const offered = offeredMgPerMin(state.liquid, evaporation);
  const lasting = evaporation.kind === "constant" && offered > 0;
  const untilGone = lasting ? untilFirstGoneMg(state.liquid, evaporation) / offered : mostMin;
  const piece = unbroken(law, state, Math.min(mostMin, untilGone));
  return { ...piece, lengthMin: saturatedAfter(law, state, piece) };
}

function unbroken({ air, evaporation }: VapourLaw, state: AirState, lengthMin: number): VapourPiece {
  const mg = liquidMg(state.liquid);
  const offered = offeredMgPerMin(state.liquid, evaporation);
  const fadingPerMin = evaporation.kind === "firstOrder" ? evaporation.ratePerMin : 0;
  const steady = evaporation.kind === "constant" ? offered : 0;
  const fading = evaporation.kind === "firstOrder" ? offered : 0;
  return {
    startMin: state.atMin,
    lengthMin,
    held: { far: 0, near: 0 },
    settling: roomModes(air).map(({ ratePerMin, intake, adds, holds }) => ({
      ...{ ratePerMin, adds, fadingPerMin },
      start: holds.far * state.level.far + holds.near * state.level.near,
      steady: intake * steady,
      fading: intake * fading,
    })),
    released: (after) => steady * after - (fading > 0 ? mg * Math.expm1(-fadingPerMin * after) : 0),
  };
}

/** When the air of the entered zone is full, or the piece's own end. */
function saturatedAfter({ air, saturationMgM3 }: VapourLaw, state: AirState, piece: VapourPiece): number {
  const all = inAirMg(air, state) + liquidMg(state.liquid);
  // Not even all of it in the one zone would fill that.
  if (all <= saturationMgM3 * entryM3(air)) return piece.lengthMin;
  const full = (after: number) => levelIn(piece, entryZone(air), after) > saturationMgM3 * (1 + 1e-12);
  const times = [0, ...crowdedBetween(0, piece.lengthMin), piece.lengthMin];
  const first = times.findIndex(full);
  return first < 1 ? piece.lengthMin : turnBetween(times[first - 1] ?? 0, times[first] ?? 0, full);
}
