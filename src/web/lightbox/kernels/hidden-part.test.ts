import { describe, expect, it } from "vitest";
import { caseId, ledgerEntryId } from "../../../core/ids.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { toldByTwoFilms, twoViewOf } from "./hidden-part.ts";

const entry = (subject: string, change: Partial<LedgerEntry> = {}): LedgerEntry => ({
  ...{ id: ledgerEntryId(subject), caseId: caseId("c1"), subject, topic: "twoView", topicVersion: 1 },
  ...{ input: {}, inputPaths: [], at: "2026-01-01T00:00:00Z", output: { side: "lingual", anglesDeg: [0, 25] } },
  ...change,
});

describe("what two films tell of a canal", () => {
  it("is found by the canal's whole name", () => {
    const [mb, mb2] = [entry("twoView of MB film-1 film-2"), entry("twoView of MB2 film-1 film-2")];
    expect(twoViewOf([mb2, mb], "MB")).toBe(mb);
    expect(twoViewOf([mb], "M")).toBeUndefined();
  });

  it("is the entry that stands, else the one that says why not", () => {
    const stands = entry("twoView of MB film-1 film-2");
    const refused = entry("twoView of MB film-3 film-4", { refused: ["no scale"], output: undefined });
    expect(twoViewOf([stands, refused], "MB")).toBe(stands);
    expect(twoViewOf([refused], "MB")).toBe(refused);
  });

  it("holds the side, and where the canal lies only where a mark tells it", () => {
    expect(toldByTwoFilms(entry("twoView of MB a b"))).toMatchObject({ side: "lingual", anglesDeg: [0, 25] });
    expect(toldByTwoFilms(entry("x", { output: { side: "mixed", liesSide: "buccal" } }))?.liesSide).toBe("buccal");
    expect(toldByTwoFilms(entry("x", { output: undefined, refused: ["no"] }))).toBeUndefined();
    expect(toldByTwoFilms(undefined)).toBeUndefined();
  });
});
