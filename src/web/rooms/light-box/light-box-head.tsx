import { Link } from "wouter";
import type { CaseView } from "../../../server/api.ts";
import { DemoMark } from "../../parts/demo-mark.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { useSettings, useTeeth } from "../../record/readings.ts";
import type { SaveState } from "../../record/save-queue.ts";
import { patientInWords, treatmentWords, wordFor } from "../../words/case-words.ts";
import { toothInNotation } from "../../words/tooth-words.ts";

/** Whose tooth it is, where one is, and whether all is recorded. */
export function LightBoxHead({ view, save }: { readonly view: CaseView; readonly save: SaveState }) {
  const { facts, caseId } = view;
  const teeth = useTeeth();
  const settings = useSettings();
  const tooth = toothInNotation(facts.tooth, teeth.data, settings.data?.notation ?? "twoDigit");
  return (
    <PageHead
      end={
        <>
          <span className="quiet" role="status">
            {saveWords(save)}
          </span>
          {facts.demo && <DemoMark />}
        </>
      }
    >
      <Link href={`/case/${caseId}`} className="head-case">
        <strong>{tooth}</strong> {wordFor(treatmentWords, facts.treatment)}
      </Link>
      <span className="quiet">
        {facts.pseudonym} · {patientInWords(facts, facts.presentedOn)}
      </span>
      <h1 className="head-room">Light box</h1>
    </PageHead>
  );
}

function saveWords(save: SaveState): string {
  switch (save.is) {
    case "quiet":
      return "";
    case "saving":
      return "recording";
    case "saved":
      return "recorded";
    case "failed":
      return save.retries ? `not recorded yet: ${save.why}` : save.why;
    case "conflict":
      return `"${save.words}" waits: the case was changed elsewhere; choose in the case`;
  }
}
