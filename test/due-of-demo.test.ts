import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { dueCalendar } from "../src/export/calendar/due-calendar.ts";
import { type CaseFile, caseFileSchema } from "../src/record/case-file.ts";
import { type DueOfCase, dueOf } from "../src/record/due.ts";
import { thePart } from "../src/record/parts.ts";
import { chainOf } from "../src/store/load-case-file.ts";

const demoFiles = (): CaseFile[] =>
  ["a", "b", "c", "logbook"].flatMap((name) => {
    const read: unknown = JSON.parse(readFileSync(`data/demo/cases/${name}.json`, "utf8"));
    return (Array.isArray(read) ? read : [read]).map((file) => caseFileSchema.parse(file));
  });

/** All that may stand in a file: without names, moments and marks, only words of a closed list remain. */
const mayStand = new Set([
  ...["BEGIN:VCALENDAR", "END:VCALENDAR", "BEGIN:VEVENT", "END:VEVENT", "VERSION:2.0", "METHOD:PUBLISH"],
  ...["PRODID:-//Canalog//Due//EN", "NAME:Canalog: due", "X-WR-CALNAME:Canalog: due"],
  ...["UID:", "SEQUENCE:", "DTSTAMP:", "DTSTART;VALUE=DATE:", "TRANSP:TRANSPARENT", "CLASS:PRIVATE"],
  ...["X-MICROSOFT-CDO-ALLDAYEVENT:TRUE", "X-MICROSOFT-MSNCALENDAR-ALLDAYEVENT:TRUE", ""],
  ...["next visit", "medicament to change", "restoration", "recall", "pain after 24 hours", "pain after 7 days"].map(
    (says) => `SUMMARY:Demo, invented. Due: ${says} (case )`,
  ),
]);

test("of all cases of the demo not one byte says who, which tooth or when somebody was born", () => {
  const cases = demoFiles().map((file) => chainOf(file).after);
  const due = cases.flatMap(({ caseId, parts }) => {
    const about = thePart(parts, "case")?.body;
    if (about === undefined) throw new Error(`${caseId} has no part of its own`);
    const { pseudonym, tooth, demo } = about;
    return dueOf(parts).map((owed): DueOfCase => ({ ...owed, caseId, revision: 1, pseudonym, tooth, demo }));
  });
  expect(new Set(due.map(({ caseId }) => caseId)).size).toBeGreaterThan(150);
  const text = dueCalendar(due, "2026-03-01T23:30:00.000Z");
  const unfolded = text.replaceAll("\r\n ", "").replaceAll("\\,", ",");
  const rest = unfolded
    .replace(/^UID:[0-9a-f]{32}@canalog/gm, "UID:")
    .replace(/^SEQUENCE:1/gm, "SEQUENCE:")
    .replace(/^(DTSTAMP|DTSTART;VALUE=DATE):\d{8}(T\d{6}Z)?/gm, "$1:")
    .replace(/\(case [0-9a-f]{6}\)/g, "(case )");
  expect([...new Set(rest.split("\r\n"))].filter((line) => !mayStand.has(line))).toEqual([]);
  for (const { parts } of cases) expect(text).not.toContain(thePart(parts, "case")?.body.pseudonym ?? "?");
});
