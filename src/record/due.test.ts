import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recall as usualRecall, visit as usualVisit } from "../../scripts/demo/cases/usual-bodies.ts";
import { aboutBody } from "../../test/samples/gestures.ts";
import { dayAfter } from "./day-after.ts";
import { type Due, dueOf } from "./due.ts";
import type { BodyOf, Part } from "./parts.ts";
import { readPart } from "./read-part.ts";

const part = (id: string, kind: string, body: unknown): Part => readPart({ id, kind, version: 1, revision: 1, body });
const about = part("about", "case", aboutBody);
const visit = (id: string, on: string, more: Partial<BodyOf<"visit">> = {}) =>
  part(id, "visit", usualVisit({ on, aim: "", painAfter24h: 0, painAfter7d: 0, ...more }));
const recall = (id: string, on: string, more: Partial<BodyOf<"recall">> = {}) =>
  part(id, "recall", usualRecall({ on, ...more }));
const handback = (id: string, on: string, restoreBy?: string, recallOn?: string) =>
  part(id, "handback", {
    ...{ on, restoreWith: "a crown", orificesMarkedBy: "", warnings: "", prognosis: "" },
    ...(restoreBy === undefined ? {} : { restoreBy }),
    ...(recallOn === undefined ? {} : { recallOn }),
  });
const canal = (name: string, state: BodyOf<"visit">["canals"][number]["state"]) =>
  ({ canal: name, state, patency: "patent", reference: "cusp" }) as const;
const paste = { kind: "calciumHydroxide", changeBy: "2026-03-15" } as const;
const short = (due: readonly Due[]) => due.map(({ kind, on, partId }) => `${kind} ${on} ${partId}`);
const owed = (...parts: Part[]) => short(dueOf([about, ...parts]));

it("a case that has only been made owes nothing", () => {
  expect(owed()).toEqual([]);
});

describe("the next visit (D1)", () => {
  const first = visit("visit-1", "2026-03-01", { nextOn: "2026-03-15" });

  it("is due until a later visit stands, and the later one's own day counts from then on", () => {
    expect(owed(first)).toEqual(["visit 2026-03-15 visit-1"]);
    expect(owed(first, visit("visit-2", "2026-03-04"))).toEqual([]);
    expect(owed(visit("visit-2", "2026-03-15", { nextOn: "2026-04-01" }), first)).toEqual(["visit 2026-04-01 visit-2"]);
  });

  it("of two visits on one day the second in the record is the later", () => {
    const second = visit("visit-2", "2026-03-01", { nextOn: "2026-03-20" });
    expect(owed(first, second)).toEqual(["visit 2026-03-20 visit-2"]);
    expect(owed(second, first)).toEqual(["visit 2026-03-15 visit-1"]);
  });

  it("comes back when the later visit is taken out", () => {
    const later = visit("visit-2", "2026-03-15");
    expect(owed(first, later)).toEqual([]);
    expect(owed(first)).toEqual(["visit 2026-03-15 visit-1"]);
  });

  it("is done where the patient was seen at a recall since", () => {
    expect(owed(first, recall("recall-1", "2026-03-02"))).toEqual([]);
    expect(owed(first, recall("recall-1", "2026-03-01"))).toEqual(["visit 2026-03-15 visit-1"]);
  });
});

describe("the next recall (D2)", () => {
  const handedBack = [visit("visit-1", "2026-03-01", { nextOn: "2026-09-01" }), handback("handback-1", "2026-03-01")];

  it("is the last visit's next day once the tooth was handed back, on the same day or later", () => {
    expect(owed(...handedBack)).toEqual(["recall 2026-09-01 visit-1"]);
    expect(
      owed(visit("visit-1", "2026-03-02", { nextOn: "2026-09-01" }), handback("handback-1", "2026-03-01")),
    ).toEqual(["visit 2026-09-01 visit-1"]);
  });

  it("is done once a later recall stands, whose own next day counts from then on", () => {
    expect(owed(...handedBack, recall("recall-1", "2026-08-20"))).toEqual([]);
    expect(owed(...handedBack, recall("recall-1", "2026-03-01"))).toEqual(["recall 2026-09-01 visit-1"]);
    const first = recall("recall-1", "2026-08-20", { nextOn: "2027-03-01" });
    expect(owed(...handedBack, first)).toEqual(["recall 2027-03-01 recall-1"]);
    expect(owed(...handedBack, first, recall("recall-2", "2027-03-05"))).toEqual([]);
  });

  it("is not lost where the patient came once more after the hand-back", () => {
    expect(owed(...handedBack, visit("visit-2", "2026-03-08"))).toEqual(["recall 2026-09-01 visit-1"]);
    const between = recall("recall-1", "2026-03-02");
    expect(owed(...handedBack.slice(0, 1), between, handback("handback-1", "2026-03-03"))).toEqual([]);
  });

  it("is the hand-back's own day where it names one, until a recall after it stands", () => {
    const named = [
      visit("visit-1", "2026-03-01", { nextOn: "2026-03-15" }),
      handback("handback-1", "2026-03-04", undefined, "2026-09-04"),
    ];
    expect(owed(...named)).toEqual(["recall 2026-09-04 handback-1"]);
    expect(owed(...named.slice(1))).toEqual(["recall 2026-09-04 handback-1"]);
    expect(owed(...named, recall("recall-1", "2026-03-03"))).toEqual(["recall 2026-09-04 handback-1"]);
    expect(owed(...named, recall("recall-1", "2026-09-10", { nextOn: "2027-03-10" }))).toEqual([
      "recall 2027-03-10 recall-1",
    ]);
    expect(owed(...named, recall("recall-1", "2026-09-10"))).toEqual([]);
    expect(owed(...named, visit("visit-2", "2026-05-01", { nextOn: "2026-05-15" }))).toEqual([
      "visit 2026-05-15 visit-2",
      "recall 2026-09-04 handback-1",
    ]);
  });

  it("stays due beside the next visit of a tooth that was opened again", () => {
    const first = recall("recall-1", "2026-08-20", { nextOn: "2027-03-01" });
    const again = visit("visit-2", "2026-10-01", { nextOn: "2026-10-15" });
    expect(owed(...handedBack, first, again)).toEqual(["visit 2026-10-15 visit-2", "recall 2027-03-01 recall-1"]);
    const closed = [visit("visit-3", "2026-10-15", { nextOn: "2027-04-15" }), handback("handback-2", "2026-10-15")];
    expect(owed(...handedBack, first, again, ...closed)).toEqual(["recall 2027-04-15 visit-3"]);
    const silent = [visit("visit-3", "2026-10-15"), handback("handback-2", "2026-10-15")];
    expect(owed(...handedBack, first, again, ...silent)).toEqual(["recall 2027-03-01 recall-1"]);
  });
});

describe("the medicament (D3)", () => {
  const left = visit("visit-1", "2026-03-01", {
    medicament: paste,
    canals: [canal("MB1", "medicated"), canal("P", "medicated")],
  });

  it("is due until a later visit says that it was removed; part of it is not all of it", () => {
    expect(owed(left)).toEqual(["medicament 2026-03-15 visit-1"]);
    expect(owed(left, visit("visit-2", "2026-03-14", { medicamentOut: "removed" }))).toEqual([]);
    for (const medicamentOut of ["partlyRemoved", "notRemoved"] as const)
      expect(owed(left, visit("visit-2", "2026-03-14", { medicamentOut }))).toEqual(["medicament 2026-03-15 visit-1"]);
  });

  it("is due until no canal is left with it and a later visit filled one", () => {
    const one = visit("visit-2", "2026-03-14", { canals: [canal("MB1", "filled")] });
    expect(owed(left, one)).toEqual(["medicament 2026-03-15 visit-1"]);
    expect(owed(left, one, visit("visit-3", "2026-03-20", { canals: [canal("P", "filled")] }))).toEqual([]);
  });

  it("gives way to the medicament of a later visit, with its day or without", () => {
    const next = (medicament: BodyOf<"visit">["medicament"]) => visit("visit-2", "2026-03-14", { medicament });
    expect(owed(left, next({ ...paste, changeBy: "2026-04-01" }))).toEqual(["medicament 2026-04-01 visit-2"]);
    expect(owed(left, next({ kind: "antibioticPaste" }))).toEqual([]);
    expect(owed(left, next({ kind: "none", changeBy: "2026-04-01" }))).toEqual([]);
  });

  it("said to be out in the visit that left it is that of the visit before", () => {
    const both = visit("visit-1", "2026-03-01", { medicament: paste, medicamentOut: "removed" });
    expect(owed(both)).toEqual(["medicament 2026-03-15 visit-1"]);
  });
});

describe("the restoration (D4)", () => {
  const asked = handback("handback-1", "2026-03-01", "2026-03-29");

  it.each([
    ["sound", []],
    ["defective", []],
    ["temporary", ["restoration 2026-03-29 handback-1"]],
    ["missing", ["restoration 2026-03-29 handback-1"]],
    ["notRecorded", ["restoration 2026-03-29 handback-1"]],
  ] as const)("with a restoration that a recall found %s", (restoration, due) => {
    expect(owed(asked)).toEqual(["restoration 2026-03-29 handback-1"]);
    expect(owed(asked, recall("recall-1", "2026-09-01", { restoration }))).toEqual(due);
  });

  it("is done by a recall of the hand-back's own day", () => {
    expect(owed(asked, recall("recall-1", "2026-03-01"))).toEqual([]);
  });

  it("is not done by a recall before the hand-back; a later hand-back takes its place", () => {
    expect(owed(asked, recall("recall-1", "2026-02-01"))).toEqual(["restoration 2026-03-29 handback-1"]);
    expect(owed(asked, handback("handback-2", "2026-06-01", "2026-07-01"))).toEqual([
      "restoration 2026-07-01 handback-2",
    ]);
    expect(owed(asked, handback("handback-2", "2026-06-01"))).toEqual([]);
  });
});

describe("pain afterwards (D5)", () => {
  it("is due a day and a week after each visit that does not have it, and asked for 31 days", () => {
    const open = { painAfter24h: undefined, painAfter7d: undefined };
    const parts = [visit("visit-1", "2026-02-27", open), visit("visit-2", "2026-12-31", { ...open, painAfter24h: 0 })];
    expect(dueOf([about, ...parts])).toEqual([
      { kind: "painAfterDay", on: "2026-02-28", partId: "visit-1", askedUntil: "2026-03-30" },
      { kind: "painAfterWeek", on: "2026-03-06", partId: "visit-1", askedUntil: "2026-03-30" },
      { kind: "painAfterWeek", on: "2027-01-07", partId: "visit-2", askedUntil: "2027-01-31" },
    ]);
  });
});

describe("a lost tooth (D6)", () => {
  const all = [
    visit("visit-1", "2026-03-01", { nextOn: "2026-09-01", medicament: paste, painAfter7d: undefined }),
    handback("handback-1", "2026-03-01", "2026-03-29"),
  ];

  it("owes nothing; what the last recall says counts", () => {
    expect(owed(...all)).toHaveLength(4);
    const lost = recall("recall-1", "2026-04-01", { retained: "lost", restoration: "missing", nextOn: "2027-01-01" });
    expect(owed(...all, lost)).toEqual([]);
    const mended = recall("recall-2", "2026-04-02", { restoration: "missing" });
    expect(owed(...all, lost, mended)).toContain("restoration 2026-03-29 handback-1");
  });
});

/** Days that all differ, so that no two parts share one. */
const anyCase = fc.uniqueArray(fc.integer({ min: 0, max: 900 }), { minLength: 1, maxLength: 9 }).chain((days) =>
  fc.tuple(
    ...days.map((at, index) => {
      const on = dayAfter("2025-01-01", at);
      const next = fc.option(
        fc.integer({ min: 1, max: 400 }).map((more) => dayAfter(on, more)),
        { nil: undefined },
      );
      return fc.tuple(fc.constantFrom("visit", "recall", "handback"), next).map(([kind, day]) => {
        if (kind === "handback") return handback(`handback-${index}`, on, day);
        const said = day === undefined ? {} : { nextOn: day };
        return kind === "recall" ? recall(`recall-${index}`, on, said) : visit(`visit-${index}`, on, said);
      });
    }),
  ),
);

it("whatever stands: the order of the parts does not count, each kind is owed once, by a part that stands, in order", () => {
  fc.assert(
    fc.property(anyCase, fc.infiniteStream(fc.nat()), (parts, dice) => {
      const due = dueOf([about, ...parts]);
      const shuffled = [...parts]
        .map((one) => ({ one, at: dice.next().value ?? 0 }))
        .sort((a, b) => a.at - b.at)
        .map(({ one }) => one);
      expect(dueOf([...shuffled, about])).toEqual(due);
      expect(new Set(due.map(({ kind }) => kind)).size).toBe(due.length);
      expect(due.every(({ partId }) => parts.some(({ id }) => id === partId))).toBe(true);
      expect(due.map(({ on }) => on)).toEqual(due.map(({ on }) => on).sort());
      const lost = recall("recall-lost", "2028-01-01", { retained: "lost" });
      expect(dueOf([about, ...parts, lost])).toEqual([]);
    }),
  );
});

it("days are counted over months, leap years and the clock's changes", () => {
  expect(dayAfter("2028-02-28", 1)).toBe("2028-02-29");
  expect(dayAfter("2026-10-24", 2)).toBe("2026-10-26");
  expect(dayAfter("2026-03-01", -1)).toBe("2026-02-28");
});
