import { fragmentsOnFilms } from "../../../../ledger/fragments-on-films.ts";
import {
  breakSignWords,
  depthFromWords,
  headSeenWords,
  knownWords,
  stageWords,
} from "../../../../record/words/mishap-words.ts";
import { Button } from "../../../parts/button.tsx";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { Within } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TicksField } from "../../../parts/fields/tick-field.tsx";
import { useCaseNow } from "../case-now.ts";
import { MeasuredField } from "./measured-field.tsx";
import { useMishap } from "./use-mishap.ts";
import { lengthOffers, withLength } from "./with-length.ts";

/** What the explanation of a break rests on: the piece, what was seen, and how it came about. */
export const SeparatedRecord = () => (
  <>
    <h3>The piece, as far as it is measured</h3>
    <LengthOffers />
    <div className="fields">
      <MeasuredField at="separated.lengthMm" label="Length" sigma={0.2} also="fragmentMm" />
      <MeasuredField at="separated.remainingLengthMm" label="Left, break to handle" sigma={0.2} />
      <MeasuredField at="separated.brokenEndDiameterMm" label="Width at break" sigma={0.02} />
      <MeasuredField at="separated.tipDiameterMm" label="Width at tip" sigma={0.02} />
    </div>
    <Within at="separated">
      <h3>What was seen, and how it came about</h3>
      <div className="fields">
        <TicksField at="signs" label="Signs; the last five need a microscope" words={breakSignWords} />
        <NumberField at="tipDepthMm" label="Depth of the tip when it broke" unit="mm" digits={1} />
        <SelectField at="depthFrom" label="Depth from" words={depthFromWords} unset="reference point" />
        <SelectField at="headSeen" label="Its head" words={headSeenWords} />
        <SelectField at="stage" label="The canal at the break" words={stageWords} />
        <ChoiceField at="tipBound" label="The tip was bound" words={knownWords} />
        <ChoiceField at="stoppedAtTorqueLimit" label="The motor stopped at its torque limit" words={knownWords} />
      </div>
    </Within>
  </>
);

/** Lengths that the record already has: by film with its error, or as it was noted before. */
function LengthOffers() {
  const { mishap, readOnly, write } = useMishap("Its length");
  const { parts, ledger } = useCaseNow();
  const offers = lengthOffers(mishap, fragmentsOnFilms(parts, ledger), dayInWords);
  if (readOnly || offers.length === 0) return null;
  return (
    <div className="mishap-line">
      {offers.map((offer) => (
        <Button key={offer.says} onClick={() => write(withLength(mishap, offer.measured), offer.says)}>
          Take {offer.says}
        </Button>
      ))}
    </div>
  );
}
