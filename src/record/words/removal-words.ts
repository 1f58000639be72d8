import type { RemovalOutput, RemovalWay } from "../../core/instrument/removal-output.ts";
import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Removal = BodyOf<"removal">;
type Attempt = Removal["attempts"][number];
type Chance = RemovalOutput["removalChance"][number];
type Platform = NonNullable<RemovalOutput["platform"]>;
type SightLine = NonNullable<RemovalOutput["sightLine"]>;
type Wall = NonNullable<Removal["walls"]>[number];

/** Side of a wall, in words; the one towards the furcation first. */
export const wallSideWords: Words<Wall["side"]> = {
  furcation: "towards the furcation",
  mesial: "mesial",
  distal: "distal",
  buccal: "buccal",
  lingual: "lingual",
};
/** Where the traced course of the canal ends, in words. */
export const courseEndWords: Words<NonNullable<Removal["courseEnds"]>> = {
  foramen: "at its foramen",
  head: "at the top of the piece",
};
/** Tool of an attempt, in words. */
export const removalToolWords: Words<Attempt["tool"]> = {
  ultrasonicTip: "ultrasonic tip",
  handFile: "hand file",
  tube: "tube",
  loop: "wire loop",
  forceps: "forceps",
  bypassFile: "file beside it",
  solvent: "solvent",
  other: "other",
};
/** What an attempt moved, in words. */
export const movedWords: Words<Attempt["moved"]> = {
  nothing: "nothing moved",
  loosened: "it loosened",
  movedUp: "it moved up",
  bypassed: "a file passed it",
  out: "it came out",
  pushedDown: "it went deeper",
  brokeAgain: "something else broke",
  notRecorded: "not recorded",
};
/** Result of a removal, in words. */
export const removalResultWords: Words<NonNullable<Removal["result"]>["is"]> = {
  removed: "removed",
  bypassed: "bypassed",
  left: "left in place",
  surgery: "surgery",
  extraction: "tooth taken out",
  referred: "referred",
};
/** A way that can be gone with a piece, in words. */
export const removalWayWords: Words<RemovalWay> = {
  remove: "take it out",
  bypass: "pass it",
  leave: "leave it, fill to it",
  surgery: "surgery",
  extraction: "take the tooth out",
};
/** Grade of the dentine that is left, in words. */
export const wallGradeWords: Words<Platform["sides"][number]["grade"]> = {
  through: "none left",
  critical: "critical",
  thin: "thin",
  recommended: "as recommended",
};
/** What a straight path to the piece comes to, in words. */
export const pathWords: Words<SightLine["path"]["verdict"]> = {
  refused: "path refused: it leaves less than your limit",
  "above the limit": "the path leaves more than your limit",
  "no limit set": "no limit is set",
  "wall not known": "no wall along the way is known",
};
/** What a published series is parted by, in words. */
export const seriesByWords: Words<Chance["by"]> = {
  all: "all pieces",
  third: "by third",
  visibility: "by seen or hidden",
  bend: "by the bend",
  tooth: "by tooth",
  curvature: "by curvature",
  length: "by length",
  instrument: "by instrument",
  time: "by time",
};
/** What a published series counted, in words. */
export const seriesCountedWords: Words<Chance["success"]> = {
  removed: "removed",
  removedOrBypassed: "removed or passed",
  bypassed: "passed",
  notStated: "success as printed",
};
/** Whether a case belongs to a published group, in words. */
export const seriesMatchWords: Words<Chance["matches"]> = {
  yes: "this case",
  no: "another group",
  notKnown: "not known of this case",
};
