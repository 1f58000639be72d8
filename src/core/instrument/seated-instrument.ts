import { faultAt } from "../refusal.ts";
import type { Seated } from "./bending-strain.ts";
import { roundedMm } from "./canal-bending.ts";

/**
 * An instrument seated in its canal, its tip at the canal's end where the depth is that but for rounding.
 * Takes where the depth stands in the input, and where the course begins if that is not the orifice: a depth that is
 * counted from another place than the course is the usual fault.
 * @throws Refusal `input.impossible` for a depth beyond the canal or beyond the instrument's length.
 * @source docs/methods/bend C2
 */
export function seatedInstrument(seated: Seated, path: string, begins = ""): Seated {
  const { shape, bending, tipDepthMm } = seated;
  if (tipDepthMm > bending.lengthMm + roundedMm)
    throw faultAt(path, `${tipDepthMm} is beyond the canal, ${bending.lengthMm.toFixed(2)} mm long${begins}`);
  if (shape.lengthMm !== undefined && tipDepthMm > shape.lengthMm)
    throw faultAt(path, `${tipDepthMm} is beyond the instrument, ${shape.lengthMm} mm long`);
  return { ...seated, tipDepthMm: Math.min(tipDepthMm, bending.lengthMm) };
}
