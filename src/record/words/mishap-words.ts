import type { ExplanationName } from "../../core/instrument/fracture-input.ts";
import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Mishap = BodyOf<"mishap">;
type Separated = NonNullable<Mishap["separated"]>;
type Of<Kind extends keyof Mishap> = NonNullable<Mishap[Kind]>;

/** Sign on a broken instrument, in words; the last five need a microscope. */
export const breakSignWords: Words<Separated["signs"][number]> = {
  flutesUnwound: "flutes unwound",
  flutesWoundTighter: "flutes wound tighter",
  bent: "bent",
  noneVisible: "none to be seen",
  striations: "striations",
  dimples: "dimples",
  circularAbrasion: "circular abrasion marks",
  severalOrigins: "several origins",
  inclusionOrPore: "inclusion or pore",
};
/** Explanation of a break, in words. */
export const explanationWords: Words<ExplanationName> = {
  bendingFatigue: "bending fatigue",
  torsionalOverload: "torsional overload",
  flawOrJoint: "a flaw or joint",
};
/** Known or not, in words. */
export const knownWords: Words<Separated["tipBound"]> = { yes: "yes", no: "no", notKnown: "not known" };
/** Head of a piece, in words. */
export const headSeenWords: Words<Separated["headSeen"]> = {
  seen: "seen",
  hidden: "hidden",
  notLooked: "not looked",
};
/** Stage of the canal at the break, in words. */
export const stageWords: Words<Separated["stage"]> = {
  beforeCleaning: "before cleaning",
  partlyCleaned: "partly cleaned",
  cleaned: "cleaned",
  notRecorded: "not recorded",
};
/** Where a depth is measured from, in words. */
export const depthFromWords: Words<NonNullable<Separated["depthFrom"]>> = {
  referencePoint: "reference point",
  orifice: "orifice",
};
/** Wall of a ledge, in words. */
export const ledgeWallWords: Words<Of<"ledge">["wall"]> = {
  outer: "outer wall of the bend",
  inner: "inner wall of the bend",
  notKnown: "not known",
};
/** Whether an obstacle was passed, in words. */
export const passedWords: Words<Of<"ledge">["passed"]> = {
  passed: "passed",
  notPassed: "not passed",
  notTried: "not tried",
};
/** Place of a perforation, in words. */
export const perforationPlaceWords: Words<NonNullable<Of<"perforation">["place"]>> = {
  crown: "crown",
  furcation: "floor, into the furcation",
  strip: "strip, inner wall of a bend",
  coronalThird: "coronal third",
  middleThird: "middle third",
  apicalThird: "apical third",
};
/** Side of a tooth, in words. */
export const sideOfToothWords: Words<Of<"perforation">["side"]> = {
  mesial: "mesial",
  distal: "distal",
  buccal: "buccal",
  lingual: "lingual or palatal",
  furcation: "furcation",
  notKnown: "not known",
};
/** What blocks a canal, in words. */
export const blockedByWords: Words<Of<"block">["by"]> = {
  debris: "debris",
  dentine: "packed dentine",
  fillingMaterial: "filling material",
  precipitate: "precipitate of irrigants",
  notKnown: "not known",
};
/** Form of a transportation, in words. */
export const transportationWords: Words<NonNullable<Of<"transportation">["form"]>> = {
  zip: "zip",
  elbow: "elbow",
  foramenMoved: "foramen moved",
  stripThinned: "inner wall thinned",
  other: "other",
};
/** Sign after an extrusion of irrigant, in words. */
export const extrusionSignWords: Words<Of<"irrigantExtrusion">["signs"][number]> = {
  pain: "pain",
  swelling: "swelling",
  bruising: "bruising",
  bleeding: "bleeding",
  ulcer: "ulcer",
  dyingTissue: "dying tissue",
  numbness: "numbness",
  eye: "eye",
  airway: "breathing or swallowing",
  none: "none",
};
/** Where a rinsing needle opens, in words. */
export const needleWords: Words<NonNullable<Of<"irrigantExtrusion">["needle"]>> = {
  sideVented: "side-vented",
  open: "open at its tip",
};
/** What extruded filling is near, in words. */
export const nearWords: Words<Of<"fillingExtrusion">["near"]> = {
  nothing: "nothing of note",
  mandibularCanal: "mandibular canal",
  mentalForamen: "mental foramen",
  sinus: "sinus",
  notKnown: "not known",
};
/** Whether a missed canal was treated, in words. */
export const missedTreatedWords: Words<Of<"missedCanal">["treated"]> = {
  treated: "treated",
  notYet: "not yet",
  left: "left",
};
/** What was done to the wrong tooth, in words. */
export const wrongDoneWords: Words<NonNullable<Of<"wrongTooth">["done"]>> = {
  anaesthetised: "anaesthetised",
  rubberDam: "rubber dam placed",
  accessBegun: "access begun",
  pulpOpened: "pulp opened",
  filled: "filled",
};
/** Where an object went, in words. */
export const wentWords: Words<Of<"swallowedOrInhaled">["went"]> = {
  swallowed: "swallowed",
  inhaled: "inhaled",
  notKnown: "not known",
};
/** Sign after an object was swallowed or inhaled, in words. */
export const objectSignWords: Words<Of<"swallowedOrInhaled">["signs"][number]> = {
  cough: "cough",
  choking: "choking",
  wheeze: "wheeze",
  pain: "pain",
  none: "none",
};
/** Whether a rubber dam was on, in words. */
export const damWords: Words<NonNullable<Of<"swallowedOrInhaled">["rubberDam"]>> = {
  used: "rubber dam on",
  notUsed: "no rubber dam",
};
/** Where an object was found, in words. */
export const foundObjectWords: Words<Of<"swallowedOrInhaled">["found"]> = {
  notYet: "not yet",
  inMouth: "in the mouth",
  onFilm: "on a film",
  passed: "passed by itself",
  takenOut: "taken out",
};
/** Who told the patient, in words. */
export const toldByWords: Words<NonNullable<Mishap["told"]>["by"]> = {
  resident: "resident",
  supervisor: "supervisor",
  both: "both",
};
