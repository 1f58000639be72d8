import type { BodyOf } from "../../../../../record/parts.ts";
import { solventWords } from "../../../../../record/words/visit-words.ts";
import { type AmountWanted, asTyped, oneOf, type RowRead, readAmounts, type Typed } from "./read-typed.ts";

/** One dose of a solvent. */
export type Dose = BodyOf<"visit">["solvent"][number];

const wanted: readonly AmountWanted[] = [
  {
    ...{ at: "volumeMl", unit: "ml", low: 0, high: 20, needed: "how many millilitres? 100 microlitres are 0.1" },
    mistaken: mistakenVolume,
  },
  { at: "atMin", unit: "min", low: 0, high: 600, needed: "at which minute? the clock of the visit does not run" },
  {
    ...{ at: "recoveredFraction", unit: "", low: 0, high: 1 },
    mistaken: (value) => (value > 1 && value <= 100 ? "a share lies between 0 and 1; 40 % is written 0.4" : undefined),
  },
];
const ownWanted: readonly AmountWanted[] = [
  { at: "molarMassGMol", unit: "g/mol", low: 16, high: 1_000, needed: "the sum needs it" },
  {
    ...{ at: "densityGMl", unit: "g/ml", low: 0.4, high: 4, needed: "the sum needs it" },
    mistaken: (value) => (value >= 400 ? `${value} looks like kg/m3; 1478 kg/m3 are written 1.478` : undefined),
  },
  { at: "vapourPressureKPa", unit: "kPa", low: 0.000_001, high: 100, needed: "the sum needs it" },
];

/** A drop is some hundredths of a millilitre. */
function mistakenVolume(value: number): string | undefined {
  if (value === 0) return "0 ml are no dose";
  return value > 20 ? `${value} looks like microlitres; 100 microlitres are written 0.1` : undefined;
}

/** The dose that the fields tell; of another solvent with the numbers of its data sheet. */
export function readDose(typed: Typed): RowRead<Dose> {
  const solvent = oneOf(solventWords, typed.solvent ?? "");
  const name = (typed.name ?? "").trim();
  const { values, faults } = readAmounts(typed, [...wanted, ...(solvent === "other" ? ownWanted : [])]);
  const all = {
    ...faults,
    ...(solvent === undefined ? { solvent: "which solvent?" } : {}),
    ...(solvent === "other" && name === "" ? { name: "what is it called?" } : {}),
  };
  const { volumeMl, atMin, recoveredFraction, molarMassGMol, densityGMl, vapourPressureKPa } = values;
  if (Object.keys(all).length > 0 || solvent === undefined || volumeMl === undefined || atMin === undefined)
    return { faults: all };
  const hasOwn = molarMassGMol !== undefined && densityGMl !== undefined && vapourPressureKPa !== undefined;
  return {
    faults: all,
    row: {
      ...{ solvent, volumeMl, atMin },
      ...(recoveredFraction === undefined ? {} : { recoveredFraction }),
      ...(hasOwn ? { own: { name, molarMassGMol, densityGMl, vapourPressureKPa } } : {}),
    },
  };
}

/** What is known of a dose before it is typed. */
type DoseTold = { readonly [Field in "solvent" | "volumeMl" | "recoveredFraction" | "own"]?: Dose[Field] | undefined };

/** A dose as it stands in the fields, without its minute. */
export const doseTyped = ({ solvent, volumeMl, recoveredFraction, own }: DoseTold = {}): Typed => ({
  ...{ solvent: solvent ?? "", volumeMl: asTyped(volumeMl), recoveredFraction: asTyped(recoveredFraction) },
  ...{ name: own?.name ?? "", molarMassGMol: asTyped(own?.molarMassGMol) },
  ...{ densityGMl: asTyped(own?.densityGMl), vapourPressureKPa: asTyped(own?.vapourPressureKPa) },
});

/** The name of a solvent, of another one by its own. */
export const solventInWords = ({ solvent, own }: Pick<Dose, "solvent" | "own">): string =>
  own?.name ?? solventWords[solvent];
