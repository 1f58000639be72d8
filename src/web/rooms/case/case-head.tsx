import { Link } from "wouter";
import { patientInWords, treatmentWords, wordFor } from "../../../record/words/case-words.ts";
import type { CaseView } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import { today } from "../../parts/days-in-words.ts";
import { DemoMark } from "../../parts/demo-mark.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { TakeBack } from "../../parts/take-back.tsx";
import { useSettings, useTeeth } from "../../record/readings.ts";
import type { SaveState } from "../../record/save-queue.ts";
import { toothInNotation } from "../../words/tooth-words.ts";
import "./case-head.css";
import { SaveMark } from "./save-mark.tsx";

interface CaseHeadOptions {
  readonly view: CaseView;
  readonly save: SaveState;
  readonly pending: boolean;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly history: () => void;
}

/** Which tooth of whom, how the record stands, and the ways out of the room. */
export function CaseHead({ view, history, undo, redo, ...saving }: CaseHeadOptions) {
  const { facts, caseId } = view;
  return (
    <PageHead
      end={
        <>
          <SaveMark {...saving} />
          <TakeBack {...{ view, undo, redo }} />
          <Button weight="bare" hint="h" onClick={history}>
            History
          </Button>
          <Link href={`/case/${caseId}/light-box`} className="button">
            Light box
          </Link>
          <Link href={`/case/${caseId}/documents`} className="button button-strong">
            Documents
          </Link>
        </>
      }
    >
      <AboutCase facts={facts} />
    </PageHead>
  );
}

/** The tooth in the person's notation, its name, the treatment and the patient. */
export function AboutCase({ facts }: { readonly facts: CaseView["facts"] }) {
  const settings = useSettings();
  const teeth = useTeeth();
  const notation = settings.data?.notation ?? "twoDigit";
  const written = toothInNotation(facts.tooth, teeth.data, notation);
  const name = teeth.data?.find(({ twoDigit }) => twoDigit === facts.tooth)?.name;
  return (
    <>
      <h1 className="case-head-tooth">{written}</h1>
      {name !== undefined && <span>{name}</span>}
      <span>{wordFor(treatmentWords, facts.treatment)}</span>
      <span className="quiet">
        {facts.pseudonym} · {patientInWords(facts, facts.presentedOn || today())}
      </span>
      {facts.demo && <DemoMark />}
    </>
  );
}
