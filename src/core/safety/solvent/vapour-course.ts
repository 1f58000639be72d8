import { type AirState, entryM3, entryZone } from "./air-state.ts";
import { freePiece, type VapourLaw } from "./free-piece.ts";
import { noLiquid, offeredMgPerMin, withDose, withoutVapour } from "./liquid.ts";
import type { ZoneName } from "./room-modes.ts";
import { keepsMgPerMin, saturatedPiece } from "./saturated-piece.ts";
import { areaIn, levelIn, type VapourPiece } from "./vapour-piece.ts";

/** Numbers that differ by less are the same: rounding must not make the air full and not full in turns. */
const tie = 1e-12;

/** A dose that evaporates: what suction takes is no longer in it. */
export interface EvaporatingDose {
  readonly atMin: number;
  readonly mg: number;
}

/** Vapour and liquid from the first dose to the end, exact piece by piece. */
export interface VapourCourse {
  readonly pieces: readonly VapourPiece[];
  readonly startMin: number;
  readonly end: AirState;
  /** Whether the air was full at any time. */
  readonly saturated: boolean;
}

/**
 * What the doses make of the room's air: pieces between doses, ends of doses and times of saturation, each solved exactly.
 * Takes doses in the order of their times, and the end, at or after the last of them.
 * @source docs/methods/solvent.md C4 to C7
 */
export function vapourCourse(law: VapourLaw, doses: readonly EvaporatingDose[], endMin: number): VapourCourse {
  const startMin = doses[0]?.atMin ?? 0;
  const pieces: VapourPiece[] = [];
  let state: AirState = { atMin: startMin, liquid: noLiquid, level: { far: 0, near: 0 } };
  let saturated = false;
  const runUntil = (stopMin: number) => {
    while (state.atMin < stopMin) {
      const full = staysFull(law, state);
      const most = stopMin - state.atMin;
      const piece = full ? saturatedPiece(law, state, most) : freePiece(law, state, most);
      pieces.push(piece);
      saturated ||= full;
      state = {
        ...after(law, state, piece),
        atMin: piece.lengthMin === most ? stopMin : state.atMin + piece.lengthMin,
      };
    }
  };
  for (const dose of doses) {
    runUntil(dose.atMin);
    state = dosed(law, state, dose.mg);
  }
  runUntil(endMin);
  return { pieces, startMin, end: state, saturated };
}

function staysFull(law: VapourLaw, { liquid, level }: AirState): boolean {
  const offered = offeredMgPerMin(liquid, law.evaporation);
  const full = level[entryZone(law.air)] >= law.saturationMgM3 * (1 - tie);
  return full && offered > keepsMgPerMin(law, level.far) * (1 + tie);
}

function after({ air, evaporation, saturationMgM3 }: VapourLaw, { liquid }: AirState, piece: VapourPiece) {
  const level = (zone: ZoneName) => {
    const found = levelIn(piece, zone, piece.lengthMin);
    // The time of saturation is known to a rounding: what is above by that must not start the next piece as more than full.
    return zone === entryZone(air) ? Math.min(found, saturationMgM3) : found;
  };
  const released = piece.released(piece.lengthMin);
  return { liquid: withoutVapour(liquid, released, evaporation), level: { far: level("far"), near: level("near") } };
}

/** A dose that evaporates at once fills the air up to saturation; the rest stays liquid and follows as the air is renewed. */
function dosed({ air, evaporation, saturationMgM3 }: VapourLaw, state: AirState, mg: number): AirState {
  if (evaporation.kind !== "instant") return { ...state, liquid: withDose(state.liquid, mg, evaporation) };
  const zone = entryZone(air);
  const filled = state.level[zone] + mg / entryM3(air);
  if (filled <= saturationMgM3) return { ...state, level: { ...state.level, [zone]: filled } };
  const level = Math.max(state.level[zone], saturationMgM3);
  const rest = mg - (level - state.level[zone]) * entryM3(air);
  return { ...state, level: { ...state.level, [zone]: level }, liquid: withDose(state.liquid, rest, evaporation) };
}

/** The area under the concentration of the whole course, mg min/m3. */
export const wholeArea = ({ pieces }: VapourCourse, zone: ZoneName): number =>
  pieces.reduce((sum, piece) => sum + areaIn(piece, zone, piece.lengthMin), 0);
