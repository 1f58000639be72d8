import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

type Findings = BodyOf<"findings">;
type Tested = Findings["teeth"][number];
type OnFilm = Findings["onFilm"];
type Seen = Findings["seen"];

type History = Findings["history"];
/** The questions that are answered with yes, no or not asked. */
type AskedYesNo = Exclude<
  keyof History,
  "coldLingersSeconds" | "heatLingersSeconds" | "traumaOn" | "painLike" | "reproduced"
>;
/** Those of them that every examination answers. */
type AlwaysAsked =
  | "spontaneousPain"
  | "painToCold"
  | "painToHeat"
  | "relievedByCold"
  | "painOnBiting"
  | "trauma"
  | "recentOnset";

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
/** What is looked at and not asked, in words. */
export const seenYesNoWords: typeof yesNoWords = { yes: "yes", no: "no", notAsked: "not looked at" };
/** What every examination asks, in words. */
export const historyWords: Words<AlwaysAsked> = {
  spontaneousPain: "Pain without a cause",
  painToCold: "Pain to cold",
  painToHeat: "Pain to heat",
  relievedByCold: "Relieved by cold",
  painOnBiting: "Pain on biting",
  trauma: "Trauma",
  recentOnset: "Began within days",
};
/** What an examination may ask besides, in words. */
export const furtherHistoryWords: Words<Exclude<AskedYesNo, AlwaysAsked>> = {
  referredPain: "Felt elsewhere too",
  painToSweet: "Pain to sweet",
  nightPain: "Pain at night",
  painOnRelease: "Pain on release of the bite",
  trismus: "Mouth opens less",
  troubleSwallowing: "Trouble swallowing",
  troubleBreathing: "Trouble breathing",
  numbLip: "Numb lip",
};
/** What the pain behaves like, in words. */
export const painLikeWords: Words<NonNullable<History["painLike"]>[number]> = {
  muscle: "muscle",
  joint: "joint",
  nerve: "nerve",
  sinus: "sinus",
  heart: "heart",
};
/** Whether a test brings the pain back, in words. */
export const reproducedWords: Words<NonNullable<History["reproduced"]>> = {
  byTests: "by tests",
  byNoTest: "by no test",
  notTried: "not tried",
};
/** Swelling, in words. */
export const swellingWords: Words<Seen["swelling"]> = {
  none: "none",
  intraoral: "inside the mouth",
  extraoral: "outside the mouth",
  notDone: "not done",
};
/** Place of a swelling, in words. */
export const swellingAtWords: Words<NonNullable<Seen["swellingAt"]>[number]> = {
  vestibule: "vestibule",
  palate: "palate",
  cheek: "cheek",
  floorOfMouth: "floor of the mouth",
  neck: "neck",
};
/** Onset of a swelling, in words. */
export const swellingOnsetWords: Words<NonNullable<Seen["swellingOnset"]>> = {
  rapid: "rapid",
  gradual: "gradual",
  notAsked: "not asked",
};
/** What laid the pulp open, in words. */
export const exposureWords: Words<NonNullable<Seen["exposure"]>> = {
  none: "none",
  caries: "by caries",
  excavation: "by excavation",
  trauma: "by trauma",
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
/** Whether the lesion fits a tooth's infection, in words. */
export const lesionFitsWords: Words<NonNullable<OnFilm["lesionFits"]>> = { yes: "yes", no: "no", notDone: "not done" };
/** What was done in a canal before, in words. */
export const existingWords: Words<NonNullable<Findings["existing"]>[number]["is"]> = {
  untouched: "untouched",
  opened: "opened",
  medicated: "medicated",
  filled: "filled",
};
