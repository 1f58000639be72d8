import { z } from "zod";
import { definePart } from "../part.ts";
import { between, day, line, mmBetween, toothNumber, words, yesNo } from "../values.ts";

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
});

const seen = z.strictObject({
  swelling: z.enum(["none", "intraoral", "extraoral", "notDone"]),
  sinusTract: z.enum(["none", "present", "traced", "notDone"]),
  tracedTo: toothNumber.optional(),
  caries: z.enum(["none", "shallow", "deep", "exposed", "notDone"]),
  crack: z.enum(["none", "suspected", "present", "notDone"]),
  restoration: line,
  fever: yesNo,
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
});

/** One examination: what was asked, tested on the tooth and its controls, seen, and read on the film. */
export const findingsPart = definePart({
  kind: "findings",
  version: 1,
  single: false,
  migrations: [],
  body: z
    .strictObject({ takenOn: day, history, teeth: z.array(testedTooth).min(1).max(8), seen, onFilm, note: words })
    .check(({ value, issues }) => {
      const tooth = value.teeth.find((one) => one.role === "tooth")?.tooth;
      value.teeth.forEach((one, index) => {
        if (one.role === "control" && one.tooth === tooth)
          issues.push({
            code: "custom",
            input: one.tooth,
            path: ["teeth", index, "tooth"],
            message: "is the tooth itself and can't be its own control",
          });
      });
    }),
});
