import { notationWords, roleWords } from "../../../record/words/case-words.ts";
import { ChoiceField } from "../../parts/fields/choice-field.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";

/** Who writes, and how they read a tooth. */
export const YouFields = () => (
  <div className="fields settings-one">
    <TextField at="who" label="Name under which changes are recorded" />
    <ChoiceField at="role" label="Part" words={roleWords} />
    <ChoiceField at="notation" label="Notation of teeth" words={notationWords} />
  </div>
);
