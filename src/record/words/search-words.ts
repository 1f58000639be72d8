import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Search = BodyOf<"search">;
type Look = Search["looks"][number];

/** What may hide, in words. */
export const featureWords: Words<Search["feature"]> = {
  secondMesiobuccal: "second mesiobuccal canal",
  thirdRoot: "third root, lingual",
  middleMesial: "middle mesial canal",
  secondDistal: "second distal canal",
  cShaped: "C-shaped canal",
  lingualCanal: "lingual canal",
};
/** Kind of look, in words, from the least harm to the most. */
export const lookWords: Words<Look["kind"]> = {
  secondLook: "second look at the films in hand",
  microscope: "microscope",
  dye: "dye",
  bubbles: "bubbles in hypochlorite",
  lesionOnOneRoot: "lesion round one root alone",
  straightFilm: "straight film",
  angledFilm: "angled film",
  offCentreInstrument: "instrument off the root's centre",
  cbct: "CBCT",
  troughing: "troughing",
};
/** Result of a look, in words. */
export const resultWords: Words<Look["result"]> = { seen: "seen", notSeen: "not seen", yes: "yes", no: "no" };
/** Class of harm of a look, in words. */
export const harmWords: Words<"1" | "2" | "3" | "4"> = {
  "1": "no harm",
  "2": "a film",
  "3": "a limited-field CBCT",
  "4": "dentine",
};
