import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Mishap = BodyOf<"mishap">;
type Recall = BodyOf<"recall">;
type Consent = BodyOf<"consent">;
type Reference = BodyOf<"reference">;
type Claim = BodyOf<"claim">;
type Film = BodyOf<"film">;

/** Mishap, in words. */
export const mishapWords: Words<Mishap["what"]> = {
  separatedInstrument: "separated instrument",
  ledge: "ledge",
  perforation: "perforation",
  block: "block",
  transportation: "transportation",
  irrigantExtrusion: "irrigant extruded",
  fillingExtrusion: "filling extruded",
  missedCanal: "missed canal",
  wrongTooth: "wrong tooth",
  swallowedOrInhaled: "swallowed or inhaled",
  other: "other",
};
/** Third, in words. */
export const thirdWords: Words<Mishap["third"]> = {
  coronal: "coronal third",
  middle: "middle third",
  apical: "apical third",
  notRecorded: "not recorded",
};
/** Bend, in words. */
export const bendWords: Words<Mishap["bend"]> = {
  before: "before the bend",
  in: "in the bend",
  beyond: "beyond the bend",
  none: "no bend",
  notRecorded: "not recorded",
};
/** Handled, in words. */
export const handledWords: Words<Mishap["handled"]> = {
  open: "still open",
  removed: "removed",
  bypassed: "bypassed",
  left: "left",
  repaired: "repaired",
  referred: "referred",
  other: "other",
};
/** Told, in words. */
export const toldWords: Words<Mishap["toldPatient"]> = { told: "told", notYet: "not yet told" };
/** Retained, in words. */
export const retainedWords: Words<Recall["retained"]> = { retained: "retained", lost: "lost" };
/** Functional, in words. */
export const functionalWords: Words<Recall["functional"]> = { yes: "yes", no: "no", notAsked: "not asked" };
/** Symptoms, in words. */
export const symptomsWords: Words<Recall["symptoms"]> = {
  none: "none",
  pulpalOrApical: "pulpal or apical",
  other: "of another cause",
  unknown: "not known",
};
/** Present, in words. */
export const presentWords: Words<Recall["swelling"]> = { none: "none", present: "present", notDone: "not done" };
/** Restoration, in words. */
export const restorationWords: Words<Recall["restoration"]> = {
  sound: "sound",
  defective: "defective",
  temporary: "temporary",
  missing: "missing",
  notRecorded: "not recorded",
};
/** On film, in words. */
export const onFilmWords: Words<Recall["onFilm"]> = {
  normal: "normal",
  smaller: "smaller",
  same: "the same",
  larger: "larger",
  new: "new",
  notComparable: "not comparable",
  notTaken: "not taken",
};
/** Imaging, in words. */
export const imagingWords: Words<Recall["imaging"]> = { film: "film", cbct: "CBCT", none: "none" };
/** Reader, in words. */
export const readerWords: Words<Recall["readings"][number]["reader"]> = {
  resident: "resident",
  supervisor: "supervisor",
  third: "third reader",
};
/** Explained by, in words. */
export const explainedByWords: Words<Consent["explainedBy"]> = {
  resident: "resident",
  supervisor: "supervisor",
  other: "other",
};
/** Answered by, in words. */
export const answeredByWords: Words<Consent["answeredBy"]> = {
  patient: "patient",
  parentOrGuardian: "parent or guardian",
  representative: "representative",
};
/** Answer, in words. */
export const answerWords: Words<Consent["answer"]> = { agreed: "agreed", refused: "refused", undecided: "undecided" };
/** Capacity, in words. */
export const capacityWords: Words<Consent["capacity"]> = {
  has: "has capacity",
  lacks: "lacks capacity",
  doubtful: "in doubt",
  minor: "a minor",
};
/** Images for, in words. */
export const imagesForWords: Words<Consent["imagesFor"][number]> = {
  treatment: "treatment",
  teaching: "teaching",
  publication: "publication",
};
/** Design, in words. */
export const designWords: Words<Reference["design"]> = {
  notRecorded: "not recorded",
  review: "review",
  trial: "trial",
  cohort: "cohort",
  caseControl: "case-control",
  crossSectional: "cross-sectional",
  caseSeries: "case series",
  caseReport: "case report",
  bench: "bench",
  animal: "animal",
  guideline: "guideline",
  opinion: "opinion",
};
/** Claim state, in words. */
export const claimStateWords: Words<Claim["state"]> = {
  unsupported: "unsupported",
  supported: "supported",
  contested: "contested",
  benchOnly: "bench work only",
  opinionOnly: "opinion only",
};
/** Speaks, in words. */
export const speaksWords: Words<Claim["speaks"]> = { for: "for", against: "against" };
/** Purpose, in words. */
export const purposeWords: Words<Film["purpose"]> = {
  diagnostic: "diagnostic",
  angled: "angled",
  workingLength: "working length",
  masterCone: "master cone",
  final: "final",
  recall: "recall",
  other: "other",
};
/** Found by, in words. */
export const foundByWords: Words<BodyOf<"anatomy">["foundBy"][number]> = {
  film: "straight film",
  angledFilm: "angled film",
  cbct: "CBCT",
  microscope: "microscope",
  troughing: "troughing",
  instrument: "instrument",
};
/** Review by, in words. */
export const reviewByWords: Words<BodyOf<"review">["by"]> = {
  supervisor: "supervisor",
  programme: "programme",
  peer: "peer",
};
