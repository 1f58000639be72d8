import { useId } from "react";
import { mishapGuide } from "../../../../record/mishap-guide/mishap-guide.ts";
import { toldWords } from "../../../../record/words/later-words.ts";
import { toldByWords } from "../../../../record/words/mishap-words.ts";
import { Button } from "../../../parts/button.tsx";
import { today } from "../../../parts/days-in-words.ts";
import { ChoiceField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { Within } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useMishap } from "./use-mishap.ts";
import { withSentences } from "./with-sentences.ts";

/** What the patient is told in plain words, and what was said and agreed. */
export function TellPatient() {
  const { mishap, readOnly, write } = useMishap("Told to the patient");
  const { tell } = mishapGuide(mishap.what);
  const heading = useId();
  const { told } = mishap;
  const start = told ?? { on: today(), by: "resident" as const, said: "", agreed: "" };
  const note = (said: string, says: string) =>
    write({ ...mishap, toldPatient: "told", told: { ...start, said } }, says);
  const takeOut = () => {
    const { told: _told, ...others } = mishap;
    write({ ...others, toldPatient: "notYet" }, "taken out");
  };
  return (
    <section className="form-part mishap-tell" aria-labelledby={heading}>
      <h2 id={heading}>What the patient is told</h2>
      <ul className="mishap-plain">
        {tell.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {!readOnly && (
        <div className="mishap-line">
          {told === undefined && <Button onClick={() => note("", "noted")}>Note that the patient was told</Button>}
          <Button
            disabled={withSentences(start.said, tell) === start.said}
            onClick={() => note(withSentences(start.said, tell), "the plain sentences put in")}
          >
            Put these sentences in, to be changed
          </Button>
        </div>
      )}
      <div className="fields">
        <ChoiceField at="toldPatient" label="The patient" words={toldWords} />
      </div>
      {told && (
        <div className="fields">
          <Within at="told">
            <DayField at="on" label="Told on" />
            <ChoiceField at="by" label="Told by" words={toldByWords} />
            <TextField at="said" label="What was said" prose />
            <TextField at="agreed" label="What was agreed" prose />
          </Within>
          {!readOnly && (
            <div className="field field-end">
              <Button weight="bare" onClick={takeOut}>
                Take out what was said
              </Button>
            </div>
          )}
        </div>
      )}
    </section>
  );
}
