/** Litres a mole of gas at 25 C and 101.325 kPa, as the tables of exposure limits round it. */
const ofTables = 24.45;
const gasConstant = 8.314462618;

/**
 * Litres that a mole of gas takes: 24.45 at 25 C and 101.325 kPa, elsewhere RT/P.
 * @source 29 CFR 1910.1000 Table Z-1, note a (seen); docs/methods/solvent.md C1
 */
export function molarVolume(temperatureC: number, pressureKPa: number): number {
  if (temperatureC === 25 && pressureKPa === 101.325) return ofTables;
  return (gasConstant * (temperatureC + 273.15)) / pressureKPa;
}

/** What turns mg/m3 into parts of a million and back. */
export interface GasUnits {
  readonly ppmOf: (mgM3: number) => number;
  readonly mgM3Of: (ppm: number) => number;
}

/** Units of one vapour in one room. */
export function gasUnits(molarMassGMol: number, litresPerMol: number): GasUnits {
  const factor = litresPerMol / molarMassGMol;
  return { ppmOf: (mgM3) => mgM3 * factor, mgM3Of: (ppm) => ppm / factor };
}
