import { fatiguePlaces, type UsedInstrument } from "./fatigue-places.ts";
import type { Values } from "./fracture-assumed.ts";
import type { FractureOutput } from "./fracture-input.ts";
import { instrumentShape } from "./instrument-shape.ts";
import { momentsOf } from "./place-density.ts";

/** The instruments beside which another is shown. */
const others = [
  { size: 25, taper: 0.02 },
  { size: 25, taper: 0.04 },
  { size: 25, taper: 0.06 },
  { size: 25, taper: 0.08 },
  { size: 40, taper: 0.04 },
];

/**
 * How much longer a fatigue fragment of an instrument is to be expected than one of others in the same uses.
 * Takes the used instrument and the assumptions at their values. Gives mm, below 0 where shorter; none where nothing bends.
 * @source common practice for the direction (larger and more tapered: longer), physics for the amount;
 * docs/methods/fracture.md C14
 */
export function fragmentShifts(used: UsedInstrument, values: Values): FractureOutput["shifts"] {
  const own = meanOf(used, values);
  if (own === undefined) return [];
  return others.flatMap((other) => {
    const mean = meanOf({ ...used, shape: instrumentShape(other) }, values);
    const against = `size ${other.size}, taper ${other.taper.toFixed(2).slice(1)}`;
    return mean === undefined ? [] : [{ against, longerMm: own - mean }];
  });
}

function meanOf(used: UsedInstrument, values: Values): number | undefined {
  const places = fatiguePlaces(used, values);
  return places === undefined ? undefined : momentsOf(places).mean;
}
