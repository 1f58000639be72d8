import {
  apexWords,
  cariesWords,
  crackWords,
  earlierFillingWords,
  historyWords,
  laminaWords,
  ligamentWords,
  lucencyWords,
  resorptionWords,
  sinusWords,
  swellingWords,
  yesNoWords,
} from "../../../../record/words/finding-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TestSheet } from "./test-sheet.tsx";

/** One examination: tests on the tooth and its controls, what was asked, what was seen, what the film shows. */
export const FindingsForm = () => (
  <>
    <div className="fields">
      <DayField at="takenOn" label="Examined on" />
    </div>
    <section className="form-part">
      <h2>Tests</h2>
      <TestSheet />
    </section>
    <section className="form-part">
      <h2>Asked</h2>
      <div className="fields">
        {Object.entries(historyWords).map(([name, label]) => (
          <SelectField key={name} at={`history.${name}`} label={label} words={yesNoWords} />
        ))}
      </div>
    </section>
    <section className="form-part">
      <h2>Seen</h2>
      <div className="fields">
        <SelectField at="seen.swelling" label="Swelling" words={swellingWords} />
        <SelectField at="seen.sinusTract" label="Sinus tract" words={sinusWords} />
        <TextField at="seen.tracedTo" label="Traced to tooth" optional />
        <SelectField at="seen.caries" label="Caries" words={cariesWords} />
        <SelectField at="seen.crack" label="Crack" words={crackWords} />
        <SelectField at="seen.fever" label="Fever" words={yesNoWords} />
        <TextField at="seen.restoration" label="Restoration" prose />
      </div>
    </section>
    <section className="form-part">
      <h2>On the film</h2>
      <div className="fields">
        <SelectField at="onFilm.ligament" label="Ligament space" words={ligamentWords} />
        <SelectField at="onFilm.lamina" label="Lamina dura" words={laminaWords} />
        <SelectField at="onFilm.lucency" label="Radiolucency" words={lucencyWords} />
        <NumberField at="onFilm.lucencyMm" label="Radiolucency, widest" unit="mm" />
        <SelectField at="onFilm.sclerosis" label="Sclerosis" words={yesNoWords} />
        <SelectField at="onFilm.resorption" label="Resorption" words={resorptionWords} />
        <SelectField at="onFilm.apex" label="Apex" words={apexWords} />
        <SelectField at="onFilm.calcified" label="Calcified" words={yesNoWords} />
        <SelectField at="onFilm.earlierFilling" label="Earlier root filling" words={earlierFillingWords} />
        <NumberField at="onFilm.earlierFillingEndMm" label="Its end, short of the apex" unit="mm" />
      </div>
    </section>
    <TextField at="note" label="Note" prose />
  </>
);
