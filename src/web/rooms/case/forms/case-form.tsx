import { sexWords, treatmentWords } from "../../../../record/words/case-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";

/** Who came, with which tooth, and why. */
export const CaseForm = () => (
  <>
    <div className="fields">
      <TextField at="complaint" label="Complaint, in the patient's words" prose />
      <TextField at="referredFor" label="Referred for" prose />
      <TextField at="background" label="What this tooth has been through" prose />
    </div>
    <div className="fields">
      <DayField at="presentedOn" label="Presented on" />
      <SelectField at="treatment" label="Treatment" words={treatmentWords} />
      <TextField at="pseudonym" label="Pseudonym" />
      <NumberField at="birthYear" label="Year of birth" required />
      <TextField at="tooth" label="Tooth (two digits)" />
      <ChoiceField at="sex" label="Sex" words={sexWords} />
    </div>
  </>
);
