import type { CaseFacts } from "../facts.ts";
import type { medicalFlags } from "../parts/medical-history.ts";
import type { ways } from "../parts/plan.ts";
import type { BodyOf } from "../parts.ts";
import type { Settings } from "../settings.ts";

type Case = BodyOf<"case">;
type Diagnosis = BodyOf<"diagnosis">;

/** What each value of a list is called on the page, in the order in which it is offered. */
export type Words<Value extends string> = Readonly<Record<Value, string>>;

/** Sex, in words. */
export const sexWords: Words<Case["sex"]> = {
  female: "woman",
  male: "man",
  other: "other",
  notRecorded: "not recorded",
};
/** Treatment, in words. */
export const treatmentWords: Words<Case["treatment"]> = {
  firstTreatment: "first treatment",
  retreatment: "retreatment",
  apicalBarrier: "apical barrier",
  vitalPulp: "vital pulp treatment",
  surgery: "surgery",
  watch: "watch",
};
/** Pulpal, in words. */
export const pulpalWords: Words<Diagnosis["pulpal"]> = {
  normalPulp: "normal pulp",
  reversiblePulpitis: "reversible pulpitis",
  symptomaticIrreversiblePulpitis: "symptomatic irreversible pulpitis",
  asymptomaticIrreversiblePulpitis: "asymptomatic irreversible pulpitis",
  pulpNecrosis: "pulp necrosis",
  previouslyTreated: "previously treated",
  previouslyInitiatedTherapy: "previously initiated therapy",
  notDetermined: "not determined",
};
/** Apical, in words. */
export const apicalWords: Words<Diagnosis["apical"]> = {
  normalApicalTissues: "normal apical tissues",
  symptomaticApicalPeriodontitis: "symptomatic apical periodontitis",
  asymptomaticApicalPeriodontitis: "asymptomatic apical periodontitis",
  acuteApicalAbscess: "acute apical abscess",
  chronicApicalAbscess: "chronic apical abscess",
  condensingOsteitis: "condensing osteitis",
  notDetermined: "not determined",
};
/** Source of a complaint, in words. */
export const painSourceWords: Words<NonNullable<Diagnosis["source"]>> = {
  thisTooth: "this tooth",
  anotherTooth: "another tooth",
  notOdontogenicSuspected: "not odontogenic suspected",
  notReproduced: "not reproduced",
};
/** Way, in words. */
export const wayWords: Words<(typeof ways)[number]> = {
  watch: "watch",
  indirectCapping: "indirect capping",
  directCapping: "direct capping",
  partialPulpotomy: "partial pulpotomy",
  fullPulpotomy: "full pulpotomy",
  treat: "root canal treatment",
  apicalBarrier: "apical barrier",
  regeneration: "regenerative treatment",
  retreat: "retreatment",
  surgery: "apical surgery",
  replantation: "intentional replantation",
  extraction: "extraction",
};
/** Flag, in words. */
export const flagWords: Words<(typeof medicalFlags)[number]> = {
  anticoagulant: "anticoagulant or platelet inhibitor",
  antiresorptive: "antiresorptive medicine",
  jawIrradiation: "irradiation of the jaw",
  endocarditisRisk: "risk of endocarditis",
  pregnancy: "pregnancy",
  immuneSuppression: "immune suppression",
  diabetes: "diabetes",
  allergyLatex: "allergy: latex",
  allergySulphite: "allergy: sulphite",
  allergyPenicillin: "allergy: penicillin",
  allergyIodine: "allergy: iodine",
  allergyHypochlorite: "allergy: hypochlorite",
  allergyAnaesthetic: "allergy: local anaesthetic",
  highBloodPressure: "high blood pressure",
  bloodPressureUncontrolled: "blood pressure, uncontrolled",
  cardiacRisk: "cardiac risk",
  unselectiveBetaBlocker: "non-selective beta blocker",
  tricyclic: "tricyclic antidepressant",
  cocaineWithinADay: "cocaine within a day",
  thyroidUncontrolled: "thyroid, uncontrolled",
  methaemoglobinRisk: "risk of methaemoglobin",
  liverFailure: "liver failure",
  asthma: "asthma",
  epilepsy: "epilepsy",
  other: "other",
};
/** Role, in words. */
export const roleWords: Words<Settings["role"]> = {
  resident: "resident",
  supervisor: "supervisor",
  programme: "programme director",
};
/** Notation, in words. */
export const notationWords: Words<Settings["notation"]> = {
  twoDigit: "two-digit (26)",
  universal: "universal (14)",
  quadrant: "quadrant (upper left 6)",
};

/** What a list knows of a value that reached it as bare text; the text itself if nothing. */
export const wordFor = (words: Readonly<Record<string, string>>, value: string): string => words[value] ?? value;

/** `woman, 57`: who the patient is, at a given day; the age is the year's difference, as only the year of birth is kept. */
export function patientInWords({ sex, birthYear }: Pick<CaseFacts, "sex" | "birthYear">, onDay: string): string {
  const age = String(Number(onDay.slice(0, 4)) - birthYear);
  return sex === "notRecorded" || sex === "other" ? `${age} years` : `${personWord(sex, Number(age))}, ${age}`;
}

function personWord(sex: string, age: number): string {
  if (sex === "female") return age < 18 ? "girl" : "woman";
  return age < 18 ? "boy" : "man";
}
