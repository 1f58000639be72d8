import { apicalWords, pulpalWords } from "../../../../record/words/case-words.ts";
import { ChoiceField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";

/** The clinician's own diagnosis, with the reason. */
export const DiagnosisForm = () => (
  <>
    <div className="fields">
      <ChoiceField at="pulpal" label="Pulpal diagnosis" words={pulpalWords} />
      <ChoiceField at="apical" label="Apical diagnosis" words={apicalWords} />
      <TextField at="because" label="Because" prose />
      <DayField at="madeOn" label="Made on" />
    </div>
    <p className="quiet">Terms of the consensus of 2009 (AAE and ABE).</p>
  </>
);
