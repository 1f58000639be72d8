import type { DueKind } from "../due.ts";
import type { Words } from "./case-words.ts";

/** What is due, in words. */
export const dueWords: Words<DueKind> = {
  visit: "next visit",
  medicament: "medicament to change",
  restoration: "restoration",
  recall: "recall",
  painAfterDay: "pain after 24 hours",
  painAfterWeek: "pain after 7 days",
};
