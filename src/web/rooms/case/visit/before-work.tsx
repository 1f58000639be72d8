import { magnificationWords, rubberDamWords, timeOutWords } from "../../../../record/words/visit-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Optional } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TickField } from "../../../parts/fields/tick-field.tsx";

/** What was checked before the work, and the set it was done with. */
export const BeforeWork = () => (
  <section className="form-part">
    <h2>Before the work</h2>
    <div className="fields">
      <ChoiceField at="timeOut" label="Time-out" words={timeOutWords} />
      <ChoiceField at="isolation.rubberDam" label="Isolation" words={rubberDamWords} />
      <TextField at="isolation.whyNot" label="If without, why" optional />
      <SelectField at="magnification" label="Magnification" words={magnificationWords} />
      <TickField at="historyConfirmed" label="Medical history confirmed" />
    </div>
    <div className="fields">
      <NumberField at="vitalSigns.systolicMmHg" label="Systolic" unit="mmHg" />
      <NumberField at="vitalSigns.diastolicMmHg" label="Diastolic" unit="mmHg" />
      <NumberField at="vitalSigns.pulsePerMin" label="Pulse" unit="per min" />
      <NumberField at="vitalSigns.oxygenSaturation" label="Saturation" unit="0 to 1" />
    </div>
    <div className="fields">
      <Optional
        at="instrumentSet"
        label="instrument set"
        add="Note the instrument set"
        start={() => ({ set: "", steriliserCycle: "" })}
      >
        <TextField at="set" label="Instrument set" />
        <TextField at="steriliserCycle" label="Steriliser cycle" />
        <NumberField at="countedOut" label="Counted out" />
        <NumberField at="countedIn" label="Counted in" />
      </Optional>
    </div>
  </section>
);
