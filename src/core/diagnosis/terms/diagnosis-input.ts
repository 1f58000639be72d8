import { z } from "zod";

const yesNo = z.enum(["yes", "no", "notAsked"]).default("notAsked");
const touch = z.enum(["none", "slight", "painful", "notDone"]).default("notDone");
const depth = z.number().min(0).max(20).optional().describe("mm");
const tooth = z.string().describe("Two-digit number of ISO 3950, as 46.");
const seconds = (most: number) => z.number().min(0).max(most).optional();

const thermal = z
  .strictObject({
    reply: z.enum(["none", "normal", "heightened", "notDone"]).default("notDone"),
    lingersSeconds: seconds(600).describe("How long the reply outlasted the stimulus, s."),
  })
  .prefault({});

const testedTooth = z.strictObject({
  tooth,
  role: z.enum(["tooth", "control"]),
  cold: thermal,
  heat: thermal,
  electric: z
    .union([z.enum(["none", "notDone"]), z.number().min(0).max(80)])
    .default("notDone")
    .describe("Reading on the scale of the device, none, or notDone."),
  percussion: touch,
  palpation: touch,
  bite: touch,
  mobility: z
    .union([z.literal("notDone"), z.int().min(0).max(3)])
    .default("notDone")
    .describe("No row of the table looks at it."),
  probingMm: z
    .strictObject({
      ...{ mesiobuccal: depth, buccal: depth, distobuccal: depth },
      ...{ mesiolingual: depth, lingual: depth, distolingual: depth },
    })
    .prefault({}),
});

const history = z.strictObject({
  spontaneousPain: yesNo,
  nightPain: yesNo,
  referredPain: yesNo,
  painToCold: yesNo.describe("Pain to cold now; counts as a reply."),
  painToHeat: yesNo.describe("Pain to heat now; counts as a reply."),
  painToSweet: yesNo,
  relievedByCold: yesNo,
  coldLingersSeconds: seconds(3_600).describe("As told, s."),
  heatLingersSeconds: seconds(3_600).describe("As told, s."),
  painOnBiting: yesNo,
  painOnRelease: yesNo,
  recentOnset: yesNo.describe("No row of the table looks at it."),
  trauma: yesNo,
  traumaOn: z.iso.date().optional(),
  painLike: z
    .array(z.enum(["muscle", "joint", "nerve", "sinus", "heart"]))
    .default([])
    .describe("What the pain behaves like, if not like a tooth; empty where nobody says so."),
  reproduced: z.enum(["byTests", "byNoTest", "notTried"]).default("notTried"),
  trismus: yesNo,
  troubleSwallowing: yesNo,
  troubleBreathing: yesNo,
  numbLip: yesNo,
});

const seen = z.strictObject({
  swelling: z.enum(["none", "intraoral", "extraoral", "notDone"]).default("notDone"),
  swellingAt: z.array(z.enum(["vestibule", "palate", "cheek", "floorOfMouth", "neck"])).default([]),
  swellingOnset: z.enum(["rapid", "gradual", "notAsked"]).default("notAsked"),
  pus: yesNo,
  nodes: yesNo,
  fever: yesNo,
  temperatureC: z.number().min(34).max(43).optional(),
  sinusTract: z.enum(["none", "present", "traced", "notDone"]).default("notDone"),
  tracedTo: tooth.optional(),
  caries: z.enum(["none", "shallow", "deep", "exposed", "notDone"]).default("notDone"),
  exposure: z.enum(["none", "caries", "excavation", "trauma", "notDone"]).default("notDone"),
  crack: z.enum(["none", "suspected", "present", "notDone"]).default("notDone"),
  restoration: z.string().max(300).default("").describe("No row of the table looks at it."),
});

const onFilm = z.strictObject({
  ligament: z.enum(["normal", "widened", "notSeen", "notDone"]).default("notDone"),
  lamina: z.enum(["intact", "lost", "notDone"]).default("notDone"),
  lucency: z.enum(["none", "apical", "lateral", "furcal", "notDone"]).default("notDone"),
  lucencyMm: z.number().min(0).max(40).optional().describe("No row of the table looks at it."),
  lesionFits: z
    .enum(["yes", "no", "notDone"])
    .default("notDone")
    .describe("Whether the lesion fits a tooth's infection."),
  sclerosis: yesNo,
  resorption: z.enum(["none", "internal", "external", "notDone"]).default("notDone"),
  apex: z.enum(["closed", "open", "notDone"]).default("notDone"),
  calcified: yesNo,
  earlierFilling: z.enum(["none", "present", "notDone"]).default("notDone"),
});

/** What was asked, tested, seen and read; whatever is left out was not done. */
export const diagnosisInput = z.strictObject({
  takenOn: z.iso.date().optional().describe("The day of the examination, YYYY-MM-DD."),
  history: history.prefault({}),
  teeth: z.array(testedTooth).min(1).max(8).describe("The tooth in question, once, and its controls."),
  seen: seen.prefault({}),
  onFilm: onFilm.prefault({}),
  existing: z
    .array(z.strictObject({ canal: z.string().min(1), is: z.enum(["untouched", "opened", "medicated", "filled"]) }))
    .optional()
    .describe(
      "Existing treatment, canal by canal; left out where nobody knows, empty where the tooth was never opened.",
    ),
  medical: z.strictObject({ antiresorptive: yesNo }).prefault({}),
  lingeringFromSeconds: z
    .number()
    .gt(0)
    .max(120)
    .optional()
    .describe("Your protocol's cut, s; without it a reply of 3 to 30 s asks for a second sign."),
  newTraumaUntilDays: z
    .int()
    .min(1)
    .max(1_000)
    .optional()
    .describe("Your protocol's cut, days; without it 4 to 9 months are neither new nor old."),
});

/** See {@link diagnosisInput}. */
export type DiagnosisInput = z.infer<typeof diagnosisInput>;
/** One tooth of the sheet of tests. */
export type TestedTooth = DiagnosisInput["teeth"][number];
