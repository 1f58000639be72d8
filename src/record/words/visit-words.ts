import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Visit = BodyOf<"visit">;
type Canal = Visit["canals"][number];
type Irrigant = Visit["irrigation"][number];
type Instrument = Visit["instruments"][number];
type Anaesthetic = Visit["anaesthetic"][number];
type Vasoconstrictor = NonNullable<Anaesthetic["vasoconstrictor"]>["name"];

/** Canal state, in words. */
export const canalStateWords: Words<Canal["state"]> = {
  notFound: "not found",
  located: "located",
  negotiated: "negotiated",
  shaped: "shaped",
  medicated: "medicated",
  filled: "filled",
  blocked: "blocked",
};
/** Patency, in words. */
export const patencyWords: Words<Canal["patency"]> = {
  patent: "patent",
  notPatent: "not patent",
  notTried: "not tried",
};
/** Help, in words. */
export const helpWords: Words<NonNullable<Visit["help"]>> = {
  seen: "seen",
  assisted: "assisted",
  supervised: "supervised",
  alone: "alone",
};
/** Time out, in words. */
export const timeOutWords: Words<Visit["timeOut"]> = {
  toothAndSideChecked: "tooth and side checked",
  notDone: "not done",
};
/** Rubber dam, in words. */
export const rubberDamWords: Words<Visit["isolation"]["rubberDam"]> = {
  used: "rubber dam",
  notUsed: "without rubber dam",
  notRecorded: "not recorded",
};
/** Magnification, in words. */
export const magnificationWords: Words<Visit["magnification"]> = {
  none: "none",
  loupes: "loupes",
  microscope: "microscope",
  notRecorded: "not recorded",
};
/** Flare up, in words. */
export const flareUpWords: Words<Visit["flareUp"]> = {
  none: "none",
  flareUp: "flare-up",
  unplannedCall: "unplanned call",
  notRecorded: "not recorded",
};
/** What came after a visit, in words. */
export const afterwardsWords: Words<NonNullable<Visit["afterwards"]>[number]["what"]> = {
  call: "unplanned call",
  unplannedVisit: "unplanned visit",
  flareUp: "flare-up",
  asked: "asked how it went",
};
/** Medicament of the visit before, in words. */
export const medicamentOutWords: Words<NonNullable<Visit["medicamentOut"]>> = {
  removed: "removed",
  partlyRemoved: "partly removed",
  notRemoved: "not removed",
};
/** Hold point, in words. */
export const holdPointWords: Words<Visit["holdPoints"][number]["at"]> = {
  access: "access",
  workingLength: "working length",
  coneFit: "fit of the cone",
  other: "other",
};
/** Seen by, in words. */
export const seenByWords: Words<Visit["holdPoints"][number]["seenBy"]> = {
  supervisor: "seen by the supervisor",
  nobody: "seen by nobody",
};
/** Agent, in words. */
export const agentWords: Words<Anaesthetic["agent"]> = {
  articaine: "articaine",
  lidocaine: "lidocaine",
  mepivacaine: "mepivacaine",
  prilocaine: "prilocaine",
  bupivacaine: "bupivacaine",
};
/** Vasoconstrictor, in words. */
export const vasoconstrictorWords: Words<Vasoconstrictor> = {
  epinephrine: "epinephrine",
  levonordefrin: "levonordefrin",
  felypressin: "felypressin",
};
/** Solution, in words. */
export const solutionWords: Words<Irrigant["solution"]> = {
  "sodium hypochlorite": "sodium hypochlorite",
  EDTA: "EDTA",
  chlorhexidine: "chlorhexidine",
  "citric acid": "citric acid",
  saline: "saline",
  ethanol: "ethanol",
  "sterile water": "sterile water",
  "hydrogen peroxide": "hydrogen peroxide",
  "maleic acid": "maleic acid",
  "phosphoric acid": "phosphoric acid",
  iodine: "iodine",
  other: "other",
};
/** Activated, in words. */
export const activatedWords: Words<Irrigant["activated"]> = {
  no: "not activated",
  ultrasonic: "ultrasonic",
  sonic: "sonic",
  manual: "by hand",
  laser: "laser",
};
/** Alloy, in words. */
export const alloyWords: Words<Instrument["alloy"]> = {
  stainlessSteel: "stainless steel",
  nickelTitanium: "nickel-titanium",
  heatTreatedNickelTitanium: "heat-treated nickel-titanium",
  other: "other",
};
/** Movement, in words. */
export const movementWords: Words<Instrument["movement"]> = {
  hand: "by hand",
  continuous: "continuous",
  reciprocating: "reciprocating",
  ultrasonic: "ultrasonic",
};
/** Solvent, in words. */
export const solventWords: Words<Visit["solvent"][number]["solvent"]> = {
  chloroform: "chloroform",
  xylene: "xylene",
  tetrachloroethylene: "tetrachloroethylene",
  limonene: "limonene",
  eucalyptol: "eucalyptol",
  other: "other",
};
/** Medicament, in words. */
export const medicamentWords: Words<NonNullable<Visit["medicament"]>["kind"]> = {
  none: "none",
  calciumHydroxide: "calcium hydroxide",
  chlorhexidineGel: "chlorhexidine gel",
  antibioticPaste: "antibiotic paste",
  corticosteroidPaste: "corticosteroid paste",
  other: "other",
};
