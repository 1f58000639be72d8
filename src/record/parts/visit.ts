import { z } from "zod";
import { definePart } from "../part.ts";
import { between, canalName, day, line, mmBetween, otherPart, words } from "../values.ts";
import { anaesthetic, instrumentUse, irrigant, medicament, solventDose, vitalSigns } from "./visit-materials.ts";

/** The states of a canal, in the order in which a treatment goes through them. */
const canalStates = ["notFound", "located", "negotiated", "shaped", "medicated", "filled", "blocked"] as const;

const canalRow = z.strictObject({
  canal: canalName,
  state: z.enum(canalStates).describe("As the visit left it."),
  blockedBy: line.optional(),
  patency: z.enum(["patent", "notPatent", "notTried"]),
  locatorMm: mmBetween(1, 40).optional().describe("Apex locator's reading."),
  reference: line.describe("The reference point of all lengths, as mesiobuccal cusp."),
  workingLengthMm: mmBetween(1, 40).optional(),
  apicalSize: z.int().min(6).max(160).optional().describe("Largest size taken to length, ISO 3630-1."),
  taper: between(0, 0.2, "mm per mm").optional(),
  filledWith: line.optional(),
  technique: line.optional(),
  fillingEndMm: between(-10, 20, "mm short of the apex; below 0 beyond it").optional(),
});

const holdPoint = z.strictObject({
  at: z.enum(["access", "workingLength", "coneFit", "other"]),
  seenBy: z.enum(["supervisor", "nobody"]),
  says: line,
});

/** One visit, as it was worked: what was checked, given, used, measured, filled and told. */
export const visitPart = definePart({
  kind: "visit",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    on: day,
    minutes: between(1, 600, "min").optional(),
    aim: line,
    help: z.enum(["seen", "assisted", "supervised", "alone"]).optional(),
    holdPoints: z.array(holdPoint).max(10),
    timeOut: z.enum(["toothAndSideChecked", "notDone"]),
    historyConfirmed: z.boolean(),
    isolation: z.strictObject({ rubberDam: z.enum(["used", "notUsed", "notRecorded"]), whyNot: line.optional() }),
    vitalSigns: vitalSigns.optional(),
    magnification: z.enum(["none", "loupes", "microscope", "notRecorded"]),
    instrumentSet: z
      .strictObject({
        set: line,
        steriliserCycle: line,
        countedOut: z.int().min(0).optional(),
        countedIn: z.int().min(0).optional(),
      })
      .optional(),
    anaesthetic: z.array(anaesthetic).max(20),
    canals: z.array(canalRow).max(10),
    irrigation: z.array(irrigant).max(60),
    instruments: z.array(instrumentUse).max(80),
    solvent: z.array(solventDose).max(20),
    medicament: medicament.optional(),
    temporary: z.strictObject({ material: line, thicknessMm: mmBetween(0, 10).optional() }).optional(),
    orificeBarrier: line.optional(),
    buildUp: line.optional(),
    lots: z.array(z.strictObject({ material: line, lot: line, expires: day.optional() })).max(20),
    films: z.array(otherPart).max(40),
    painBefore: between(0, 10, "0 to 10").optional(),
    painAfter24h: between(0, 10, "0 to 10").optional(),
    painAfter7d: between(0, 10, "0 to 10").optional(),
    flareUp: z.enum(["none", "flareUp", "unplannedCall", "notRecorded"]),
    told: words.describe("What was told to the patient."),
    note: words,
    nextOn: day.optional(),
  }),
});
