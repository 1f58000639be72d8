import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayAfter } from "../../../../record/day-after.ts";
import { dueKinds } from "../../../../record/due.ts";
import type { DueView } from "../../../../server/api.ts";
import { distanceOfDue, dueCounts, dueGroups, everyDue, filteredDue, kindsDue, withKind } from "./due-groups.ts";

const today = "2026-11-30";
const due = (on: string, more: Partial<DueView> = {}): DueView => ({
  ...{ caseId: "case-1", partId: "visit-1", kind: "visit", on, mark: "0a1b2c", pseudonym: "P-1", tooth: "26" },
  ...{ demo: false, ...more },
});

describe("what is due, by how far away it is", () => {
  it.each([
    ["2026-11-29", "overdue"],
    ["2026-11-30", "week"],
    ["2026-12-06", "week"],
    ["2026-12-07", "fourWeeks"],
    ["2026-12-27", "fourWeeks"],
    ["2026-12-28", "later"],
  ])("seen from 30 November, %s is %s", (on, span) => {
    expect(dueGroups([due(on)], today).map((group) => group.span)).toEqual([span]);
  });

  it("holds each thing once, in one group, in the order given", () => {
    const days = fc.array(fc.integer({ min: -400, max: 400 }).map((days) => due(dayAfter(today, days))));
    fc.assert(
      fc.property(days, (all) => {
        const groups = dueGroups(all, today);
        expect(groups.flatMap((group) => group.due).length).toBe(all.length);
        for (const group of groups) expect(group.due).toEqual(all.filter((one) => group.due.includes(one)));
        const { overdue, week } = dueCounts(all, today);
        const sizeOf = (span: string) => groups.find((group) => group.span === span)?.due.length ?? 0;
        expect([overdue, week]).toEqual([sizeOf("overdue"), sizeOf("week")]);
      }),
    );
  });
});

it.each([
  ["2026-11-29", "1 day over"],
  ["2026-11-18", "12 days over"],
  ["2026-05-30", "6 months over"],
  ["2026-11-30", "today"],
  ["2026-12-01", "tomorrow"],
  ["2026-12-02", "in 2 days"],
  ["2027-06-01", "in 6 months"],
])("%s is said as %s", (on, says) => {
  expect(distanceOfDue(today, on)).toBe(says);
});

describe("the filter", () => {
  const all = dueKinds.flatMap((kind) => [due(today, { kind }), due(today, { kind, demo: true })]);

  it("lets everything through before a kind is chosen, and kinds add up", () => {
    expect(filteredDue(all, everyDue)).toEqual(all);
    const recalls = withKind(everyDue, "recall");
    expect(filteredDue(all, recalls).map(({ kind }) => kind)).toEqual(["recall", "recall"]);
    expect(filteredDue(all, withKind(recalls, "visit"))).toHaveLength(4);
    expect(withKind(recalls, "recall")).toEqual(everyDue);
  });

  it("keeps the demo and one's own apart", () => {
    expect(filteredDue(all, { ...everyDue, origin: "own" }).some(({ demo }) => demo)).toBe(false);
    expect(filteredDue(all, { ...everyDue, origin: "demo" }).every(({ demo }) => demo)).toBe(true);
  });

  it("offers the kinds of which something is due, with how many", () => {
    expect(kindsDue([due(today, { kind: "recall" }), due(today), due(today)])).toEqual([
      { kind: "visit", count: 2 },
      { kind: "recall", count: 1 },
    ]);
  });
});
