import ICAL from "ical.js";
import { afterAll, beforeAll, expect, it } from "vitest";
import { visit } from "../../scripts/demo/cases/usual-bodies.ts";
import { type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { newCase, put } from "../../test/samples/gestures.ts";
import { caseMark } from "../record/case-mark.ts";
import type { DueView, RefusalView } from "./api.ts";
import { recordingOf } from "./bench.ts";

let one: SampleBench;
beforeAll(async () => {
  one = await sampleBench();
  const recording = await recordingOf(one.bench);
  const body = visit({ on: "2026-03-01", aim: "", nextOn: "2026-03-15", painAfter24h: 0, painAfter7d: 0 });
  for (const [caseId, demo] of [
    ["case-own", false],
    ["case-demo", true],
  ] as const) {
    await one.bench.store.createCase(caseId, newCase({ demo }), recording);
    await one.bench.store.record(caseId, put("visit-1", "visit", 0, body), recording);
  }
});
afterAll(() => one.close());

const due = async (query: string) => (await one.ask({ url: `/api/due?${query}` })).json<DueView[]>();
const summaries = async (query: string): Promise<string[]> => {
  const { body } = await one.ask({ url: `/api/due.ics?${query}` });
  const events = new ICAL.Component(ICAL.parse(body)).getAllSubcomponents("vevent");
  return events.map((event) => new ICAL.Event(event).summary);
};

it("lists what is due by the person's day, each with the mark that stands in the calendar", async () => {
  expect(await due("today=2026-03-02")).toEqual([
    {
      ...{ caseId: "case-demo", partId: "visit-1", kind: "visit", on: "2026-03-15", mark: caseMark("case-demo") },
      ...{ pseudonym: "P-0417", tooth: "26", demo: true },
    },
    {
      ...{ caseId: "case-own", partId: "visit-1", kind: "visit", on: "2026-03-15", mark: caseMark("case-own") },
      ...{ pseudonym: "P-0417", tooth: "26", demo: false },
    },
  ]);
  expect(await due("today=2026-03-02&until=2026-03-14")).toEqual([]);
});

it("gives a calendar file that other programs read, the demo's days in it only when they are asked for", async () => {
  const reply = await one.ask({ url: "/api/due.ics?today=2026-03-02" });
  expect(reply.headers["content-type"]).toBe("text/calendar; charset=utf-8");
  expect(reply.headers["content-disposition"]).toBe('attachment; filename="canalog-due.ics"');
  expect(reply.headers["cache-control"]).toBe("no-store");
  const own = `Due: next visit (case ${caseMark("case-own")})`;
  expect(await summaries("today=2026-03-02")).toEqual([own]);
  const invented = `Demo, invented. Due: next visit (case ${caseMark("case-demo")})`;
  expect(await summaries("today=2026-03-02&demo=with")).toEqual([invented, own]);
  expect(await summaries("today=2026-03-02&until=2026-03-14&demo=with")).toEqual([]);
});

it.each(["", "today=tomorrow", "today=2026-02-30", "today=2026-03-02&until=", "today=2026-03-02&who=me"])(
  "refuses a day that is none: ?%s",
  async (query) => {
    for (const address of ["/api/due", "/api/due.ics"]) {
      const reply = await one.ask({ url: `${address}?${query}` });
      expect([reply.statusCode, reply.json<RefusalView>().code]).toEqual([400, "input.invalid"]);
    }
  },
);
