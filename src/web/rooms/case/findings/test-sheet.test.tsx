import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { ledgerEntryId, caseId as newCaseId, partId } from "../../../../core/ids.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { BodyOf, PartOf } from "../../../../record/parts.ts";
import { EditPart } from "../../../parts/fields/editing.tsx";
import { DraftBook } from "../../../record/draft-book.ts";
import { CaseNow } from "../case-now.ts";
import { FindingsForm } from "../forms/findings-form.tsx";
import { faultsAtPlaces } from "../ledger/faults-at-places.ts";
import { emptyTestedTooth, newBodies } from "../new-bodies.ts";

type Tested = BodyOf<"findings">["teeth"][number];

const sheet = (id: string, takenOn: string, ...teeth: Partial<Tested>[]): PartOf<"findings"> => ({
  ...{ id: partId(id), kind: "findings", revision: 1 },
  body: {
    ...newBodies.findings(takenOn, "26"),
    teeth: teeth.map((tested, index) => ({
      ...emptyTestedTooth(index === 0 ? "26" : "25", index === 0 ? "tooth" : "control"),
      ...tested,
    })),
  },
});

/** The page of a sheet as it is drawn, without its tags' attributes in the way. */
function drawn(
  part: PartOf<"findings">,
  others: readonly PartOf<"findings">[] = [],
  ledger: readonly LedgerEntry[] = [],
) {
  const book = new DraftBook({ put: async () => Promise.reject(new Error("nothing is recorded here")) });
  return renderToStaticMarkup(
    <CaseNow.Provider value={{ caseId: "case-a", parts: [...others, part], ledger }}>
      <EditPart part={part} title="Findings" draft={undefined} book={book} told={faultsAtPlaces(ledger, part.id)}>
        <FindingsForm />
      </EditPart>
    </CaseNow.Provider>,
  );
}
const wordsOf = (markup: string): string => markup.replaceAll(/<[^>]+>/g, " ").replaceAll(/\s+/g, " ");

describe("the sheet of tests", () => {
  it("has a row for each test and a column for each tooth, every cell called by both", () => {
    const page = drawn(sheet("findings-a", "2026-03-01", {}, {}));
    for (const test of ["Cold", "Heat", "Electric", "Percussion", "Palpation", "Bite", "Mobility"])
      for (const tooth of ["26", "25"]) expect(page).toContain(`>${test} of ${tooth}</label>`);
    expect(page).toContain('aria-label="Probing mesiopalatal of 26"');
    expect(wordsOf(page)).toContain("Tests 16 not done");
  });

  it("offers the controls that are missing, and shows its keys", () => {
    const words = wordsOf(drawn(sheet("findings-a", "2026-03-01", {}, {})));
    expect(words).toContain("Add controls 27 and 16");
    expect(words).toContain("next not done");
  });

  it("says where a probing stands out", () => {
    const probingMm = { mesiobuccal: 3, buccal: 8, distobuccal: 3, distolingual: 5 };
    const page = drawn(sheet("findings-a", "2026-03-01", { probingMm }));
    expect(wordsOf(page)).toContain("buccal 8 mm, narrow");
    expect(wordsOf(page)).toContain("distopalatal 5 mm");
    expect(page.match(/data-stands="narrow"/g)).toHaveLength(1);
    expect(page.match(/data-stands="deep"/g)).toHaveLength(1);
  });

  it("stands beside the two sheets before it and marks what changed", () => {
    const then = (id: string, day: string, seconds: number) =>
      sheet(id, day, { cold: { reply: "heightened", lingersSeconds: seconds }, bite: "none" });
    const now = sheet("findings-d", "2026-09-01", { cold: { reply: "none" }, bite: "none" });
    const earlier = [then("findings-a", "2026-01-01", 5), then("findings-b", "2026-02-01", 10)];
    const words = wordsOf(drawn(now, [...earlier, then("findings-c", "2026-03-01", 30)]));
    expect(words).toContain("1 Mar 2026 1 Feb 2026");
    expect(words).not.toContain("1 Jan 2026");
    expect(words).toContain("heightened, 30 s ≠ , differs from this sheet");
    expect(words).toContain("All 3 earlier sheets, controls too");
    expect(words.match(/differs from this sheet/g)).toHaveLength(2);
  });

  it("shows what the ledger refused at its cell, and under the sheet with its place", () => {
    const part = sheet("findings-a", "2026-03-01", {}, { cold: { reply: "none", lingersSeconds: 12 } });
    const refusal: LedgerEntry = {
      ...{ id: ledgerEntryId("0".repeat(64)), caseId: newCaseId("case-a"), topicVersion: 1, input: {} },
      ...{ subject: "diagnosis of findings-a", topic: "diagnosis", at: "2026-03-01T10:00:00Z" },
      inputPaths: [{ input: "teeth[1]", record: "findings-a/teeth/1" }],
      refused: ["teeth[1].cold.lingersSeconds: 12 s stand at a test without a reply"],
    };
    const page = drawn(part, [], [refusal]);
    expect(page).toMatch(/field-fault"[^>]*>12 s stand at a test without a reply/);
    expect(wordsOf(page)).toContain("Tooth 25, cold, lingers seconds: 12 s stand at a test without a reply");
  });
});

describe("the questions of a sheet", () => {
  it("put what can't wait first and say how much is open", () => {
    const part = sheet("findings-a", "2026-03-01", {});
    const answered = { ...part, body: { ...part.body, history: { ...part.body.history, trismus: "no" as const } } };
    const words = wordsOf(drawn(answered));
    expect(words.indexOf("Signs that can't wait".replace("'", "&#x27;"))).toBeLessThan(words.indexOf("Tests"));
    expect(words).toContain("7 open");
    expect(wordsOf(drawn(part))).toContain("nothing answered yet");
  });
});
