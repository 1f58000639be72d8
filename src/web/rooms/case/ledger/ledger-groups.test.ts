import { describe, expect, it } from "vitest";
import { caseId, ledgerEntryId, partId } from "../../../../core/ids.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import { entryTitle, inputOrigin } from "./entry-subject.ts";
import { ledgerGroups } from "./ledger-groups.ts";
import { lengthsOnFilms } from "./ledger-lines.ts";

const technical = {
  sourceFormat: "png",
  sourceSha256: "0".repeat(64),
  wasColour: false,
  lossy: false,
  inverted: false,
};
const film = (id: string, takenOn: string, purpose: "angled" | "final"): Part =>
  ({
    ...{ id: partId(id), kind: "film", revision: 1 },
    body: {
      ...{ hash: "0".repeat(64), columns: 10, rows: 10, bitsStored: 8, takenOn, purpose, caption: "" },
      ...{ receptor: "unknown", uRunsTo: "unknown", technical },
    },
  }) as Part;
const trace = (id: string, on: string, canal: string): Part =>
  ({
    ...{ id: partId(id), kind: "mark", revision: 1 },
    body: { shape: "trace", film: partId(on), canal, polarity: "dark", anchors: [], points: [] },
  }) as Part;
const entry = (subject: string, records: readonly string[] = []): LedgerEntry => ({
  ...{ id: ledgerEntryId(subject), caseId: caseId("c"), subject, topic: subject.split(" ")[0] ?? "" },
  ...{ topicVersion: 1, input: {}, output: { lengthMm: 12.5 }, at: "2026-01-01T00:00:00Z" },
  inputPaths: records.map((record) => ({ input: "points", record })),
});

const parts = [
  film("film-late", "2026-02-01", "final"),
  film("film-early", "2026-01-01", "angled"),
  trace("t-late", "film-late", "MB1"),
  trace("t-db", "film-early", "DB"),
  trace("t-mb", "film-early", "MB1"),
];

describe("the ledger's groups", () => {
  it("go film by film in the order of the days, what is about no film first and about no canal first", () => {
    const entries = [
      ...[entry("curvature of t-late"), entry("curvature of t-db"), entry("curvature of t-mb")],
      ...[entry("calibrate of film-early"), entry("canals of anatomy-1")],
    ];
    expect(
      ledgerGroups(entries, parts).map(({ name, entries: held }) => [name, held.map(({ subject }) => subject)]),
    ).toEqual([
      ["", ["canals of anatomy-1"]],
      ["Angled film of 1 Jan 2026", ["calibrate of film-early", "curvature of t-mb", "curvature of t-db"]],
      ["Final film of 1 Feb 2026", ["curvature of t-late"]],
    ]);
  });

  it("keep a course in space under the films that gave it together", () => {
    const [group] = ledgerGroups([entry("twoView of MB1 film-early film-late")], parts);
    expect(group?.name).toBe("Angled and final film together, 1 Jan 2026 and 1 Feb 2026");
    const more = [...parts, film("film-third", "2026-01-15", "angled")];
    const [many] = ledgerGroups([entry("twoView of MB1 film-late film-third film-early")], more);
    expect(many?.name).toBe("3 films together, 1 Jan 2026 to 1 Feb 2026");
    expect(ledgerGroups([entry("twoView of MB1 film-gone film-late")], parts)[0]?.name).toBe("");
  });

  it("are none where there is nothing", () => {
    expect(ledgerGroups([], parts)).toEqual([]);
  });
});

describe("the lengths on single films", () => {
  const both = ["film-early/receptor", "t-mb/points", "ledger/x/mmPerPx", "t-late/points"];
  it("stand beside a course in space in the order of its films", () => {
    const ledger = [entry("curvature of t-late"), entry("curvature of t-mb")];
    expect(lengthsOnFilms(entry("twoView of MB1 film-early film-late", both), ledger)).toEqual([
      { at: "curvature of t-mb", name: "Length on film 1", value: "12.5\u202fmm" },
      { at: "curvature of t-late", name: "Length on film 2", value: "12.5\u202fmm" },
    ]);
  });

  it("are not there for other entries, nor where a course was not measured", () => {
    expect(lengthsOnFilms(entry("curvature of t-mb", both), [entry("curvature of t-mb")])).toEqual([]);
    expect(lengthsOnFilms(entry("twoView of MB1 film-early film-late", both), [])).toEqual([]);
  });
});

it("a search is about what it looks for, and each look of it has its number", () => {
  const looks = [{ on: "2026-01-01", kind: "cbct", result: "seen", note: "" }];
  const body = { feature: "secondMesiobuccal", looks };
  const search = { id: partId("search-1"), kind: "search", revision: 1, body } as Part;
  const asked = entry("missedCanal of search-1");
  expect(entryTitle(asked, [search])).toBe("Second mesiobuccal canal: chance that it is there");
  expect(ledgerGroups([asked], [search]).map(({ name }) => name)).toEqual([""]);
  const from = (input: string, record: string) => inputOrigin({ input, record }, [search], "case-1");
  const href = "/case/case-1/hidden";
  expect(from("evidence[0]", "search-1/looks/0")).toEqual({ input: "Look 1", from: "search: look 1", href });
  expect(from("feature", "search-1/feature")).toEqual({ input: "Feature", from: "search: feature", href });
});

it("what was known when a plan was made stands under its day, apart from the case as it stands now", () => {
  const body = { madeOn: "2026-01-12", options: [], chosen: "treat", because: "", risksNamed: [] };
  const plan = { id: partId("plan-1"), kind: "plan", revision: 1, body } as Part;
  const about = { id: partId("case-1"), kind: "case", revision: 1, body: {} } as unknown as Part;
  const entries = [
    entry("plan of plan-1"),
    entry("difficulty of plan-1"),
    entry("plan of case-1"),
    entry("tooth of case-1"),
  ];
  const groups = (parts: readonly Part[]) =>
    ledgerGroups(entries, parts).map(({ name, entries: held }) => [name, held.map(({ subject }) => subject)]);
  expect(groups([about, plan])).toEqual([
    ["", ["tooth of case-1"]],
    ["Case as it stands now", ["plan of case-1"]],
    ["Plan of 12 Jan 2026", ["plan of plan-1", "difficulty of plan-1"]],
  ]);
  expect(ledgerGroups([entry("plan of case-1")], [about]).map(({ name }) => name)).toEqual([""]);
  expect(entryTitle(entry("difficulty of plan-1"), [plan])).toBe("What makes it harder");
});

it("two films that are compared stand under both of their days", () => {
  const body = { before: partId("film-early"), after: partId("film-late"), landmarks: [] };
  const pair = { id: partId("pair-1"), kind: "comparison", revision: 1, body } as Part;
  expect(ledgerGroups([entry("compareFilms of pair-1")], [...parts, pair]).map(({ name }) => name)).toEqual([
    "Films of 1 Jan 2026 and 1 Feb 2026 compared",
  ]);
});
