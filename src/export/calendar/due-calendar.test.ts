import fc from "fast-check";
import ICAL from "ical.js";
import { expect, test } from "vitest";
import { caseMark } from "../../record/case-mark.ts";
import { type DueOfCase, dueKinds } from "../../record/due.ts";
import { dueCalendar } from "./due-calendar.ts";

const one: DueOfCase = {
  ...{ caseId: "case-1", partId: "recall-1", kind: "recall", on: "2026-03-29", revision: 3 },
  ...{ pseudonym: "P-0417", tooth: "26", demo: false },
};
const at = "2026-03-01T23:30:00.000Z";
const eventsIn = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((event) => new ICAL.Event(event));

test("another reader finds each thing as a whole day that blocks no time, under a name that stays", () => {
  const text = dueCalendar([one, { ...one, partId: "visit-1", kind: "painAfterDay" }], at);
  const [recall, pain] = eventsIn(text);
  expect(recall?.summary).toBe(`Due: recall (case ${caseMark("case-1")})`);
  expect(pain?.summary).toBe(`Due: pain after 24 hours (case ${caseMark("case-1")})`);
  expect(recall?.startDate.isDate).toBe(true);
  expect(recall?.startDate.toString()).toBe("2026-03-29");
  expect(recall?.duration.toSeconds()).toBe(86_400);
  expect(recall?.sequence).toBe(3);
  expect(String(recall?.component.getFirstPropertyValue("dtstamp"))).toBe("2026-03-01T23:30:00Z");
  expect(recall?.component.getFirstPropertyValue("transp")).toBe("TRANSPARENT");
  expect(recall?.component.getFirstPropertyValue("class")).toBe("PRIVATE");
  expect(recall?.uid).not.toBe(pain?.uid);
  expect(text.split("\r\n").filter((line) => line.startsWith("X-"))).toEqual(["X-WR-CALNAME:Canalog: due"]);
  const moved = eventsIn(dueCalendar([{ ...one, on: "2026-05-01", revision: 4 }], "2026-03-02T08:00:00.000Z"));
  expect(moved[0]?.uid).toBe(recall?.uid);
  expect(moved[0]?.sequence).toBe(4);
});

test("an empty list is a whole calendar without events, and what the demo owes says that it is invented", () => {
  const empty = dueCalendar([], at);
  expect(eventsIn(empty)).toEqual([]);
  expect(empty).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\nPRODID:[^\r\n]+\r\n/);
  expect(empty.endsWith("END:VCALENDAR\r\n")).toBe(true);
  expect(eventsIn(dueCalendar([{ ...one, demo: true }], at))[0]?.summary).toBe(
    `Demo, invented. Due: recall (case ${caseMark("case-1")})`,
  );
});

const anyDue = fc.record({
  caseId: fc.stringMatching(/^[a-z0-9-]{3,64}$/),
  partId: fc.stringMatching(/^[a-z0-9-]{3,64}$/),
  kind: fc.constantFrom(...dueKinds),
  on: fc
    .date({ min: new Date("1990-01-01"), max: new Date("2190-12-31"), noInvalidDate: true })
    .map((day) => day.toISOString().slice(0, 10)),
  revision: fc.nat(5_000),
  pseudonym: fc.stringMatching(/^[A-Z]{4}-[0-9]{8}$/),
  tooth: fc.constantFrom("11", "26", "38", "85"),
  demo: fc.boolean(),
});

test("whatever is due: lines of at most 75 octets that end in CRLF, days as they were, and nothing of the patient", () => {
  fc.assert(
    fc.property(fc.array(anyDue, { maxLength: 8 }), (due) => {
      const text = dueCalendar(due, at);
      expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
      for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(eventsIn(text).map(({ startDate }) => startDate.toString())).toEqual(due.map(({ on }) => on));
      for (const { pseudonym } of due) expect(text).not.toContain(pseudonym);
      for (const changed of [{ pseudonym: "Z-1" }, { tooth: "48" }])
        expect(
          dueCalendar(
            due.map((owed) => ({ ...owed, ...changed })),
            at,
          ),
        ).toBe(text);
    }),
  );
});
