import type { BodyOf } from "../parts.ts";
import type { Words } from "./case-words.ts";

/** To whom a tooth is handed back, in words. */
export const handedToWords: Words<NonNullable<BodyOf<"handback">["to"]>> = {
  restoringDentist: "the restoring dentist",
  referringDentist: "the referring dentist",
  otherDentist: "another dentist",
};
