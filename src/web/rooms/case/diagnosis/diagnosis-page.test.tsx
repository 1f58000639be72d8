import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Router } from "wouter";
import { diagnosisOf, sheetOf } from "../../../../../test/diagnosis-sheet.ts";
import { caseId, ledgerEntryId, partId } from "../../../../core/ids.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { BodyOf, Part, PartOf } from "../../../../record/parts.ts";
import { EditPart } from "../../../parts/fields/editing.tsx";
import { DraftBook } from "../../../record/draft-book.ts";
import { type CaseAsShown, CaseNow } from "../case-now.ts";
import { DiagnosisForm } from "../forms/diagnosis-form.tsx";
import { newBodies } from "../new-bodies.ts";

const day = "2026-03-01";
const findings = (id: string, takenOn: string): PartOf<"findings"> => ({
  ...{ id: partId(id), kind: "findings", revision: 1, body: newBodies.findings(takenOn, "26") },
});
const made = (given: Partial<BodyOf<"diagnosis">> = {}): PartOf<"diagnosis"> => ({
  ...{ id: partId("diagnosis-a"), kind: "diagnosis", revision: 1, body: { ...newBodies.diagnosis(day), ...given } },
});
const entryOf = (about: string, rest: Pick<LedgerEntry, "output"> | { refused: string[] }): LedgerEntry => ({
  ...{ id: ledgerEntryId("a".repeat(64)), caseId: caseId("case-a"), topic: "diagnosis", topicVersion: 1, input: {} },
  ...{
    subject: `diagnosis of ${about}`,
    inputPaths: [{ input: "teeth[0]", record: `${about}/teeth/0` }],
    at: `${day}T10:00:00Z`,
  },
  ...rest,
});

/** Two silent tests under a replying control, pain on percussion, and trouble swallowing. */
const urgent = diagnosisOf(
  sheetOf(
    { cold: { reply: "none" }, electric: "none", percussion: "painful" },
    { history: { troubleSwallowing: "yes" } },
    { cold: { reply: "normal" }, electric: 30 },
  ),
);

/** The words of the page of a diagnosis. */
function pageOf(
  diagnosis: PartOf<"diagnosis">,
  parts: readonly Part[],
  ledger: readonly LedgerEntry[],
  more: Partial<CaseAsShown> = {},
) {
  const book = new DraftBook({ put: async () => Promise.reject(new Error("nothing is recorded here")) });
  const markup = renderToStaticMarkup(
    <QueryClientProvider client={new QueryClient()}>
      <Router ssrPath="/case/case-a">
        <CaseNow.Provider value={{ caseId: "case-a", parts: [...parts, diagnosis], ledger, ...more }}>
          <EditPart part={diagnosis} title="Diagnosis" draft={undefined} book={book}>
            <DiagnosisForm />
          </EditPart>
        </CaseNow.Provider>
      </Router>
    </QueryClientProvider>,
  );
  return markup
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&#x27;", "'")
    .replaceAll(/\s+/g, " ");
}

describe("a diagnosis beside the findings", () => {
  const sheet = findings("findings-a", day);
  const entry = entryOf(sheet.id, { output: urgent });

  it("names what can't wait first, then terms with status, reasons, what is open, and codes", () => {
    const words = pageOf(made(), [sheet], [entry]);
    expect(words).toContain("This can't wait Trouble swallowing: refer at once. Found: trouble swallowing.");
    expect(words.indexOf("This can't wait")).toBeLessThan(words.indexOf("Pulp necrosis"));
    expect(words).toContain("Pulp necrosis determined");
    expect(words).toContain("For Cold: no reply");
    expect(words).toContain("ICD-10 K04.1 K04.4");
    expect(words).toContain("Take both terms as your own");
  });

  it("shows a difference, asks for a reason, and stops asking once there is one", () => {
    const differing = made({ pulpal: "previouslyTreated", apical: "symptomaticApicalPeriodontitis" });
    const words = pageOf(differing, [sheet], [entry]);
    expect(words).toContain("On the pulp: you wrote previously treated , the findings speak for pulp necrosis");
    expect(words).toContain("A reason is asked for");
    const reasoned = made({ ...differing.body, differsBecause: "Filled in 2017; the film shows it." });
    expect(pageOf(reasoned, [sheet], [entry])).not.toContain("A reason is asked for");
  });

  it("says so where the terms are those of the findings, and offers nothing to take", () => {
    const taken = made({ pulpal: "pulpNecrosis", apical: "symptomaticApicalPeriodontitis", suggestion: entry.id });
    const words = pageOf(taken, [sheet], [entry]);
    expect(words).toContain("Your terms are those of the findings.");
    expect(words).not.toContain("Take both terms");
    expect(words).not.toContain("Your diagnosis differs");
    const after = made({ ...taken.body, differsBecause: "Filled in 2017." });
    expect(pageOf(after, [sheet], [entry])).toContain("Nothing differs now; this reason was written when it did.");
  });

  it("gives the codes of the person's own terms, and those of the findings only where the terms differ", () => {
    const words = pageOf(made({ pulpal: "pulpNecrosis", apical: "chronicApicalAbscess" }), [sheet], [entry]);
    expect(words).toContain("Codes of your diagnosis Pulp necrosis Chronic apical abscess ICD-10 K04.1 K04.6");
    expect(words).toContain("Codes of what the findings speak for Pulp necrosis Symptomatic apical periodontitis");
    expect(words.match(/The codes are published/g)).toHaveLength(1);
    const same = pageOf(made({ pulpal: "pulpNecrosis", apical: "symptomaticApicalPeriodontitis" }), [sheet], [entry]);
    expect(same).toContain("Codes of your diagnosis Pulp necrosis Symptomatic apical periodontitis ICD-10 K04.1 K04.4");
    expect(same).not.toContain("Codes of what the findings speak for");
  });

  it("gives codes without findings, with what they hang on, and none of terms that are open", () => {
    const words = pageOf(made({ pulpal: "previouslyTreated", apical: "acuteApicalAbscess" }), [], []);
    expect(words).toContain("ICD-10 no code K04.7 ICD-10-CM (United States) no code K04.7 ICD-11 no code DA09.6");
    expect(words).toContain("it hangs on a sinus tract and where a swelling lies, which the findings do not tell.");
    expect(pageOf(made(), [], [])).not.toContain("ICD-10");
  });

  it("goes by the latest findings up to its day and lets the others be chosen", () => {
    const older = findings("findings-b", "2026-01-01");
    const later = findings("findings-c", "2026-05-01");
    const words = pageOf(made(), [older, sheet, later], [entry]);
    expect(words).toContain("Beside the Findings that stand beside it findings of 1 Mar 2026 findings of 1 Jan 2026");
    expect(words).not.toContain("1 May 2026");
  });
});

describe("a diagnosis with nothing beside it", () => {
  it("says what is missing and leads there", () => {
    const words = pageOf(made(), [], [], { add: () => undefined });
    expect(words).toContain("No findings are recorded yet.");
    expect(words).toContain("Add findings");
    expect(pageOf(made(), [findings("findings-a", "2026-05-01")], [])).toContain("those of the case are later");
  });

  it("says what the findings contradict each other in", () => {
    const sheet = findings("findings-a", day);
    const refused = entryOf(sheet.id, {
      refused: ["teeth[0].cold.lingersSeconds: 12 s stand at a test without a reply"],
    });
    const words = pageOf(made(), [sheet], [refused]);
    expect(words).toContain("Tooth 26, cold, lingers seconds: 12 s stand at a test without a reply");
    expect(words).toContain("Mend them there");
    expect(words).not.toContain("Take both terms");
  });

  it("shows what would have to be done where the findings give no term", () => {
    const sheet = findings("findings-a", day);
    const words = pageOf(made(), [sheet], [entryOf(sheet.id, { output: diagnosisOf(sheetOf({})) })]);
    expect(words).toContain("Not determined");
    expect(words).toContain("Still possible, and what would separate it");
    expect(words).toContain("Missing for a term The existing treatment of each canal A sensibility test");
    expect(words).not.toContain("Take both terms");
    expect(words).not.toContain("Your terms are those");
    expect(words).not.toContain("Where the complaint comes from");
  });
});
