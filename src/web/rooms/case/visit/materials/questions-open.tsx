import type { AnaestheticTold } from "../../../../../ledger/anaesthetic-told.ts";
import { latestOf } from "../../../../../ledger/latest-of.ts";
import { flagOfQuestion, historyTakenOver } from "../../../../../ledger/visit-sums/history-answers.ts";
import { partsOf } from "../../../../../record/parts.ts";
import { flagWords } from "../../../../../record/words/case-words.ts";
import { Button } from "../../../../parts/button.tsx";
import { dayInWords } from "../../../../parts/days-in-words.ts";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { newPartId } from "../../../../record/new-part-id.ts";
import { useRecording } from "../../../../record/use-recording.ts";
import { useCaseNow } from "../../case-now.ts";
import { withAnswer } from "./with-answer.ts";

type Question = AnaestheticTold["questions"][number];

interface QuestionsOpenOptions {
  readonly questions: readonly Question[];
  readonly on: string;
  readonly readOnly: boolean;
}

/** What is asked before the sum is relied on, each with its answer in one press; it is written to the medical history. */
export function QuestionsOpen({ questions, on, readOnly }: QuestionsOpenOptions) {
  const { parts, add } = useCaseNow();
  const history = latestOf(partsOf(parts, "medicalHistory").filter(({ body }) => body.takenOn <= on));
  if (questions.length === 0) return null;
  return (
    <div className="sum-questions">
      <h3>Asked before this is relied on</h3>
      {history === undefined && (
        <div className="entry-press">
          <span className="look">No medical history is recorded up to this visit: answers have no place yet.</span>
          {add && <Button onClick={() => add("medicalHistory")}>Take the medical history</Button>}
        </div>
      )}
      {history && !readOnly && <p className="quiet">{whereAnswersGo(history.body.takenOn, on)}</p>}
      <ul>
        {questions.map((question) => (
          <li key={question.about} data-answered={question.answered}>
            <span>
              <span aria-hidden="true">{question.answered === "yes" ? "▲" : "◇"}</span> {question.asks}
              {question.answered === "yes" && <strong> Answered: yes.</strong>}
              {question.mark === "memory" && <span className="quiet"> From memory.</span>}
            </span>
            {!readOnly && <Answer {...{ question, history, on }} />}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** An answer is of the day on which it was given: what hangs on the day counts on no other. */
const whereAnswersGo = (takenOn: string, on: string): string =>
  takenOn === on
    ? `Answers go to the history of ${dayInWords(on)}.`
    : `The history is of ${dayInWords(takenOn)}. An answer makes one of ${dayInWords(on)} that takes it over.`;

interface AnswerOptions {
  readonly question: Question;
  readonly on: string;
  readonly history: ReturnType<typeof partsOf<"medicalHistory">>[number] | undefined;
}

function Answer({ question: { about, asks, answered }, history, on }: AnswerOptions) {
  const { caseId } = useCaseNow();
  const record = useRecording(caseId);
  if (about === "ageYears") return <NumberField at="vitalSigns.ageYears" label="Age" unit="years" />;
  if (history === undefined) return null;
  const flag = flagOfQuestion[about];
  const place =
    history.body.takenOn === on
      ? { id: history.id, baseRevision: history.revision }
      : { id: newPartId("medicalHistory"), baseRevision: 0 };
  const answer = (isSo: boolean) =>
    record({
      words: `Medical history: ${flagWords[flag]} ${isSo ? "noted" : "asked for, and denied"}`,
      operations: [
        {
          ...{ op: "put", kind: "medicalHistory", ...place },
          body: withAnswer(historyTakenOver(history.body, on), flag, isSo),
        },
      ],
    });
  return (
    <span className="entry-press">
      <Button onClick={() => answer(false)} aria-label={`No: ${asks}`}>
        No
      </Button>
      {answered === undefined && (
        <Button onClick={() => answer(true)} aria-label={`Yes: ${asks}`}>
          Yes
        </Button>
      )}
    </span>
  );
}
