import icalGenerator, { ICalCalendarMethod, ICalEventClass, ICalEventTransparency } from "ical-generator";
import { hashOf } from "../../record/canonical-json.ts";
import { caseMark } from "../../record/case-mark.ts";
import type { DueOfCase } from "../../record/due.ts";
import { dueWords } from "../../record/words/due-words.ts";

/** What the library adds to a whole day for readers of one make; the standard's own lines say the same to all. */
const madeForOne = /^X-(?!WR-)[^\r\n]*\r\n/gm;

/**
 * What is due as an iCalendar file: one event a thing, for the whole day, with the case's short mark and nothing of the
 * patient or the tooth. A thing keeps its name (UID) when its day changes, so that a second reading of the file moves it.
 * Takes what is due and the moment of writing, in UTC.
 * @source B. Desruisseaux, Internet Calendaring and Scheduling Core Object Specification (iCalendar), RFC 5545, 2009 (from
 * memory)
 */
export function dueCalendar(due: readonly DueOfCase[], at: string): string {
  const calendar = icalGenerator({
    prodId: { company: "Canalog", product: "Due", language: "EN" },
    name: "Canalog: due",
    method: ICalCalendarMethod.PUBLISH,
  });
  for (const one of due) calendar.createEvent(eventOf(one, at));
  return `${calendar.toString().replaceAll(madeForOne, "")}\r\n`;
}

function eventOf({ caseId, partId, kind, on, revision, demo }: DueOfCase, at: string) {
  const says = `Due: ${dueWords[kind]} (case ${caseMark(caseId)})`;
  return {
    id: `${hashOf([caseId, partId, kind]).slice(0, 32)}@canalog`,
    sequence: revision,
    stamp: new Date(at),
    // A whole day has no time and no zone: the day is read as UTC and written as a date alone.
    start: new Date(`${on}T00:00:00Z`),
    allDay: true,
    summary: demo ? `Demo, invented. ${says}` : says,
    transparency: ICalEventTransparency.TRANSPARENT,
    class: ICalEventClass.PRIVATE,
  };
}
