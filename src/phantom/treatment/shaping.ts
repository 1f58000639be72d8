import { type Canal, canalRadiusMm } from "../anatomy/canal.ts";

/** How a canal was shaped: the last size at its end, and its taper. */
export interface Shaping {
  /** Diameter at the end of the work. */
  readonly sizeMm: number;
  /** Growth of the diameter, mm per mm. */
  readonly taper: number;
  /** Where the work ended, counted from the orifice. */
  readonly endMm: number;
}

/** Radius of a canal after shaping: the wider of the canal and the last instrument, and never over 0.62 mm. */
export function shapedRadiusMm(
  canal: Canal,
  shaping: Shaping | undefined,
  alongMm: number,
): ReturnType<typeof canalRadiusMm> {
  const natural = canalRadiusMm(canal, alongMm);
  if (shaping === undefined || alongMm > shaping.endMm) return natural;
  const cut = Math.min(0.62, (shaping.sizeMm + shaping.taper * (shaping.endMm - alongMm)) / 2);
  return { mesiodistal: Math.max(natural.mesiodistal, cut), buccolingual: Math.max(natural.buccolingual, cut) };
}
