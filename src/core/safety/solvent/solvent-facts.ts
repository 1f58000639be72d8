import crc from "../../../../data/crc-physical-constants/source.json" with { type: "json" };
import type { SolventInput, SolventName } from "./solvent-input.ts";

/** What is known of a solvent itself. */
export interface SolventFacts {
  readonly name: string;
  readonly molarMassGMol: number;
  readonly densityGMl: number;
  /** At the temperature of the room. */
  readonly vapourPressurePa: number;
}

/** Between 20 and 25 C the published vapour pressures hold; they are carried 5 C further at either end, not beyond. */
export const vapourPressureRangeC = { low: 15, high: 30 };

const { oXylene, pXylene } = crc.solvents;
/** Mixed xylene: the densest and the most volatile of its isomers, both of which count more vapour. */
const xylene = { ...oXylene, vapourPressurePa: pXylene.vapourPressurePa };
const published = { ...crc.solvents, xylene } satisfies Record<SolventName, typeof xylene>;

/**
 * A solvent's own numbers, or those of the published tables; ln of the vapour pressure is a straight line over 1 / T.
 * @source CRC Handbook, Landolt-Boernstein IV/20 (seen); docs/methods/solvent.md C2
 */
export function solventFacts({
  solvent,
  temperatureC = 25,
}: Pick<SolventInput, "solvent" | "temperatureC">): SolventFacts {
  if (typeof solvent === "object") {
    const { own: name, molarMassGMol, densityGMl, vapourPressureKPa } = solvent;
    return { name, molarMassGMol, densityGMl, vapourPressurePa: vapourPressureKPa * 1000 };
  }
  const { molarMassGMol, densityGMl, vapourPressurePa } = published[solvent];
  const { at20C, at25C } = vapourPressurePa;
  const inverse = (celsius: number) => 1 / (celsius + 273.15);
  const share = (inverse(temperatureC) - inverse(20)) / (inverse(25) - inverse(20));
  return { name: solvent, molarMassGMol, densityGMl, vapourPressurePa: at20C * (at25C / at20C) ** share };
}
