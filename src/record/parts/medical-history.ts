import { z } from "zod";
import { definePart } from "../part.ts";
import { day, line, words } from "../values.ts";

/** What a history can raise; each flag changes something later. */
export const medicalFlags = [
  "anticoagulant",
  "antiresorptive",
  "jawIrradiation",
  "endocarditisRisk",
  "pregnancy",
  "immuneSuppression",
  "diabetes",
  "allergyLatex",
  "allergySulphite",
  "allergyPenicillin",
  "allergyIodine",
  "allergyHypochlorite",
  "allergyAnaesthetic",
  "highBloodPressure",
  "bloodPressureUncontrolled",
  "cardiacRisk",
  "unselectiveBetaBlocker",
  "tricyclic",
  "cocaineWithinADay",
  "thyroidUncontrolled",
  "methaemoglobinRisk",
  "liverFailure",
  "asthma",
  "epilepsy",
  "other",
] as const;

/** The medical history as it was taken on one day, with its flags. */
export const medicalHistoryPart = definePart({
  kind: "medicalHistory",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    takenOn: day,
    nothingToNote: z.boolean(),
    flags: z.array(z.strictObject({ flag: z.enum(medicalFlags), detail: line.optional() })).max(30),
    denied: z.array(z.enum(medicalFlags)).max(30).optional().describe("Asked for, and answered with no."),
    medicines: z.array(line).max(40).describe("By their international names."),
    physicalStatusClass: z.int().min(1).max(5).optional().describe("ASA class, 1 to 5."),
    bodyMassKg: z.number().min(2).max(400).optional(),
    note: words,
  }),
});
