import { Refusal } from "../refusal.ts";
import { instrumentFaults, statedTipMm, workingEndMm } from "./instrument-faults.ts";
import type { Instrument, Station } from "./instrument-fields.ts";
import { toleranceOfTip } from "./iso-series.ts";

/** What an instrument is along its axis. */
export interface InstrumentShape {
  /** Diameters from the tip to the end of what is known, straight lines between; the first stands at 0. */
  readonly stations: readonly Station[];
  /** The diameter that the taper has at the very tip, mm; a real tip is shaped and thinner. */
  readonly tipMm: number;
  /** End of the working part from the tip, mm. */
  readonly workingMm: number;
  /** From tip to handle, mm; undefined where nobody said. */
  readonly lengthMm: number | undefined;
  /** How far a diameter may be off by the standard, mm. */
  readonly toleranceMm: number;
}

/**
 * The shape of an instrument.
 * Takes the instrument and the path at which it stands in the input.
 * Gives diameters in mm at places from the tip, capped where the instrument stops widening.
 * @throws Refusal `input.impossible` with every fault: two of size and tipMm or none, of taper and profile, a working part
 * longer than the instrument, a diameter of 0 or less or above 2 mm, stations out of order.
 * @source ISO 3630-1 (memory); docs/methods/instrument C1, C2
 */
export function instrumentShape(instrument: Instrument, path = ""): InstrumentShape {
  const faults = instrumentFaults(instrument, path);
  const tipMm = statedTipMm(instrument);
  if (faults.length > 0 || tipMm === undefined)
    throw new Refusal("input.impossible", "Cannot take the instrument: it can't be as described", {}, faults);
  const workingMm = workingEndMm(instrument);
  const { profile, taper = 0, maxDiameterMm, lengthMm } = instrument;
  const nominal: Station[] =
    profile === undefined
      ? [tipAt(tipMm), { atMm: workingMm, diameterMm: tipMm + taper * workingMm }]
      : [tipAt(tipMm), ...profile.filter(({ atMm }) => atMm > 0)];
  const stations = maxDiameterMm === undefined ? nominal : capped(nominal, maxDiameterMm);
  return { stations, tipMm, workingMm, lengthMm, toleranceMm: toleranceOfTip(tipMm) };
}

const tipAt = (diameterMm: number): Station => ({ atMm: 0, diameterMm });

/**
 * The diameter of an instrument at a distance from its tip, in mm.
 * Takes mm from the tip. Gives the last known diameter beyond the working part, where the shaft is.
 * @source docs/methods/instrument C1
 */
export function diameterAt({ stations }: InstrumentShape, fromTipMm: number): number {
  const after = stations.findIndex(({ atMm }) => atMm >= fromTipMm);
  const end = stations[after < 0 ? stations.length - 1 : after];
  const start = after > 0 ? stations[after - 1] : undefined;
  if (end === undefined) throw new RangeError("an instrument has a tip");
  if (start === undefined) return end.diameterMm;
  return between(start, end, (fromTipMm - start.atMm) / (end.atMm - start.atMm)).diameterMm;
}

function between(start: Station, end: Station, share: number): Station {
  return {
    atMm: start.atMm + share * (end.atMm - start.atMm),
    diameterMm: start.diameterMm + share * (end.diameterMm - start.diameterMm),
  };
}

/** The same stations no thicker than a cap, with a station wherever the cap is met. */
function capped(stations: readonly Station[], capMm: number): Station[] {
  return stations.flatMap((station, index) => {
    const before = stations[index - 1];
    const kept = { atMm: station.atMm, diameterMm: Math.min(station.diameterMm, capMm) };
    if (before === undefined || before.diameterMm < capMm === station.diameterMm < capMm) return [kept];
    const share = (capMm - before.diameterMm) / (station.diameterMm - before.diameterMm);
    return share > 0 && share < 1 ? [{ ...between(before, station, share), diameterMm: capMm }, kept] : [kept];
  });
}
