import type { EmergencyName } from "../clinic-rules.ts";
import type { Words } from "./case-words.ts";

/** Emergencies, in words. */
export const emergencyWords: Words<EmergencyName> = {
  hypochlorite: "hypochlorite accident",
  swallowedOrInhaled: "swallowed or inhaled instrument",
  anaestheticOverdose: "anaesthetic overdose",
  allergy: "allergy",
};
