import { describe, expect, it } from "vitest";
import { diagnosisOf, sheetOf } from "../../../test/diagnosis-sheet.ts";
import { part, sampleSource } from "../../../test/sample-case.ts";
import { linesOfModel } from "../../../test/words-of-model.ts";
import { caseId, ledgerEntryId } from "../../core/ids.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf } from "../../record/parts.ts";
import { diagnosisPages } from "./diagnosis.ts";

/** Two silent tests under a replying control, and pain on percussion: necrosis, and a tender apex. */
const input = sheetOf(
  { cold: { reply: "none" }, electric: "none", percussion: "painful" },
  {},
  { cold: { reply: "normal" } },
);
const entry: LedgerEntry = {
  ...{ id: ledgerEntryId("a".repeat(64)), caseId: caseId("case-a"), topic: "diagnosis", topicVersion: 1 },
  ...{ subject: "diagnosis of findings-a", input, inputPaths: [], output: diagnosisOf(input) },
  at: "2024-03-04T10:00:00Z",
};

type Terms = Pick<BodyOf<"diagnosis">, "pulpal" | "apical" | "differsBecause">;

/** The lines of the one page of a diagnosis. */
function linesOf(terms: Terms, ledger: readonly LedgerEntry[]): string[] {
  const made = part("diagnosis", "diagnosis-a", {
    ...{ madeOn: "2024-03-04", taxonomy: "consensus2009", because: "Silent under a replying control" },
    ...terms,
    suggestion: entry.id,
  });
  return linesOfModel({ pages: diagnosisPages({ ...sampleSource([made]), ledger }) });
}
const under = (lines: readonly string[], heading: string, many = 1): string[] => {
  const at = lines.indexOf(heading);
  return at < 0 ? [] : lines.slice(at + 1, at + 1 + many);
};
const [ownHead, toldHead] = ["Codes of the diagnosis, pulp and apex", "Codes of the suggestion, pulp and apex"];

const reading = "The codes are published; which of them goes with which term is our own reading.";

describe("the page of a diagnosis in a deck", () => {
  it("gives the codes of the clinician's terms once where the findings speak for the same", () => {
    const lines = linesOf({ pulpal: "pulpNecrosis", apical: "symptomaticApicalPeriodontitis" }, [entry]);
    expect(under(lines, ownHead, 2)).toEqual([
      "ICD-10: K04.1, K04.4. ICD-10-CM: K04.1, K04.4. ICD-11: DA09.1, DA09.7.",
      "European guideline of 2023: the same, apical periodontitis.",
    ]);
    expect(lines).not.toContain(toldHead);
    expect(under(lines, ownHead, 3)[2]).toBe(reading);
  });

  it("says why it differs where it does, and leaves out a reason from other terms", () => {
    const heading = "It differs from what the findings speak for, because";
    const differsBecause = "Filled in 2017";
    const lines = linesOf({ pulpal: "previouslyTreated", apical: "chronicApicalAbscess", differsBecause }, [entry]);
    expect(under(lines, heading)).toEqual([differsBecause]);
    const same = { pulpal: "pulpNecrosis", apical: "symptomaticApicalPeriodontitis", differsBecause } as const;
    expect(linesOf(same, [entry])).not.toContain(heading);
    expect(under(linesOf(same, []), heading)).toEqual([differsBecause]);
  });

  it("gives those of the suggestion beside them where the terms differ", () => {
    const lines = linesOf({ pulpal: "previouslyTreated", apical: "chronicApicalAbscess" }, [entry]);
    expect(under(lines, ownHead)).toEqual([
      "ICD-10: no code, K04.6. ICD-10-CM: no code, K04.6. ICD-11: no code, DA09.61.",
    ]);
    expect(under(lines, toldHead)[0]).toContain("ICD-10: K04.1, K04.4.");
    expect(lines.filter((line) => line === reading)).toHaveLength(1);
  });

  it("gives codes where no findings stand beside it, and says what they hang on", () => {
    const lines = linesOf({ pulpal: "pulpNecrosis", apical: "acuteApicalAbscess" }, []);
    expect(under(lines, ownHead, 2)).toEqual([
      "ICD-10: K04.1, K04.7. ICD-10-CM: K04.1, K04.7. ICD-11: DA09.1, DA09.6.",
      "Acute apical abscess may have another code: it hangs on a sinus tract and where a swelling lies, which the findings do not tell.",
    ]);
    expect(lines).not.toContain(toldHead);
  });

  it("gives the suggestion's alone where the clinician left both terms open", () => {
    const lines = linesOf({ pulpal: "notDetermined", apical: "notDetermined" }, [entry]);
    expect(lines).not.toContain(ownHead);
    expect(lines).toContain(toldHead);
  });
});
