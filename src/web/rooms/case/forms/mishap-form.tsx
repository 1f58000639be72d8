import { bendWords, handledWords, mishapWords, thirdWords, toldWords } from "../../../../record/words/later-words.ts";
import { alloyWords, movementWords } from "../../../../record/words/visit-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Optional } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";

/** Something that went otherwise than meant. */
export const MishapForm = () => (
  <>
    <div className="fields">
      <SelectField at="what" label="What" words={mishapWords} />
      <TextField at="canal" label="Canal" optional />
      <SelectField at="third" label="Where" words={thirdWords} />
      <SelectField at="bend" label="And the bend" words={bendWords} />
      <ChoiceField at="handled" label="How it was handled" words={handledWords} />
      <ChoiceField at="toldPatient" label="The patient" words={toldWords} />
      <TextField at="story" label="What happened, in order" prose />
      <DayField at="on" label="On" />
    </div>
    <section className="form-part">
      <h2>The instrument</h2>
      <div className="fields">
        <Optional
          at="instrument"
          label="instrument"
          add="An instrument was part of it"
          start={() => ({ size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" })}
        >
          <NumberField at="size" label="Size (ISO 3630-1)" required />
          <NumberField at="taper" label="Taper" unit="mm per mm" required />
          <SelectField at="alloy" label="Alloy" words={alloyWords} />
          <SelectField at="movement" label="Movement" words={movementWords} />
        </Optional>
      </div>
      <div className="fields">
        <NumberField at="fragmentMm" label="Length of the piece" unit="mm" />
      </div>
    </section>
  </>
);
