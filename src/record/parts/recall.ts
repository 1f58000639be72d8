import { z } from "zod";
import { definePart } from "../part.ts";
import { day, line, mmBetween, otherPart, words } from "../values.ts";

const touch = z.enum(["none", "slight", "painful", "notDone"]);

const reading = z.strictObject({
  reader: z.enum(["resident", "supervisor", "third"]),
  score: z.int().min(1).max(5).describe("Periapical index, 1 to 5 (Orstavik, Kerekes & Eriksen 1986)."),
  blind: z.boolean(),
});

/** One recall: what was felt and found, what the film shows, and how it was read. */
export const recallPart = definePart({
  kind: "recall",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    on: day,
    retained: z.enum(["retained", "lost"]),
    lostBecause: line.optional(),
    functional: z.enum(["yes", "no", "notAsked"]),
    symptoms: z.enum(["none", "pulpalOrApical", "other", "unknown"]),
    percussion: touch,
    palpation: touch,
    sinusTract: z.enum(["none", "present", "notDone"]),
    swelling: z.enum(["none", "present", "notDone"]),
    mobility: z.union([z.literal("notDone"), z.int().min(0).max(3)]),
    probingDeepestMm: mmBetween(0, 20).optional(),
    restoration: z.enum(["sound", "defective", "temporary", "missing", "notRecorded"]),
    onFilm: z.enum(["normal", "smaller", "same", "larger", "new", "notComparable", "notTaken"]),
    imaging: z.enum(["film", "cbct", "none"]),
    film: otherPart.optional(),
    readings: z.array(reading).max(6),
    lesionMm: mmBetween(0, 40).optional(),
    nextOn: day.optional(),
    note: words,
  }),
});
