import { hashOf } from "./canonical-json.ts";

/**
 * A short mark of a case that says nothing of the patient: it stands in calendars, and in the list of what is due.
 * Takes the id of a case. Gives six hexadecimal digits; in a record of thousands of cases two may share one.
 */
export const caseMark = (caseId: string): string => hashOf(caseId).slice(0, 6);
