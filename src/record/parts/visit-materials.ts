import { z } from "zod";
import { countedFile, instrumentGeometry, reciprocation } from "../instrument-geometry.ts";
import { between, canalName, day, line, mmBetween, otherPart } from "../values.ts";

/** Minutes from the visit's start. */
export const atMin = between(0, 600, "minutes from the visit's start");

/** Who said that something unusual, or something over a limit, is to be recorded as it is, after having been asked. */
export const confirmed = z
  .strictObject({
    by: line.min(1),
    asked: z.array(line).min(1).max(12).describe("What was asked, in the words that were read."),
    unusual: z
      .array(z.enum(["bodyMassKg", "percent", "ratio", "iuPerMl", "cartridgeMl", "cartridges"]))
      .max(6)
      .optional()
      .describe("Amounts that are as written although they are unusual."),
    because: line.optional(),
  })
  .optional();

/** What is measured of the patient at the chair. */
export const vitalSigns = z.strictObject({
  bodyMassKg: between(2, 400, "kg").optional(),
  heightCm: between(45, 250, "cm").optional(),
  ageYears: between(0, 120, "years").optional().describe("Where it is known better than by the year of birth."),
  systolicMmHg: between(40, 300, "mmHg").optional(),
  diastolicMmHg: between(20, 200, "mmHg").optional(),
  pulsePerMin: between(20, 250, "per minute").optional(),
  oxygenSaturation: between(0.5, 1, "fraction").optional(),
});

const solutionInCartridge = {
  agent: z.enum(["articaine", "lidocaine", "mepivacaine", "prilocaine", "bupivacaine"]),
  percent: between(0.1, 5, "percent"),
  vasoconstrictor: z
    .strictObject({
      name: z.enum(["epinephrine", "levonordefrin", "felypressin"]),
      ratio: z.number().min(10_000).max(1_000_000).optional(),
      iuPerMl: z.number().gt(0).max(1).optional(),
    })
    .optional(),
  cartridgeMl: between(0.5, 3, "ml"),
};

/** One giving of a local anaesthetic, by its international name. */
export const anaesthetic = z.strictObject({
  ...solutionInCartridge,
  cartridges: between(0, 30, "cartridges"),
  technique: line.optional(),
  atMin: atMin.optional(),
  confirmed,
});
/** A solution of a local anaesthetic in its cartridge. */
export const anaestheticSolution = z.strictObject(solutionInCartridge);

/** One irrigant as it was used. */
export const irrigant = z.strictObject({
  solution: z.enum([
    "sodium hypochlorite",
    "EDTA",
    "chlorhexidine",
    "citric acid",
    "saline",
    "ethanol",
    "sterile water",
    "hydrogen peroxide",
    "maleic acid",
    "phosphoric acid",
    "iodine",
    "other",
  ]),
  named: line.optional().describe("What it is, where it is another one."),
  canal: canalName.optional().describe("All canals that were open, where absent."),
  percent: between(0, 100, "percent").optional(),
  volumeMl: between(0, 200, "ml"),
  minutes: between(0, 120, "min"),
  atMin: atMin.optional(),
  activated: z.enum(["no", "ultrasonic", "sonic", "manual", "laser"]),
  needle: z
    .strictObject({
      depthFromStopMm: mmBetween(0, 30),
      sideVented: z.boolean(),
      gauge: z.int().min(18).max(36).optional(),
      flowMlPerMin: between(0, 120, "ml/min").optional(),
      freeMovement: z.boolean().optional().describe("false: it was locked in the canal."),
    })
    .optional(),
  confirmed,
});

/** One burst of ultrasound on something in the tooth, and the pause after it. */
export const ultrasonicBurst = z.strictObject({
  atMin: atMin.optional(),
  canal: canalName.optional(),
  on: z.enum(["fragment", "post", "root canal"]),
  alloy: z.enum(["nickelTitanium", "steel"]).optional().describe("Of a fragment."),
  seconds: between(0, 1_800, "s").describe("Without a pause."),
  restSeconds: between(0, 7_200, "s"),
  coolant: z.enum(["none", "air", "water"]),
  power: between(0, 100, "as the device shows it").optional(),
});

/** One instrument in one canal, by geometry and alloy. */
export const instrumentUse = z.strictObject({
  canal: canalName.optional(),
  ...instrumentGeometry,
  rpm: between(0, 20_000, "turns a minute").optional(),
  reciprocation: reciprocation.optional(),
  torqueLimitNmm: between(0.1, 200, "N mm, as set at the motor").optional(),
  seconds: between(0, 3_600, "s").optional(),
  depthMm: mmBetween(0, 40)
    .optional()
    .describe("Of its tip, from the canal's reference point unless depthFrom says otherwise."),
  depthFrom: z.enum(["referencePoint", "orifice"]).optional(),
  engagedFraction: between(0, 1, "share of the turns at that depth").optional(),
  instrument: otherPart.optional().describe("Of the clinic's cabinet."),
  file: countedFile.optional(),
});

/** A solvent by its own numbers, as its safety data sheet prints them. */
export const ownSolvent = z.strictObject({
  name: line.min(1),
  molarMassGMol: between(16, 1_000, "g/mol"),
  densityGMl: between(0.4, 4, "g/ml"),
  vapourPressureKPa: between(0.000_001, 100, "kPa at the room's temperature"),
});

/** One dose of a solvent of root fillings. */
export const solventDose = z.strictObject({
  solvent: z.enum(["chloroform", "xylene", "tetrachloroethylene", "limonene", "eucalyptol", "other"]),
  volumeMl: between(0, 20, "ml"),
  atMin,
  recoveredFraction: between(0, 1, "fraction").optional(),
  own: ownSolvent.optional().describe("Of another solvent: its numbers."),
  confirmed,
});
/** What was left in the canals between visits. */
export const medicament = z.strictObject({
  changeBy: day.optional().describe("When it is to come out or to be changed."),
  kind: z.enum(["calciumHydroxide", "chlorhexidineGel", "antibioticPaste", "corticosteroidPaste", "none", "other"]),
  detail: line.optional(),
});
