import { partsOf } from "../../../../record/parts.ts";
import { bendWords, handledWords, thirdWords } from "../../../../record/words/later-words.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useCanals } from "../canals.ts";
import { useCaseNow } from "../case-now.ts";
import { BrokenInstrument } from "../mishap/broken-instrument.tsx";
import { InstrumentOfPiece } from "../mishap/instrument-of-piece.tsx";
import { KindChooser } from "../mishap/kind-chooser.tsx";
import { KindRecord } from "../mishap/kind-record.tsx";
import "../mishap/mishap-desk.css";
import { StepsList } from "../mishap/steps-list.tsx";
import { TellPatient } from "../mishap/tell-patient.tsx";

/** Something that went otherwise than meant: what it was, what is done at once and said, then what is asked of it. */
export const MishapForm = () => (
  <>
    <KindChooser />
    <StepsList />
    <TellPatient />
    <WhereAndWhen />
    <section className="form-part">
      <h2>The instrument</h2>
      <InstrumentOfPiece />
    </section>
    <KindRecord />
    <BrokenInstrument />
    <section className="form-part">
      <h2>Account</h2>
      <div className="fields">
        <TextField at="story" label="What happened, in order" prose />
        <ChoiceField at="handled" label="How it was handled" words={handledWords} />
      </div>
    </section>
  </>
);

function WhereAndWhen() {
  const canals = useCanals();
  const { parts } = useCaseNow();
  const visits = partsOf(parts, "visit").map(({ id, body }): [string, string] => [id, dayInWords(body.on)]);
  return (
    <section className="form-part">
      <h2>Where and when</h2>
      <div className="fields">
        <DayField at="on" label="On" />
        <SelectField at="visit" label="In the visit of" words={Object.fromEntries(visits)} unset="not named" />
        <TextField at="canal" label="Canal" optional offers={Object.keys(canals)} />
        <SelectField at="third" label="Where" words={thirdWords} />
        <SelectField at="bend" label="And the bend" words={bendWords} />
      </div>
    </section>
  );
}
