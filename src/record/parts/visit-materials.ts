import { z } from "zod";
import { countedFile, instrumentGeometry, reciprocation } from "../instrument-geometry.ts";
import { between, canalName, line, mmBetween, otherPart } from "../values.ts";

const atMin = between(0, 600, "minutes from the visit's start");

/** Blood pressure, pulse and saturation at the chair. */
export const vitalSigns = z.strictObject({
  systolicMmHg: between(40, 300, "mmHg").optional(),
  diastolicMmHg: between(20, 200, "mmHg").optional(),
  pulsePerMin: between(20, 250, "per minute").optional(),
  oxygenSaturation: between(0.5, 1, "fraction").optional(),
});

/** One giving of a local anaesthetic, by its international name. */
export const anaesthetic = z.strictObject({
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
  cartridges: between(0, 12, "cartridges"),
  technique: line.optional(),
  atMin: atMin.optional(),
});

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
    "other",
  ]),
  percent: between(0, 100, "percent").optional(),
  volumeMl: between(0, 200, "ml"),
  minutes: between(0, 120, "min"),
  atMin: atMin.optional(),
  activated: z.enum(["no", "ultrasonic", "sonic", "manual", "laser"]),
  needle: z.strictObject({ depthFromStopMm: mmBetween(0, 30), sideVented: z.boolean() }).optional(),
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

/** One dose of a solvent of root fillings. */
export const solventDose = z.strictObject({
  solvent: z.enum(["chloroform", "xylene", "tetrachloroethylene", "limonene", "eucalyptol", "other"]),
  volumeMl: between(0, 20, "ml"),
  atMin,
  recoveredFraction: between(0, 1, "fraction").optional(),
});

/** What was left in the canals between visits. */
export const medicament = z.strictObject({
  kind: z.enum(["calciumHydroxide", "chlorhexidineGel", "antibioticPaste", "corticosteroidPaste", "none", "other"]),
  detail: line.optional(),
});
