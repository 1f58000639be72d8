import { z } from "zod";
import { clinicRules, emergencySettings } from "./clinic-rules.ts";

/** What the person set once: who writes, which notation they read, and their own click error. */
export const settingsSchema = z.strictObject({
  who: z.string().trim().max(80).describe("The name under which changes are recorded; asked for at the first start."),
  role: z.enum(["resident", "supervisor", "programme"]),
  notation: z.enum(["twoDigit", "universal", "quadrant"]),
  clickSigmaPx: z.number().gt(0).max(20).describe("Standard deviation of a click, px per axis."),
  clickSigmaFrom: z
    .strictObject({ exerciseId: z.string().max(60), at: z.iso.datetime(), n: z.int().min(1) })
    .optional()
    .describe(
      "The exercise that the click's error was measured by, when it was finished, and its clicks; absent: assumed.",
    ),
  stopShortMm: z
    .number()
    .min(0)
    .max(5)
    .describe("How far short of the radiographic apex a length stops; common practice 0.5."),
  clinic: clinicRules.optional().describe("What a new visit is given; see there."),
  emergency: emergencySettings.optional(),
});
/** See {@link settingsSchema}. */
export type Settings = z.infer<typeof settingsSchema>;

/**
 * The settings that a person's wish makes of those that stood: where the click's error came from can't be wished, it stays
 * with its value and goes with it.
 */
export function wishedSettings(stood: Settings, { clickSigmaFrom: _wished, ...wish }: Settings): Settings {
  const stays = stood.clickSigmaFrom !== undefined && stood.clickSigmaPx === wish.clickSigmaPx;
  return stays ? { ...wish, clickSigmaFrom: stood.clickSigmaFrom } : wish;
}

/**
 * Whether sums of a case would differ under other settings.
 * Takes two settings. Gives true where one that sums rest on differs; all of those are of marks on films.
 */
export const sumsDiffer = (before: Settings, after: Settings): boolean =>
  before.clickSigmaPx !== after.clickSigmaPx || before.stopShortMm !== after.stopShortMm;

/** The settings before anybody has changed them; `who` is empty until the person has been asked. */
export const firstSettings: Settings = {
  who: "",
  role: "resident",
  notation: "twoDigit",
  clickSigmaPx: 1,
  stopShortMm: 0.5,
};
