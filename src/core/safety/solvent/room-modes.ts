/** The two zones of a room; without a near field there is the far one alone. */
export type ZoneName = "far" | "near";

/** The air of a room. */
export interface RoomAir {
  readonly farM3: number;
  /** Air that leaves and is replaced, m3/min. */
  readonly outflowM3Min: number;
  /** The half sphere round the mouth, and the air that it trades with the room. */
  readonly near?: { readonly volumeM3: number; readonly exchangeM3Min: number };
}

/** One way in which the room's air settles by itself: it fades at one rate, whatever else goes on. */
export interface RoomMode {
  readonly ratePerMin: number;
  /** How much of the mode a mg a minute of vapour feeds. */
  readonly intake: number;
  /** What the mode adds to the concentration of each zone. */
  readonly adds: Readonly<Record<ZoneName, number>>;
  /** How much of the mode a concentration in each zone holds. */
  readonly holds: Readonly<Record<ZoneName, number>>;
}

/**
 * The room and, where asked, the half sphere of a near field: 2/3 pi r^3, half of whose surface 2 pi r^2 lets air in at the speed of
 * the room's air.
 * @source Nicas, Am Ind Hyg Assoc J 1996;57:542-550 (memory); docs/methods/solvent.md C5
 */
export function roomAir(
  room: { readonly volumeM3: number; readonly airChangesPerHour: number },
  nearField?: { readonly radiusM: number; readonly airSpeedMPerMin: number },
): RoomAir {
  const outflowM3Min = (room.airChangesPerHour * room.volumeM3) / 60;
  if (nearField === undefined) return { farM3: room.volumeM3, outflowM3Min };
  const { radiusM, airSpeedMPerMin } = nearField;
  const volumeM3 = (2 / 3) * Math.PI * radiusM ** 3;
  const exchangeM3Min = (2 * Math.PI * radiusM ** 2 * airSpeedMPerMin) / 2;
  return { farM3: room.volumeM3 - volumeM3, outflowM3Min, near: { volumeM3, exchangeM3Min } };
}

/**
 * The modes of a room: one of a mixed room, two of one with a near field. The equations of two zones become symmetric in the
 * concentrations times the roots of the volumes, so both rates are real, the modes are at right angles, and nothing cancels.
 * @source linear algebra; docs/methods/solvent.md C6
 */
export function roomModes({ farM3, outflowM3Min, near }: RoomAir): RoomMode[] {
  if (near === undefined)
    return [
      { ratePerMin: outflowM3Min / farM3, intake: 1 / farM3, adds: { far: 1, near: 0 }, holds: { far: 1, near: 0 } },
    ];
  const nearRate = near.exchangeM3Min / near.volumeM3;
  const farRate = (near.exchangeM3Min + outflowM3Min) / farM3;
  const coupling = near.exchangeM3Min / Math.sqrt(near.volumeM3 * farM3);
  const fast = (nearRate + farRate + Math.hypot(nearRate - farRate, 2 * coupling)) / 2;
  // The product of both rates is b Q / (V_N V_F): by it the slow one is exact, and 0 in a closed room.
  const slow = ((near.exchangeM3Min / near.volumeM3) * (outflowM3Min / farM3)) / fast;
  const angle = Math.atan2(-2 * coupling, nearRate - farRate) / 2;
  const mode = (ratePerMin: number, inNear: number, inFar: number): RoomMode => ({
    ratePerMin,
    intake: inNear / Math.sqrt(near.volumeM3),
    adds: { near: inNear / Math.sqrt(near.volumeM3), far: inFar / Math.sqrt(farM3) },
    holds: { near: inNear * Math.sqrt(near.volumeM3), far: inFar * Math.sqrt(farM3) },
  });
  return [mode(fast, Math.cos(angle), Math.sin(angle)), mode(slow, -Math.sin(angle), Math.cos(angle))];
}
