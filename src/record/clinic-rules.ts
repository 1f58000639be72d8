import { z } from "zod";
import { between, line, mmBetween } from "./values.ts";

const roomShape = z.strictObject({
  name: line.optional().describe("As the clinic calls the room."),
  volumeM3: between(2, 5_000, "m3"),
  airChangesPerHour: between(0, 200, "fresh air an hour, in room volumes; 0 is a closed room"),
  temperatureC: between(5, 45, "degrees Celsius").optional(),
  nearField: z
    .strictObject({ radiusM: between(0.05, 2, "m"), airSpeedMPerMin: between(0.01, 120, "m/min") })
    .optional()
    .describe("Air round the mouth apart from the room's; without it the room counts as mixed throughout."),
  assistantIn: z
    .enum(["near", "far"])
    .optional()
    .describe("The air that the assistant breathes; the near one where absent."),
  from: line.describe("Where these figures come from: measured, a plan of the ventilation, an assumption."),
});

const exposureLimit = z.strictObject({
  solvent: line.min(1).describe("The solvent's name, as in a dose."),
  authority: line.min(1),
  year: z.int().min(1900).max(2200).optional(),
  ppm: between(0.000_001, 1_000_000, "ppm").optional(),
  mgM3: between(0.000_001, 10_000_000, "mg/m3").optional(),
  averagingMin: z.union([z.literal(0), z.literal(15), z.literal(60), z.literal(480)]).describe("0 for a ceiling."),
  source: line.min(1).describe("Where it is printed."),
});

const doseLimit = z.strictObject({
  agent: z.string().regex(/^[a-z]{4,40}$/, "is not an agent by its international name in small letters, as lidocaine"),
  mgPerKg: between(0.001, 50, "mg/kg").optional(),
  maxMg: between(0.001, 5_000, "mg").optional(),
  source: line.min(1),
});

const vasoconstrictorLimit = z.strictObject({
  name: z.enum(["epinephrine", "levonordefrin", "felypressin"]),
  limit: between(0.001, 5_000, "micrograms in a visit; of felypressin international units"),
  source: line.min(1),
});

const contact = z.strictObject({
  solution: line.min(1),
  minutesAtLeast: between(0, 240, "min").optional(),
  minutesAtMost: between(0, 240, "min").optional(),
  volumeMlAtLeast: between(0, 500, "ml").optional(),
});

const irrigationRules = z.strictObject({
  rinse: z
    .strictObject({ volumeMl: between(0, 100, "ml"), minutes: between(0, 60, "min") })
    .optional()
    .describe("What a rinse needs at least to keep two solutions apart."),
  openEndedMm: mmBetween(0, 20).optional().describe("Least distance of an open needle from its stop, mm."),
  sideVentedMm: mmBetween(0, 20).optional().describe("Of a closed, side-vented one, mm."),
  flowMlPerMin: between(0.1, 60, "ml/min").optional().describe("Flow that is not to be passed."),
  protocol: z.array(contact).max(20).optional(),
});

/**
 * What sums of a visit rest on and the clinic settles: its room, whose limits, its rules of irrigation. They are set once in the settings; a
 * visit keeps a copy of what was set when it was worked, so that a later setting changes no past visit.
 */
export const clinicRules = z.strictObject({
  room: roomShape.optional(),
  evaporationPerMin: z
    .strictObject({ low: between(0.0001, 10_000, "per min"), high: between(0.0001, 10_000, "per min") })
    .optional()
    .describe("Share of a solvent's dose that goes into the air in a minute, of what is left."),
  exposureLimits: z.array(exposureLimit).max(20).optional().describe("That bind here, beside the published."),
  doseLimits: z.enum(["unitedStatesLabel", "canada", "australia", "conservative", "own"]).optional(),
  ownDoseLimits: z.array(doseLimit).max(20).optional().describe("Used where doseLimits is own."),
  vasoconstrictorLimits: z.array(vasoconstrictorLimit).max(3).optional().describe("In place of the published ones."),
  irrigation: irrigationRules.optional(),
});
/** See {@link clinicRules}. */
export type ClinicRules = z.infer<typeof clinicRules>;

/** What an emergency page tells of, each with the clinic's own words beside the usual first steps. */
export const emergencyNames = ["hypochlorite", "swallowedOrInhaled", "anaestheticOverdose", "allergy"] as const;
/** One of {@link emergencyNames}. */
export type EmergencyName = (typeof emergencyNames)[number];

/** Whom to call, and what the clinic itself has written down for emergencies. */
export const emergencySettings = z.strictObject({
  calls: z
    .array(z.strictObject({ who: line.min(1), number: line.min(1) }))
    .max(12)
    .describe("The first is called first."),
  kit: line.optional().describe("Where the emergency kit and the oxygen are."),
  protocols: z.partialRecord(z.enum(emergencyNames), z.string().trim().max(8_000)),
});
/** See {@link emergencySettings}. */
export type EmergencySettings = z.infer<typeof emergencySettings>;
