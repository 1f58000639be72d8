import { wrongDoneWords } from "../../../../record/words/mishap-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useSettings, useTeeth } from "../../../record/readings.ts";
import { toothInNotation } from "../../../words/tooth-words.ts";

/** The tooth that was worked on in place of the right one. */
export const WrongTooth = () => (
  <>
    <div>
      <TextField at="tooth" label="The tooth that was worked on (two digits)" optional />
      <ReadAs />
    </div>
    <SelectField at="done" label="How far it came" words={wrongDoneWords} unset="not recorded" />
    <TextField at="noticedBy" label="Noticed by (a role, no name)" />
    <TextField at="restored" label="Done for that tooth" />
  </>
);

/** The tooth as the person writes teeth, with its name: `14, upper right first premolar`. */
function ReadAs() {
  const { value } = useField("tooth", "Tooth");
  const teeth = useTeeth();
  const settings = useSettings();
  const tooth = teeth.data?.find(({ twoDigit }) => twoDigit === value);
  const written = tooth && toothInNotation(tooth.twoDigit, teeth.data, settings.data?.notation ?? "twoDigit");
  return (
    <p className="quiet" role="status">
      {tooth ? `${written}, ${tooth.name}` : " "}
    </p>
  );
}
