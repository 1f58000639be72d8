import { z } from "zod";
import { share } from "../../core/share.ts";
import { definePart } from "../part.ts";
import { between, canalName, day, line, mmBetween, toothNumber, words, yesNo } from "../values.ts";

const thermal = z.strictObject({
  reply: z.enum(["none", "normal", "heightened", "notDone"]),
  lingersSeconds: between(0, 600, "s").optional().describe("How long the reply outlasted the stimulus."),
});
const touch = z.enum(["none", "slight", "painful", "notDone"]);
const probing = z.strictObject({
  mesiobuccal: mmBetween(0, 20).optional(),
  buccal: mmBetween(0, 20).optional(),
  distobuccal: mmBetween(0, 20).optional(),
  mesiolingual: mmBetween(0, 20).optional(),
  lingual: mmBetween(0, 20).optional(),
  distolingual: mmBetween(0, 20).optional(),
});

const testedTooth = z.strictObject({
  tooth: toothNumber,
  role: z.enum(["tooth", "control"]),
  cold: thermal,
  heat: thermal,
  electric: z.union([z.enum(["none", "notDone"]), between(0, 80, "scale of the device")]),
  percussion: touch,
  palpation: touch,
  bite: touch,
  mobility: z.union([z.literal("notDone"), z.int().min(0).max(3)]),
  probingMm: probing,
});

const history = z.strictObject({
  spontaneousPain: yesNo,
  painToCold: yesNo,
  painToHeat: yesNo,
  relievedByCold: yesNo,
  painOnBiting: yesNo,
  trauma: yesNo,
  recentOnset: yesNo,
  referredPain: yesNo.optional(),
  painToSweet: yesNo.optional(),
  nightPain: yesNo.optional(),
  painOnRelease: yesNo.optional(),
  coldLingersSeconds: between(0, 3_600, "s, as told").optional(),
  heatLingersSeconds: between(0, 3_600, "s, as told").optional(),
  traumaOn: day.optional(),
  painLike: z
    .array(z.enum(["muscle", "joint", "nerve", "sinus", "heart"]))
    .max(5)
    .optional()
    .describe("What the pain behaves like, if not like a tooth."),
  reproduced: z.enum(["byTests", "byNoTest", "notTried"]).optional().describe("Whether a test brings the pain back."),
  trismus: yesNo.optional(),
  troubleSwallowing: yesNo.optional(),
  troubleBreathing: yesNo.optional(),
  numbLip: yesNo.optional(),
});

const seen = z.strictObject({
  swelling: z.enum(["none", "intraoral", "extraoral", "notDone"]),
  sinusTract: z.enum(["none", "present", "traced", "notDone"]),
  tracedTo: toothNumber.optional(),
  caries: z.enum(["none", "shallow", "deep", "exposed", "notDone"]),
  crack: z.enum(["none", "suspected", "present", "notDone"]),
  restoration: line,
  fever: yesNo,
  swellingAt: z
    .array(z.enum(["vestibule", "palate", "cheek", "floorOfMouth", "neck"]))
    .max(5)
    .optional(),
  swellingOnset: z.enum(["rapid", "gradual", "notAsked"]).optional(),
  temperatureC: between(34, 43, "°C").optional(),
  nodes: yesNo.optional().describe("Lymph nodes, enlarged or tender."),
  pus: yesNo.optional(),
  exposure: z
    .enum(["none", "caries", "excavation", "trauma", "notDone"])
    .optional()
    .describe("What laid the pulp open."),
  post: yesNo.optional(),
  rotationDeg: between(0, 180, "degrees").optional(),
  tiltDeg: between(0, 90, "degrees").optional(),
  mouthOpeningMm: mmBetween(0, 80).optional(),
  gag: yesNo.optional(),
  ferruleHeightMm: mmBetween(0, 15).optional(),
  ferruleWidthMm: mmBetween(0, 10).optional(),
});

const onFilm = z.strictObject({
  ligament: z.enum(["normal", "widened", "notSeen", "notDone"]),
  lamina: z.enum(["intact", "lost", "notDone"]),
  lucency: z.enum(["none", "apical", "lateral", "furcal", "notDone"]),
  lucencyMm: mmBetween(0, 40).optional(),
  sclerosis: yesNo,
  resorption: z.enum(["none", "internal", "external", "notDone"]),
  apex: z.enum(["closed", "open", "notDone"]),
  calcified: yesNo,
  earlierFilling: z.enum(["none", "present", "notDone"]),
  earlierFillingEndMm: between(-5, 20, "mm short of the apex, negative if beyond").optional(),
  lesionFits: z.enum(["yes", "no", "notDone"]).optional().describe("Whether the lesion fits a tooth's infection."),
  lucencyAtRoots: z.array(canalName).max(6).optional(),
});

const existingCanal = z.strictObject({
  canal: canalName,
  is: z.enum(["untouched", "opened", "medicated", "filled"]).describe("As the examination met it."),
});

const prior = z
  .strictObject({
    share: share.optional().describe("Share of teeth like this one."),
    events: z.int().min(0).max(1_000_000).optional(),
    n: z.int().min(1).max(1_000_000).optional(),
    dependence: share.optional().describe("0 if the tests are independent, 1 if they repeat each other."),
    from: line.describe("Where the share comes from."),
  })
  .describe("How often a tooth like this one is diseased, before any test.");

const protocol = z
  .strictObject({
    lingeringFromSeconds: between(0.1, 120, "s; from it on a thermal reply lingers").optional(),
    newTraumaUntilDays: z.int().min(1).max(1_000).optional().describe("Up to these days an injury is new."),
  })
  .describe("The cuts that this examination is judged by, where the sources conflict.");

/** One examination: what was asked, tested on the tooth and its controls, seen, and read on the film. */
export const findingsPart = definePart({
  kind: "findings",
  version: 1,
  single: false,
  migrations: [],
  body: z
    .strictObject({
      ...{ takenOn: day, history, teeth: z.array(testedTooth).min(1).max(8), seen, onFilm, note: words },
      existing: z.array(existingCanal).max(10).optional(),
      prior: prior.optional(),
      protocol: protocol.optional(),
    })
    .check(({ value, issues }) => {
      const say = (input: unknown, path: PropertyKey[], message: string) =>
        issues.push({ code: "custom", input, path, message });
      const tooth = value.teeth.find((one) => one.role === "tooth")?.tooth;
      value.teeth.forEach((one, index) => {
        if (one.role === "control" && one.tooth === tooth)
          say(one.tooth, ["teeth", index, "tooth"], "is the tooth itself and can't be its own control");
      });
      value.existing?.forEach(({ canal }, index, all) => {
        if (all.findIndex((one) => one.canal === canal) < index)
          say(canal, ["existing", index, "canal"], "is named twice");
      });
      if ((value.prior?.events ?? 0) > (value.prior?.n ?? Number.POSITIVE_INFINITY))
        say(value.prior?.events, ["prior", "events"], "is more than the n it is counted among");
    }),
});
