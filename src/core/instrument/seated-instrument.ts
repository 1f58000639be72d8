import { faultAt } from "../refusal.ts";
import type { Seated } from "./bending-strain.ts";
import { roundedMm } from "./canal-bending.ts";

/**
 * An instrument seated in its canal, its tip at the canal's end where the depth is that but for rounding.
 * Takes the path at which the depth stands in the input.
 * @throws Refusal `input.impossible` for a depth beyond the canal or beyond the instrument's length.
 * @source docs/methods/bend C2
 */
export function seatedInstrument(seated: Seated, path: string): Seated {
  const { shape, bending, tipDepthMm } = seated;
  if (tipDepthMm > bending.lengthMm + roundedMm)
    throw faultAt(path, `${tipDepthMm} is beyond the canal, ${bending.lengthMm.toFixed(2)} mm long`);
  if (shape.lengthMm !== undefined && tipDepthMm > shape.lengthMm)
    throw faultAt(path, `${tipDepthMm} is beyond the instrument, ${shape.lengthMm} mm long`);
  return { ...seated, tipDepthMm: Math.min(tipDepthMm, bending.lengthMm) };
}
