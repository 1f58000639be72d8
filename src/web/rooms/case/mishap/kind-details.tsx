import type { ComponentType } from "react";
import { seenYesNoWords } from "../../../../record/words/finding-words.ts";
import {
  blockedByWords,
  damWords,
  extrusionSignWords,
  foundObjectWords,
  knownWords,
  ledgeWallWords,
  missedTreatedWords,
  nearWords,
  needleWords,
  objectSignWords,
  passedWords,
  perforationPlaceWords,
  sideOfToothWords,
  transportationWords,
  wentWords,
} from "../../../../record/words/mishap-words.ts";
import { solutionWords } from "../../../../record/words/visit-words.ts";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TicksField } from "../../../parts/fields/tick-field.tsx";
import { TimeField } from "../../../parts/fields/time-field.tsx";
import { useCanals } from "../canals.ts";
import type { DetailName } from "./with-kind.ts";
import { WrongTooth } from "./wrong-tooth.tsx";

const unset = "not recorded";
const sentTo = <TextField at="sentTo" label="Sent to (a place, no name)" optional />;
const passed = <ChoiceField at="passed" label="Passed" words={passedWords} />;

const Ledge = () => (
  <>
    <NumberField at="depthMm" label="Depth of the ledge, from the reference point" unit="mm" digits={1} />
    <SelectField at="wall" label="On which wall" words={ledgeWallWords} />
    {passed}
  </>
);

const Perforation = () => (
  <>
    <SelectField at="place" label="Place" words={perforationPlaceWords} unset={unset} />
    <SelectField at="side" label="Side" words={sideOfToothWords} />
    <NumberField at="diameterMm" label="Width" unit="mm" digits={1} />
    <NumberField at="aboveBoneMm" label="Above the bone's edge (below: −)" unit="mm" digits={1} />
    <NumberField at="sealedAfterMin" label="Sealed after" unit="min" />
    <TextField at="sealedWith" label="Sealed with (a kind of material)" optional />
    <ChoiceField at="bleeding" label="Bleeding" words={seenYesNoWords} />
    <ChoiceField at="pocket" label="A pocket reaches it" words={seenYesNoWords} />
  </>
);

const Block = () => (
  <>
    <SelectField at="by" label="Blocked by" words={blockedByWords} />
    <NumberField at="depthMm" label="Depth of the block, from the reference point" unit="mm" digits={1} />
    {passed}
  </>
);

const Transportation = () => (
  <>
    <SelectField at="form" label="Form" words={transportationWords} unset={unset} />
    <NumberField at="sizeThere" label="Size that binds there (ISO 3630-1)" />
    <TextField at="seenOn" label="Seen on" />
  </>
);

const solutions = Object.values(solutionWords);

const IrrigantExtrusion = () => (
  <>
    <TextField at="solution" label="Solution" offers={solutions} />
    <NumberField at="percent" label="Strength" unit="%" />
    <NumberField at="volumeMl" label="Volume" unit="ml" />
    <SelectField at="needle" label="Needle" words={needleWords} unset={unset} />
    <NumberField at="needleFromStopMm" label="Depth of the needle, stop to tip" unit="mm" digits={1} />
    <SelectField at="needleBound" label="The needle was bound" words={knownWords} />
    <TimeField at="time" label="At (time of the day)" />
    <NumberField at="pain" label="Pain, 0 to 10" placeholder="not asked" />
    <TextField at="spread" label="Swelling and bruising go as far as" optional />
    <DayField at="seenAgainOn" label="Seen again on" optional />
    {sentTo}
    <TicksField at="signs" label="Signs" words={extrusionSignWords} />
  </>
);

const FillingExtrusion = () => (
  <>
    <TextField at="material" label="Material (a kind)" />
    <NumberField at="beyondMm" label="Beyond the apex" unit="mm" digits={1} />
    <SelectField at="near" label="Near" words={nearWords} />
    {sentTo}
    <ChoiceField at="numbness" label="Numbness or burning" words={seenYesNoWords} />
  </>
);

const MissedCanal = () => (
  <>
    <TextField at="found" label="Which canal" optional offers={Object.keys(useCanals())} />
    <TextField at="foundBy" label="Found by" />
    <DayField at="since" label="May have been left since" optional />
    <ChoiceField at="treated" label="Treated" words={missedTreatedWords} />
  </>
);

const SwallowedOrInhaled = () => (
  <>
    <TextField at="object" label="Object, by kind and length" />
    <TimeField at="time" label="At (time of the day)" />
    <TextField at="counted" label="Counted out and in" optional />
    <SelectField at="went" label="It was" words={wentWords} />
    <SelectField at="found" label="Found" words={foundObjectWords} />
    <SelectField at="rubberDam" label="Rubber dam" words={damWords} unset={unset} />
    {sentTo}
    <TicksField at="signs" label="Signs" words={objectSignWords} />
  </>
);

/** The fields of each kind that is not a separated instrument; they stand inside its place of the body. */
export const detailFields: Readonly<Record<Exclude<DetailName, "separated">, ComponentType>> = {
  ledge: Ledge,
  perforation: Perforation,
  block: Block,
  transportation: Transportation,
  irrigantExtrusion: IrrigantExtrusion,
  fillingExtrusion: FillingExtrusion,
  missedCanal: MissedCanal,
  wrongTooth: WrongTooth,
  swallowedOrInhaled: SwallowedOrInhaled,
};
