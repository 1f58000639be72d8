import { z } from "zod";
import { breakSigns } from "../../core/instrument/break-signs.ts";
import { countedFile } from "../instrument-geometry.ts";
import { between, canalName, day, line, mmBetween, timeOfDay, toothNumber, words, yesNo } from "../values.ts";

/** A length as it was measured, with its standard deviation. */
const measured = z.strictObject({ value: mmBetween(0.01, 60), sigma: mmBetween(0.001, 5) });
const known = z.enum(["yes", "no", "notKnown"]);

/** A separated instrument: what the explanation of its break and the weighing of its removal rest on. */
const separated = z.strictObject({
  tipDepthMm: mmBetween(0.1, 45).optional().describe("Of its tip when it broke, from depthFrom."),
  depthFrom: z.enum(["referencePoint", "orifice"]).optional().describe("The reference point where absent."),
  lengthMm: measured.optional().describe("Of the piece."),
  brokenEndDiameterMm: measured.optional(),
  remainingLengthMm: measured.optional().describe("Of what is left of the instrument, from the break to its handle."),
  tipDiameterMm: measured.optional(),
  signs: z.array(z.enum(breakSigns)).max(breakSigns.length),
  tipBound: known,
  stoppedAtTorqueLimit: known,
  headSeen: z.enum(["seen", "hidden", "notLooked"]),
  stage: z.enum(["beforeCleaning", "partlyCleaned", "cleaned", "notRecorded"]).describe("Of this canal at the break."),
  file: countedFile.optional(),
});

const extrusionSigns = [
  ...(["pain", "swelling", "bruising", "bleeding", "ulcer", "dyingTissue"] as const),
  ...(["numbness", "eye", "airway", "none"] as const),
] as const;
const side = z.enum(["mesial", "distal", "buccal", "lingual", "furcation", "notKnown"]);

/** What each kind of mishap asks besides, absent until it is said; the field is named for the kind. */
export const mishapDetails = {
  separated: separated.optional(),
  ledge: z
    .strictObject({
      depthMm: mmBetween(0, 40).optional(),
      wall: z.enum(["outer", "inner", "notKnown"]).describe("Of the bend."),
      passed: z.enum(["passed", "notPassed", "notTried"]),
    })
    .optional(),
  perforation: z
    .strictObject({
      place: z.enum(["crown", "furcation", "strip", "coronalThird", "middleThird", "apicalThird"]).optional(),
      side,
      diameterMm: mmBetween(0.1, 10).optional(),
      aboveBoneMm: mmBetween(-20, 20).optional().describe("Height over the bone's edge in mm; negative is below it."),
      bleeding: yesNo,
      pocket: yesNo.describe("A pocket reaches it."),
      sealedAfterMin: between(0, 600_000, "min").optional(),
      sealedWith: line.optional().describe("A kind of material."),
    })
    .optional(),
  block: z
    .strictObject({
      by: z.enum(["debris", "dentine", "fillingMaterial", "precipitate", "notKnown"]),
      depthMm: mmBetween(0, 40).optional(),
      passed: z.enum(["passed", "notPassed", "notTried"]),
    })
    .optional(),
  transportation: z
    .strictObject({
      form: z.enum(["zip", "elbow", "foramenMoved", "stripThinned", "other"]).optional(),
      sizeThere: z.int().min(6).max(160).optional(),
      seenOn: line,
    })
    .optional(),
  irrigantExtrusion: z
    .strictObject({
      solution: line,
      percent: between(0, 100, "percent").optional(),
      volumeMl: between(0, 20, "ml").optional(),
      needle: z.enum(["sideVented", "open"]).optional(),
      needleFromStopMm: mmBetween(0, 40).optional().describe("Depth of the needle: from its stop to its tip."),
      needleBound: known,
      time: timeOfDay.optional(),
      pain: z.int().min(0).max(10).optional().describe("0 none, 10 the worst."),
      spread: line.optional().describe("How far swelling and bruising go."),
      signs: z.array(z.enum(extrusionSigns)).max(extrusionSigns.length),
      sentTo: line.optional(),
      seenAgainOn: day.optional(),
    })
    .optional(),
  fillingExtrusion: z
    .strictObject({
      material: line,
      beyondMm: mmBetween(0, 30).optional(),
      near: z.enum(["nothing", "mandibularCanal", "mentalForamen", "sinus", "notKnown"]),
      numbness: yesNo,
      sentTo: line.optional(),
    })
    .optional(),
  missedCanal: z
    .strictObject({
      found: canalName.optional(),
      foundBy: line,
      since: day.optional().describe("Since when it may have been left."),
      treated: z.enum(["treated", "notYet", "left"]),
    })
    .optional(),
  wrongTooth: z
    .strictObject({
      tooth: toothNumber.optional().describe("The one that was worked on."),
      done: z.enum(["anaesthetised", "rubberDam", "accessBegun", "pulpOpened", "filled"]).optional(),
      noticedBy: line,
      restored: line,
    })
    .optional(),
  swallowedOrInhaled: z
    .strictObject({
      object: line,
      time: timeOfDay.optional(),
      counted: line.optional().describe("What was counted out and in."),
      went: z.enum(["swallowed", "inhaled", "notKnown"]),
      signs: z.array(z.enum(["cough", "choking", "wheeze", "pain", "none"])).max(5),
      rubberDam: z.enum(["used", "notUsed"]).optional(),
      found: z.enum(["inMouth", "onFilm", "passed", "takenOut", "notYet"]),
      sentTo: line.optional(),
    })
    .optional(),
} as const;

/** One of the usual immediate steps, done. */
export const stepDone = z.strictObject({ step: z.string().regex(/^[a-z0-9-]{2,60}$/), at: z.iso.datetime() });

/** What the patient was told, when and by whom, and what was agreed. */
export const toldAbout = z.strictObject({
  on: day,
  by: z.enum(["resident", "supervisor", "both"]),
  said: words,
  agreed: words,
});
