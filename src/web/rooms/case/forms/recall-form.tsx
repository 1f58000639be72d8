import { touchWords } from "../../../../record/words/finding-words.ts";
import {
  functionalWords,
  imagingWords,
  onFilmWords,
  presentWords,
  readerWords,
  restorationWords,
  retainedWords,
  symptomsWords,
} from "../../../../record/words/later-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TickField } from "../../../parts/fields/tick-field.tsx";
import { rowName } from "./row-name.ts";

/** One recall: felt, found, read on the film by one or several readers. */
export const RecallForm = () => (
  <>
    <div className="fields">
      <DayField at="on" label="On" />
      <SelectField at="retained" label="The tooth is" words={retainedWords} />
      <TextField at="lostBecause" label="Lost because" optional />
      <SelectField at="functional" label="In function" words={functionalWords} />
      <SelectField at="symptoms" label="Symptoms" words={symptomsWords} />
      <SelectField at="percussion" label="Percussion" words={touchWords} />
      <SelectField at="palpation" label="Palpation" words={touchWords} />
      <SelectField at="sinusTract" label="Sinus tract" words={presentWords} />
      <SelectField at="swelling" label="Swelling" words={presentWords} />
      <NumberField at="mobility" label="Mobility, 0 to 3" words={{ x: "notDone" }} required />
      <NumberField at="probingDeepestMm" label="Deepest probing" unit="mm" />
      <SelectField at="restoration" label="Restoration" words={restorationWords} />
    </div>
    <section className="form-part">
      <h2>On the film</h2>
      <div className="fields">
        <ChoiceField at="onFilm" label="Against the film before" words={onFilmWords} />
        <SelectField at="imaging" label="Taken" words={imagingWords} />
        <NumberField at="lesionMm" label="Lesion, widest" unit="mm" />
      </div>
      <Rows
        at="readings"
        label="Periapical index by reader"
        add="Add a reading"
        start={() => ({ reader: "resident", score: 1, blind: false })}
        nameOf={(row, index) => rowName(row, "reader", `reading ${index + 1}`)}
        columns={[
          { head: "Reader", cell: <SelectField at="reader" label="Reader" words={readerWords} bare /> },
          {
            head: "Periapical index, 1 to 5",
            cell: <NumberField at="score" label="Periapical index" required bare />,
            figure: true,
          },
          { head: "Blind to the other", cell: <TickField at="blind" label="blind" /> },
        ]}
      />
    </section>
    <div className="fields">
      <TextField at="note" label="Note" prose />
      <DayField at="nextOn" label="Next recall due" optional />
    </div>
  </>
);
