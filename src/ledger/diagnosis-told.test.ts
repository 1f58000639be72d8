import { describe, expect, it } from "vitest";
import { diagnosisOf, sheetOf } from "../../test/diagnosis-sheet.ts";
import { rows } from "../core/diagnosis/terms/rules.ts";
import { caseId, ledgerEntryId } from "../core/ids.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf } from "../record/parts.ts";
import { type DiagnosisTold, diagnosisEntry, diagnosisTold, differencesFrom, termsTold } from "./diagnosis-told.ts";

/** Two silent tests under a replying control, and pain on percussion: necrosis, and a tender apex. */
const necrotic = sheetOf(
  { cold: { reply: "none" }, electric: "none", percussion: "painful" },
  {},
  { cold: { reply: "normal" }, electric: 30 },
);
const toldOf = (input: unknown): DiagnosisTold => {
  const told = diagnosisTold({ output: diagnosisOf(input) });
  if (told === undefined) throw new Error("an answer of the topic is not read");
  return told;
};
const own = (given: Partial<BodyOf<"diagnosis">>): BodyOf<"diagnosis"> => ({
  ...{ madeOn: "2026-01-02", taxonomy: "consensus2009", because: "" },
  ...{ pulpal: "pulpNecrosis", apical: "symptomaticApicalPeriodontitis", ...given },
});

describe("what the ledger says of findings", () => {
  it("is read with its terms, reasons and codes", () => {
    const told = toldOf(necrotic);
    expect(told.pulpal).toMatchObject({ term: "Pulp necrosis", status: "determined" });
    expect(told.pulpal.for[0]?.finding).toContain("no reply");
    expect(told.codes.icd10.pulpal).toBe("K04.1");
    expect(termsTold(told)).toMatchObject({
      ...{ pulpal: "pulpNecrosis", apical: "symptomaticApicalPeriodontitis", source: "thisTooth" },
    });
  });

  it("is nothing for an entry that refused, and found by the findings it is about", () => {
    const entry: LedgerEntry = {
      ...{ id: ledgerEntryId("0".repeat(64)), caseId: caseId("case-a"), topicVersion: 1, input: {}, inputPaths: [] },
      ...{
        subject: "diagnosis of findings-a",
        topic: "diagnosis",
        refused: ["teeth: none"],
        at: "2026-01-02T10:00:00Z",
      },
    };
    expect(diagnosisTold(entry)).toBeUndefined();
    expect(diagnosisTold(undefined)).toBeUndefined();
    expect(diagnosisEntry([entry], "findings-a")).toBe(entry);
    expect(diagnosisEntry([entry], "findings-b")).toBeUndefined();
  });

  it("has a name in the record for every term that the table can give", () => {
    const undetermined = toldOf(sheetOf({}));
    const given = rows.filter(({ kind, term }) => ["term", "also"].includes(kind) && term !== "not determined");
    for (const { axis, term, kind } of given) {
      const named = kind === "also" ? "apicalAlso" : axis === "pulpal" ? "pulpal" : "apical";
      const value = named === "apicalAlso" ? term : { ...undetermined[named], term };
      expect(termsTold({ ...undetermined, [named]: value })[named], term).not.toMatch(/^(notDetermined|undefined)$/);
    }
    expect(given.length).toBeGreaterThan(20);
  });
});

describe("a person's diagnosis against the findings", () => {
  const told = toldOf(necrotic);

  it("differs where both give an answer and the answers differ", () => {
    expect(differencesFrom(told, own({}))).toEqual([]);
    expect(differencesFrom(told, own({ pulpal: "previouslyTreated", source: "anotherTooth" }))).toEqual([
      { about: "pulpal", told: "pulp necrosis", own: "previously treated" },
      { about: "source", told: "this tooth", own: "another tooth" },
    ]);
    expect(differencesFrom(told, own({ apical: "acuteApicalAbscess" })).map(({ about }) => about)).toEqual(["apical"]);
  });

  it("does not differ where either leaves the term open", () => {
    expect(differencesFrom(told, own({ pulpal: "notDetermined", apical: "notDetermined" }))).toEqual([]);
    expect(differencesFrom(toldOf(sheetOf({})), own({ pulpal: "normalPulp" }))).toEqual([]);
  });
});
