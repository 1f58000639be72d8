import { handedToWords } from "../../../../record/words/handback-words.ts";
import { ChoiceField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { FigureChooser } from "./handback/figure-chooser.tsx";
import { LetterPreview } from "./handback/letter-preview.tsx";
import { Place } from "./handback/place.tsx";
import { StillMissing } from "./handback/still-missing.tsx";
import { WarningsOffered } from "./handback/warnings-offered.tsx";
import "./handback/handback.css";

/** The tooth handed back: what must be done by when, what a later re-entry must know, and the letter that says so. */
export const HandbackForm = () => (
  <div className="handback">
    <div className="handback-fields">
      <StillMissing />
      <section className="form-part fields">
        <Place of="to">
          <ChoiceField at="to" label="The letter goes to" words={handedToWords} unset="not said" />
        </Place>
        <DayField at="on" label="Handed back on" />
        <Place of="restoreBy">
          <DayField at="restoreBy" label="To be restored by" optional />
        </Place>
        <Place of="restoreWith" wide>
          <TextField at="restoreWith" label="To be restored with" prose />
        </Place>
        <Place of="orificesMarkedBy" wide>
          <TextField at="orificesMarkedBy" label="Orifices are marked by" prose />
        </Place>
      </section>
      <section className="form-part">
        <div className="fields">
          <Place of="warnings" wide>
            <TextField at="warnings" label="Whoever enters again must know" prose />
          </Place>
        </div>
        <WarningsOffered />
      </section>
      <section className="form-part">
        <div className="fields">
          <Place of="prognosis" wide>
            <TextField at="prognosis" label="Outlook" prose />
          </Place>
        </div>
        <Place of="figure" wide>
          <FigureChooser />
        </Place>
      </section>
      <section className="form-part fields">
        <Place of="recallOn">
          <DayField at="recallOn" label="To be seen again on" optional />
        </Place>
        <TextField at="recallAsks" label="What is looked at then, and by whom" prose optional />
        <Place of="painAdvice" wide>
          <TextField at="painAdvice" label="Which pain is to be expected, and when to call" prose optional />
        </Place>
      </section>
    </div>
    <LetterPreview />
  </div>
);
