import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger, type WaitingSum } from "../derive-ledger.ts";
import { calibrateBinding } from "./calibrate.ts";
import { compareFilmsBinding } from "./compare-films.ts";

type Place = [number, number];
const places: Place[] = [
  [10, 10],
  [500, 20],
  [480, 700],
  [30, 690],
];
const landmarksAt = (all: Place[]) => all.map((place) => ({ before: place, after: place }));
const comparison = (change: Partial<BodyOf<"comparison">> = {}): Part =>
  part("comparison", "pair-1", { before: "film-1", after: "film-2", landmarks: landmarksAt(places), ...change });
const outline = (id: string, film: string, what: string, sigmaPx?: number): Part => {
  const points: Place[] = [
    [300, 400],
    [340, 400],
    [320, 440],
  ];
  return part("mark", id, { shape: "outline", film, what, points, ...(sigmaPx === undefined ? {} : { sigmaPx }) });
};

/** The sample's case with a second film of another hash, taken a year later. */
function parts(change: Partial<BodyOf<"film">> = {}): Part[] {
  return sampleParts().flatMap((one) => {
    if (one.kind !== "film") return [one];
    const later = { ...one.body, hash: "cd".repeat(32), takenOn: "2025-03-04", ...change };
    return [one, part("film", "film-2", later)];
  });
}

function ledgerOf(all: Part[], known: Map<string, LedgerEntry> = new Map()) {
  const waiting: WaitingSum[] = [];
  const entries = deriveLedger(
    {
      ...{ caseId: "case-sample", parts: all, settings: firstSettings, at: "2025-10-01T10:00:00Z" },
      known: (id) => known.get(id),
      waits: (sum) => waiting.push(sum),
    },
    [calibrateBinding, compareFilmsBinding],
  );
  const entry = entries.find(({ topic }) => topic === "compareFilms");
  if (entry === undefined) throw new Error("no comparison in the ledger");
  return { entry, waiting };
}

describe("two films compared in the ledger", () => {
  it("asks with the films by their hash, the first film's scale, and waits to be computed", () => {
    const { entry, waiting } = ledgerOf([...parts(), comparison()]);
    expect(entry.subject).toBe("compareFilms of pair-1");
    expect(entry.refused).toEqual(["not compared yet: press Compare"]);
    expect(waiting).toHaveLength(1);
    expect(waiting[0]?.input).toEqual({
      before: { hash: "ab".repeat(32) },
      after: { hash: "cd".repeat(32) },
      landmarks: landmarksAt(places),
      lesions: {},
      sigmaPx: firstSettings.clickSigmaPx,
      mmPerPx: 0.05,
    });
    const records = waiting[0]?.inputPaths.map(({ record }) => record);
    expect(records).toEqual(expect.arrayContaining(["film-1/hash", "film-2/hash", "pair-1/landmarks"]));
  });

  it("gives the kept entry once it is known, and waits again when one landmark moves", () => {
    const [sum] = ledgerOf([...parts(), comparison()]).waiting;
    if (sum === undefined) throw new Error("nothing waits");
    const { id, subject, input, inputPaths } = sum;
    const about = { id, subject, topic: "compareFilms", topicVersion: sum.topic.version } as const;
    const kept = { ...about, input, inputPaths, output: { statement: "kept" }, at: "2025-09-01T00:00:00Z" };
    const known = new Map([[id, { ...kept, caseId: "case-sample" } as unknown as LedgerEntry]]);
    expect(ledgerOf([...parts(), comparison()], known)).toMatchObject({
      entry: { id, output: kept.output },
      waiting: [],
    });
    const [first, ...others] = landmarksAt(places);
    const moved = [{ before: [11, 10] as Place, after: first?.after ?? [0, 0] }, ...others];
    const again = ledgerOf([...parts(), comparison({ landmarks: moved })], known);
    expect(again.entry.output).toBeUndefined();
    expect(again.waiting[0]?.id).not.toBe(id);
    // A name is not part of the sum.
    const called = landmarksAt(places).map((one, index) => ({ ...one, name: `cusp ${index}` }));
    expect(ledgerOf([...parts(), comparison({ landmarks: called })], known).entry.id).toBe(id);
  });

  it.each<[string, Part[], RegExp]>([
    ["too few landmarks", [...parts(), comparison({ landmarks: landmarksAt(places.slice(2)) })], /mark 2 more/],
    ["a film that is gone", [...sampleParts(), comparison()], /not in the case any more/],
    [
      "a film that is too large",
      [...parts({ columns: 4001, rows: 3000 }), comparison()],
      /4001 x 3000 px is too large/,
    ],
  ])("says what is missing with %s, and waits for nothing", (_, all, says) => {
    const { entry, waiting } = ledgerOf(all);
    expect(entry.refused?.[0]).toMatch(says);
    expect(waiting).toEqual([]);
  });

  it("pairs lesions by what their notes name, with the worst click error of all", () => {
    const marks = [
      outline("p-1", "film-1", "lesion at P"),
      outline("mb-1", "film-1", "Lesion at MB1", 2),
      outline("canal", "film-1", "nutrient canal"),
      outline("mb-2", "film-2", "lesion of the MB1 root", 3),
      outline("db-2", "film-2", "lesion at DB"),
    ];
    const sum = ledgerOf([...parts(), ...marks, comparison()]).waiting[0];
    expect(sum?.input).toMatchObject({
      sigmaPx: 3,
      lesions: { before: expect.any(Array), after: expect.any(Array) },
      others: [
        { name: "lesion at P", before: expect.any(Array) },
        { name: "lesion at DB", after: expect.any(Array) },
      ],
    });
    const from = Object.fromEntries(sum?.inputPaths.map(({ input, record }) => [input, record]) ?? []);
    expect(from).toMatchObject({
      "lesions.before": "mb-1/points",
      "lesions.after": "mb-2/points",
      "others[0].before": "p-1/points",
      "others[1].after": "db-2/points",
    });
  });

  it("takes one lesion a film for the same where a note names nothing, and never where both name another", () => {
    const input = (first: string, second: string): unknown =>
      ledgerOf([...parts(), outline("a", "film-1", first), outline("b", "film-2", second), comparison()]).waiting[0]
        ?.input;
    expect(input("lesion at MB1", "lesion")).toMatchObject({ lesions: { after: expect.any(Array) } });
    expect(input("lesion at MB1", "lesion at DB")).toMatchObject({ lesions: { before: expect.any(Array) } });
    expect(input("lesion at MB1", "lesion at DB")).not.toHaveProperty("lesions.after");
  });

  it("hands on hard parts as they are outlined", () => {
    const hardParts = [places];
    expect(ledgerOf([...parts(), comparison({ hardParts })]).waiting[0]?.input).toMatchObject({ hardParts });
  });
});
