import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Findings = BodyOf<"findings">;
type Tested = Findings["teeth"][number];
type OnFilm = Findings["onFilm"];
type Seen = Findings["seen"];

const present = { none: "none", present: "present", notDone: "not done" } as const;

/** Reply, in words. */
export const replyWords: Words<Tested["cold"]["reply"]> = {
  none: "none",
  normal: "normal",
  heightened: "heightened",
  notDone: "not done",
};
/** Touch, in words. */
export const touchWords: Words<Tested["percussion"]> = {
  none: "none",
  slight: "slight",
  painful: "painful",
  notDone: "not done",
};
/** Yes no, in words. */
export const yesNoWords: Words<"yes" | "no" | "notAsked"> = { yes: "yes", no: "no", notAsked: "not asked" };
/** History, in words. */
export const historyWords: Words<keyof Findings["history"]> = {
  spontaneousPain: "Pain without a cause",
  painToCold: "Pain to cold",
  painToHeat: "Pain to heat",
  relievedByCold: "Relieved by cold",
  painOnBiting: "Pain on biting",
  trauma: "Trauma",
  recentOnset: "Began within days",
};
/** Swelling, in words. */
export const swellingWords: Words<Seen["swelling"]> = {
  none: "none",
  intraoral: "inside the mouth",
  extraoral: "outside the mouth",
  notDone: "not done",
};
/** Sinus, in words. */
export const sinusWords: Words<Seen["sinusTract"]> = { ...present, traced: "present and traced" };
/** Caries, in words. */
export const cariesWords: Words<Seen["caries"]> = {
  none: "none",
  shallow: "shallow",
  deep: "deep",
  exposed: "pulp exposed",
  notDone: "not done",
};
/** Crack, in words. */
export const crackWords: Words<Seen["crack"]> = { ...present, suspected: "suspected" };
/** Ligament, in words. */
export const ligamentWords: Words<OnFilm["ligament"]> = {
  normal: "normal",
  widened: "widened",
  notSeen: "not to be seen",
  notDone: "not done",
};
/** Lamina, in words. */
export const laminaWords: Words<OnFilm["lamina"]> = { intact: "intact", lost: "lost", notDone: "not done" };
/** Lucency, in words. */
export const lucencyWords: Words<OnFilm["lucency"]> = {
  none: "none",
  apical: "apical",
  lateral: "lateral",
  furcal: "at the furcation",
  notDone: "not done",
};
/** Resorption, in words. */
export const resorptionWords: Words<OnFilm["resorption"]> = {
  none: "none",
  internal: "internal",
  external: "external",
  notDone: "not done",
};
/** Apex, in words. */
export const apexWords: Words<OnFilm["apex"]> = { closed: "closed", open: "open", notDone: "not done" };
/** Earlier filling, in words. */
export const earlierFillingWords: Words<OnFilm["earlierFilling"]> = present;
