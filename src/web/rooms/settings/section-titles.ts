import type { SectionName } from "../../../record/settings-sections.ts";
import type { Words } from "../../../record/words/case-words.ts";

/** What the sections of the settings are called. */
export const sectionTitles: Words<SectionName> = {
  you: "You",
  films: "Films",
  room: "Room",
  air: "Limits in the air",
  anaesthetic: "Anaesthetic",
  irrigation: "Irrigation",
  emergency: "Emergency",
};
