import { standardWorkingMm, tipOfSize } from "../../core/instrument/iso-series.ts";
import type { InstrumentGeometry } from "../instrument-name.ts";

/** Diameters at stations, from the tip on, mm. */
type Stations = NonNullable<InstrumentGeometry["profile"]>;

/** The widest that a station may be, mm; see the form. */
const widestMm = 2;

/**
 * The stations from which a variable taper is written: the tip and the end of the working part, as the constant taper has them.
 * Takes size, taper and working part (16 mm where absent).
 */
export function stationsAtFirst({
  size,
  taper,
  workingMm = standardWorkingMm,
}: Pick<InstrumentGeometry, "size" | "taper" | "workingMm">): Stations {
  const tipMm = tipOfSize(size);
  return [
    { atMm: 0, diameterMm: tipMm },
    { atMm: workingMm, diameterMm: rounded(Math.min(widestMm, tipMm + taper * workingMm)) },
  ];
}

/** The stations with one more between the last two, halfway: the place is to be written over. */
export function withStation(stations: Stations): Stations {
  const [before, last] = stations.slice(-2);
  if (before === undefined || last === undefined) return stations;
  const middle = {
    atMm: rounded((before.atMm + last.atMm) / 2),
    diameterMm: rounded((before.diameterMm + last.diameterMm) / 2),
  };
  return [...stations.slice(0, -1), middle, last];
}

/** A hundredth of a mm is as fine as anybody writes it. */
const rounded = (mm: number): number => Math.round(mm * 100) / 100;
