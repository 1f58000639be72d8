import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Removal = BodyOf<"removal">;
type Attempt = Removal["attempts"][number];
type Wall = NonNullable<Removal["walls"]>[number];

/** Side of a wall, in words; the one towards the furcation first. */
export const wallSideWords: Words<Wall["side"]> = {
  furcation: "towards the furcation",
  mesial: "mesial",
  distal: "distal",
  buccal: "buccal",
  lingual: "lingual",
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
