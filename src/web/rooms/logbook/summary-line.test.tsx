import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { caseId } from "../../../core/ids.ts";
import type { DueView } from "../../../server/api.ts";
import type { LogbookRow } from "./logbook-filter.ts";
import { SummaryLine } from "./summary-line.tsx";

const today = "2026-03-02";
const row = (id: string): LogbookRow => ({
  ...{
    caseId: caseId(id),
    pseudonym: id,
    tooth: "26",
    birthYear: 1970,
    sex: "female",
    treatment: "firstTreatment",
  },
  ...{ presentedOn: "2026-01-01", lastOn: today, demo: false, visits: 1, films: 0, canals: 3, mishaps: 0 },
  ...{ pulpal: null, apical: null, filledOn: null, fillingEndMm: null, lastRecallOn: null, lastScore: null },
  ...{ retained: null, symptoms: null, nextOn: null, help: null },
  ...{ toothView: undefined, written: "26", recall: "none" },
});
const due = (id: string, on: string, kind: DueView["kind"]): DueView => ({
  ...{ caseId: id, on, kind, partId: "visit-1", mark: "a1b2c3", pseudonym: id, tooth: "26", demo: false },
});
const says = (rows: readonly LogbookRow[], given: readonly DueView[] | undefined): string =>
  renderToStaticMarkup(<SummaryLine rows={rows} all={3} due={given} today={today} />).replace(/<[^>]+>/g, "");

describe("the logbook's line", () => {
  const owed = [
    due("case-a", "2026-03-01", "restoration"),
    due("case-a", "2026-03-08", "visit"),
    due("case-b", "2026-02-01", "recall"),
  ];

  it("counts what is due as the page of what is due does, of every kind", () => {
    expect(says([row("case-a"), row("case-b"), row("case-c")], owed)).toBe("3 cases, 1 due this week, 2 overdue.");
  });

  it("counts it of the cases in view alone", () => {
    expect(says([row("case-b")], owed)).toBe("1 case of 3, nothing due this week, 1 overdue.");
    expect(says([row("case-c")], owed)).toBe("1 case of 3, nothing due this week.");
  });

  it("says nothing of what is due until it is known", () => {
    expect(says([row("case-a")], undefined)).toBe("1 case of 3.");
  });
});
