import { z } from "zod";
import { definePart } from "../part.ts";
import { between, canalName, day, mmBetween, otherPart, words } from "../values.ts";

/** Something that went otherwise than meant, what was done about it and what the patient was told. */
export const mishapPart = definePart({
  kind: "mishap",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    on: day,
    visit: otherPart.optional(),
    what: z.enum([
      "separatedInstrument",
      "ledge",
      "perforation",
      "block",
      "transportation",
      "irrigantExtrusion",
      "fillingExtrusion",
      "missedCanal",
      "wrongTooth",
      "swallowedOrInhaled",
      "other",
    ]),
    canal: canalName.optional(),
    instrument: z
      .strictObject({
        size: z.int().min(6).max(160),
        taper: between(0, 0.2, "mm per mm"),
        alloy: z.enum(["stainlessSteel", "nickelTitanium", "heatTreatedNickelTitanium", "other"]),
        movement: z.enum(["hand", "continuous", "reciprocating", "ultrasonic"]),
      })
      .optional(),
    fragmentMm: mmBetween(0.1, 30).optional(),
    third: z.enum(["coronal", "middle", "apical", "notRecorded"]),
    bend: z.enum(["before", "in", "beyond", "none", "notRecorded"]),
    handled: z.enum(["removed", "bypassed", "left", "repaired", "referred", "open", "other"]),
    toldPatient: z.enum(["told", "notYet"]),
    story: words,
  }),
});
