import { reviewByWords } from "../../../../record/words/later-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TickField } from "../../../parts/fields/tick-field.tsx";

/** What a supervisor read, asked and signed, and the answer. */
export const ReviewForm = () => (
  <div className="fields">
    <DayField at="on" label="On" />
    <SelectField at="by" label="By" words={reviewByWords} />
    <TickField at="signed" label="Signed" />
    <TextField at="says" label="Read and asked" prose />
    <TextField at="answer" label="Answer" prose />
  </div>
);
