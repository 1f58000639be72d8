import {
  answeredByWords,
  answerWords,
  capacityWords,
  explainedByWords,
  imagesForWords,
} from "../../../../record/words/later-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TicksField } from "../../../parts/fields/tick-field.tsx";

/** Consent as an event: who explained, who answered, and what images may be used for. */
export const ConsentForm = () => (
  <div className="fields">
    <TextField at="to" label="To what" prose />
    <ChoiceField at="answer" label="Answer" words={answerWords} />
    <DayField at="on" label="On" />
    <SelectField at="explainedBy" label="Explained by" words={explainedByWords} />
    <SelectField at="answeredBy" label="Answered by" words={answeredByWords} />
    <SelectField at="capacity" label="Capacity" words={capacityWords} />
    <TicksField at="imagesFor" label="Images may be used for" words={imagesForWords} />
    <TextField at="note" label="Note" prose />
  </div>
);
