import { medicamentBefore } from "../../../../record/chairside/medicament-before.ts";
import {
  magnificationWords,
  medicamentOutWords,
  medicamentWords,
  rubberDamWords,
  timeOutWords,
} from "../../../../record/words/visit-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { useEditedPart } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Optional } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TickField } from "../../../parts/fields/tick-field.tsx";
import { useCaseNow } from "../case-now.ts";
import { useBench } from "./bench/use-bench.ts";

/** What was checked before the work, what came out, and the set it was done with. */
export const BeforeWork = () => (
  <section className="form-part">
    <h2>Before the work</h2>
    <div className="fields">
      <ChoiceField at="timeOut" label="Time-out" words={timeOutWords} />
      <TimeOutSaid />
      <ChoiceField at="isolation.rubberDam" label="Isolation" words={rubberDamWords} />
      <TextField at="isolation.whyNot" label="If without, why" optional />
      <SelectField at="magnification" label="Magnification" words={magnificationWords} />
      <div id="visit-history">
        <TickField at="historyConfirmed" label="Medical history confirmed" />
      </div>
    </div>
    <MedicamentOut />
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

const filmSideWords = {
  checked: "the film was the right way round",
  noFilm: "there was no film",
  notChecked: "the film's side was not checked",
};

/** What was named at the time-out, by whom it was asked and at which minute. */
function TimeOutSaid() {
  const { visit } = useBench("Time-out");
  const check = visit.timeOutCheck;
  if (check === undefined) return null;
  const at = check.atMin === undefined ? "" : ` at ${check.atMin} min`;
  return (
    <p className="quiet field" data-wide="true">
      {check.tooth} was named{at}; asked of {check.by}; {filmSideWords[check.filmSide]}.
    </p>
  );
}

/** Whether the medicament of the visit before came out; asked where there was one. */
function MedicamentOut() {
  const { parts } = useCaseNow();
  const { id } = useEditedPart();
  const { visit } = useBench("Medicament");
  const before = medicamentBefore(parts, id);
  if (before === undefined && visit.medicamentOut === undefined) return null;
  const named = before === undefined ? "" : `: ${medicamentWords[before.kind]}`;
  return (
    <div className="fields">
      <ChoiceField
        at="medicamentOut"
        label={`Medicament of the visit before${named}`}
        words={medicamentOutWords}
        unset="not recorded"
      />
    </div>
  );
}
