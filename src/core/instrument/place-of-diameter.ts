import type { Interval } from "../basis.ts";
import { faultAt } from "../refusal.ts";
import type { Station } from "./instrument-fields.ts";
import type { InstrumentShape } from "./instrument-shape.ts";

/** A stretch of an instrument, mm from its tip. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
}

/** Diameters nearer to each other than this are one, mm. */
const sameMm = 1e-9;
/** A stretch shorter than this is one place, mm. */
const onePlaceMm = 1e-5;

/**
 * Where along an instrument a diameter is, with how far the tolerance lets it lie off.
 * Takes the shape, the diameter in mm and the path at which it stands in the input.
 * Gives mm from the tip; a diameter outside of the nominal ones by the tolerance at most lies at the nearest end.
 * @throws Refusal `input.impossible` for a diameter that the instrument has nowhere; `input.notDeterminable` where it has
 * it at many places, as one without a taper.
 * @source docs/methods/instrument C4
 */
export function placeOfDiameter(
  shape: InstrumentShape,
  diameterMm: number,
  path: string,
): { atMm: number; interval: Interval } {
  const band = stretchesBetween(shape.stations, diameterMm - shape.toleranceMm, diameterMm + shape.toleranceMm);
  const [first, last] = [band[0], band.at(-1)];
  if (first === undefined || last === undefined) throw nowhere(shape, diameterMm, path);
  const [place, ...more] = nominalPlaces(shape.stations, diameterMm);
  if (place === undefined || more.length > 0 || !isOnePlace(place)) throw manyPlaces(diameterMm, place, path);
  return {
    atMm: (place.fromMm + place.toMm) / 2,
    interval: { low: first.fromMm, high: last.toMm, level: 0.95 },
  };
}

/** Whether a stretch is so short that it is one place. */
export const isOnePlace = ({ fromMm, toMm }: Stretch): boolean => toMm - fromMm <= onePlaceMm;

/** Where the diameter is by the nominal ones; one outside of them lies where the instrument comes nearest to it. */
export function nominalPlaces(stations: readonly Station[], diameterMm: number): Stretch[] {
  const diameters = stations.map((station) => station.diameterMm);
  const nearest = Math.min(Math.max(diameterMm, Math.min(...diameters)), Math.max(...diameters));
  return stretchesBetween(stations, nearest - sameMm, nearest + sameMm);
}

/** The stretches of an instrument on which its diameter lies between two, from the tip on; touching ones are one. */
function stretchesBetween(stations: readonly Station[], lowMm: number, highMm: number): Stretch[] {
  const found: Stretch[] = [];
  stations.slice(1).forEach((end, index) => {
    const start = stations[index];
    const stretch = start === undefined ? undefined : between(start, end, [lowMm, highMm]);
    const before = found.at(-1);
    if (stretch === undefined) return;
    if (before === undefined || stretch.fromMm - before.toMm > onePlaceMm) found.push(stretch);
    else found[found.length - 1] = { fromMm: before.fromMm, toMm: Math.max(before.toMm, stretch.toMm) };
  });
  return found;
}

function between(start: Station, end: Station, [lowMm, highMm]: readonly [number, number]): Stretch | undefined {
  const rise = end.diameterMm - start.diameterMm;
  if (rise === 0)
    return start.diameterMm >= lowMm && start.diameterMm <= highMm ? { fromMm: start.atMm, toMm: end.atMm } : undefined;
  const shares = [lowMm, highMm].map((mm) => (mm - start.diameterMm) / rise).sort((a, b) => a - b);
  const [from = 0, to = 1] = [Math.max(0, shares[0] ?? 0), Math.min(1, shares[1] ?? 1)];
  const place = (share: number): number => start.atMm + share * (end.atMm - start.atMm);
  return from > to ? undefined : { fromMm: place(from), toMm: place(to) };
}

function nowhere({ stations }: InstrumentShape, diameterMm: number, path: string) {
  const diameters = stations.map((station) => station.diameterMm);
  const [least, most] = [Math.min(...diameters), Math.max(...diameters)];
  return faultAt(path, `${diameterMm} is outside the instrument's ${least.toFixed(3)} to ${most.toFixed(3)} mm`);
}

function manyPlaces(diameterMm: number, place: Stretch | undefined, path: string) {
  const where =
    place === undefined ? "" : `, from ${place.fromMm.toFixed(1)} to ${place.toMm.toFixed(1)} mm among them`;
  const says = `${diameterMm} mm is had at more than one place${where}: measure the length itself`;
  return faultAt(path, says, "input.notDeterminable");
}
