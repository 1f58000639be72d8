import { flareUpWords, helpWords } from "../../../../record/words/visit-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { AirSection } from "./air/air-section.tsx";
import { BeforeWork } from "./before-work.tsx";
import { CanalTables } from "./canal-tables.tsx";
import { Closing } from "./closing.tsx";
import { Materials } from "./materials/materials.tsx";

/** One visit: the canals first, then what was used, then what was checked and said. */
export const VisitForm = () => (
  <>
    <div className="fields">
      <TextField at="aim" label="Aim" prose />
      <DayField at="on" label="On" />
      <NumberField at="minutes" label="Time at the chair" unit="min" />
      <SelectField at="help" label="The resident" words={helpWords} unset="not recorded" />
    </div>
    <CanalTables />
    <Materials />
    <AirSection />
    <Closing />
    <BeforeWork />
    <section className="form-part">
      <h2>Told, and next</h2>
      <div className="fields">
        <TextField at="told" label="Told to the patient" prose />
        <TextField at="note" label="Note" prose />
        <DayField at="nextOn" label="Next" optional />
        <NumberField at="painBefore" label="Pain before, 0 to 10" />
        <NumberField at="painAfter24h" label="Pain after a day" />
        <NumberField at="painAfter7d" label="Pain after a week" />
        <ChoiceField at="flareUp" label="Afterwards" words={flareUpWords} />
      </div>
    </section>
  </>
);
