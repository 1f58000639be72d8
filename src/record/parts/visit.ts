import { z } from "zod";
import { clinicRules } from "../clinic-rules.ts";
import { definePart } from "../part.ts";
import { between, canalName, day, line, mmBetween, moment, otherPart, toothNumber, words } from "../values.ts";
import {
  anaesthetic,
  anaestheticSolution,
  atMin,
  confirmed,
  instrumentUse,
  irrigant,
  medicament,
  solventDose,
  ultrasonicBurst,
  vitalSigns,
} from "./visit-materials.ts";
import { visitStep } from "./visit-step.ts";

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
  atMin: atMin.optional(),
});

/** The tooth was named again, by looking, before it was opened. */
const timeOutCheck = z.strictObject({
  tooth: toothNumber.describe("As it was named then."),
  filmSide: z.enum(["checked", "noFilm", "notChecked"]).describe("Whether the film was seen the right way round."),
  by: line.min(1).describe("Who was asked, by part: the assistant, the supervisor."),
  atMin: atMin.optional(),
});

const afterwards = z.strictObject({
  on: day,
  what: z.enum(["call", "unplannedVisit", "flareUp", "asked"]),
  pain: between(0, 10, "0 to 10").optional(),
  says: line,
  did: line.optional(),
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
    startedAt: moment.optional().describe("When the clock was started; minutes of the visit count from here."),
    endedAt: moment.optional(),
    aim: line,
    template: z.strictObject({ id: otherPart, name: line }).optional().describe("Of the clinic's cabinet."),
    steps: z.array(visitStep).max(60).optional().describe("What the template asks for, each done or left out."),
    clinic: clinicRules.optional().describe("The clinic's settings as they were when the visit was worked."),
    help: z.enum(["seen", "assisted", "supervised", "alone"]).optional(),
    holdPoints: z.array(holdPoint).max(10),
    timeOut: z.enum(["toothAndSideChecked", "notDone"]),
    timeOutCheck: timeOutCheck.optional(),
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
    nextAnaesthetic: anaestheticSolution
      .extend({ cartridges: between(0, 30, "cartridges").optional().describe("How many are wanted."), confirmed })
      .optional()
      .describe("What would be given next; how much of it is left."),
    canals: z.array(canalRow).max(10),
    irrigation: z.array(irrigant).max(60),
    instruments: z.array(instrumentUse).max(80),
    ultrasonics: z.array(ultrasonicBurst).max(100).optional(),
    solvent: z.array(solventDose).max(20),
    solventPassed: z
      .strictObject({
        volumeMl: between(0.000_001, 50, "ml").optional(),
        massMg: between(0.000_1, 50_000, "mg").optional(),
        says: line,
      })
      .optional()
      .describe("What is taken to have passed the foramen, and why; no one measures it."),
    otherSolventCases: z
      .array(z.strictObject({ ppm: between(0, 10_000, "ppm"), minutes: between(0, 720, "min") }))
      .max(20)
      .optional()
      .describe("What else was breathed on the same day."),
    medicamentOut: z.enum(["removed", "partlyRemoved", "notRemoved"]).optional().describe("Of the visit before."),
    medicament: medicament.optional(),
    temporary: z.strictObject({ material: line, thicknessMm: mmBetween(0, 10).optional() }).optional(),
    orificeBarrier: line.optional(),
    buildUp: line.optional(),
    lots: z
      .array(z.strictObject({ material: line, lot: line, expires: day.optional(), stays: z.boolean().optional() }))
      .max(20),
    films: z.array(otherPart).max(40),
    painBefore: between(0, 10, "0 to 10").optional(),
    painAfter24h: between(0, 10, "0 to 10").optional(),
    painAfter7d: between(0, 10, "0 to 10").optional(),
    flareUp: z.enum(["none", "flareUp", "unplannedCall", "notRecorded"]),
    afterwards: z.array(afterwards).max(20).optional().describe("Calls and visits that nobody had planned."),
    log: z
      .array(z.strictObject({ atMin, says: line.min(1) }))
      .max(100)
      .optional()
      .describe("What was noted while working."),
    told: words.describe("What was told to the patient."),
    note: words,
    nextOn: day.optional(),
  }),
});
