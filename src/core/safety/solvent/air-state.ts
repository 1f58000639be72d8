import type { Liquid } from "./liquid.ts";
import type { RoomAir, ZoneName } from "./room-modes.ts";

/** Liquid and vapour at one moment. */
export interface AirState {
  readonly atMin: number;
  readonly liquid: Liquid;
  /** mg/m3; near is 0 where there is no near field. */
  readonly level: Readonly<Record<ZoneName, number>>;
}

/** The zone that the vapour enters. */
export const entryZone = (air: RoomAir): ZoneName => (air.near === undefined ? "far" : "near");

/** The volume of the zone that the vapour enters, m3. */
export const entryM3 = (air: RoomAir): number => air.near?.volumeM3 ?? air.farM3;

/** Vapour in the air, mg. */
export const inAirMg = (air: RoomAir, { level }: AirState): number =>
  level.far * air.farM3 + level.near * (air.near?.volumeM3 ?? 0);
