import {
  activatedWords,
  agentWords,
  solutionWords,
  solventWords,
  vasoconstrictorWords,
} from "../../../../../record/words/visit-words.ts";
import { SelectField } from "../../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { type Column, Rows } from "../../../../parts/fields/rows.tsx";
import { TextField } from "../../../../parts/fields/text-field.tsx";
import { rowName } from "../../forms/row-name.ts";
import { IrrigantMore } from "./irrigant-more.tsx";
import { coolantWords, fragmentAlloyWords, workedOnWords } from "./read-burst.ts";

/** Rows come in whole by their dialog: no row begins with a value that nobody chose. */
const startsByDialog = () => ({});

const minute: Column = {
  ...{ head: "At", unit: "min", figure: true },
  cell: <NumberField at="atMin" label="At minute" unit="min" bare />,
};
const strength = (required: boolean): Column => ({
  ...{ head: "Strength", unit: "%", figure: true },
  cell: <NumberField at="percent" label="Strength" unit="%" required={required} bare />,
});
const volume: Column = {
  ...{ head: "Volume", unit: "ml", figure: true },
  cell: <NumberField at="volumeMl" label="Volume" unit="ml" required bare />,
};

/** Every injection, to be mended row by row. */
export const InjectionRows = () => (
  <Rows
    at="anaesthetic"
    label="Local anaesthetic"
    start={startsByDialog}
    nameOf={(row, index) => rowName(row, "agent", `injection ${index + 1}`)}
    columns={[
      { head: "Agent", cell: <SelectField at="agent" label="Agent" words={agentWords} bare /> },
      strength(true),
      { head: "With, one to", cell: <Vasoconstrictor /> },
      { head: "Cartridges", cell: <NumberField at="cartridges" label="Cartridges" required bare />, figure: true },
      {
        ...{ head: "each", unit: "ml", figure: true },
        cell: <NumberField at="cartridgeMl" label="Volume of one" unit="ml" required bare />,
      },
      minute,
      { head: "Technique", cell: <TextField at="technique" label="Technique" optional wraps bare />, wide: true },
    ]}
  />
);

const Vasoconstrictor = () => (
  <div className="cell-pair">
    <SelectField at="vasoconstrictor.name" label="Vasoconstrictor" words={vasoconstrictorWords} unset="none" bare />
    <NumberField at="vasoconstrictor.ratio" label="One to" bare />
  </div>
);

/** Every irrigant, to be mended row by row; their order is that of use. */
export const IrrigantRows = () => (
  <Rows
    at="irrigation"
    label="Irrigation"
    ordered
    start={startsByDialog}
    nameOf={(row, index) => rowName(row, "solution", `irrigant ${index + 1}`)}
    columns={[
      { head: "Irrigant", cell: <SelectField at="solution" label="Irrigant" words={solutionWords} bare />, wide: true },
      strength(false),
      volume,
      {
        ...{ head: "For", unit: "min", figure: true },
        cell: <NumberField at="minutes" label="Time" unit="min" required bare />,
      },
      minute,
      { head: "Activated", cell: <SelectField at="activated" label="Activated" words={activatedWords} bare /> },
      { head: "More", cell: <IrrigantMore /> },
    ]}
  />
);

/** Every dose of a solvent, to be mended row by row. */
export const SolventRows = () => (
  <Rows
    at="solvent"
    label="Solvent"
    start={startsByDialog}
    nameOf={(row, index) => rowName(row, "solvent", `dose ${index + 1}`)}
    columns={[
      { head: "Solvent", cell: <SelectField at="solvent" label="Solvent" words={solventWords} bare />, wide: true },
      volume,
      {
        ...{ head: "At", unit: "min", figure: true },
        cell: <NumberField at="atMin" label="At minute" unit="min" required bare />,
      },
      {
        ...{ head: "Taken up again", unit: "0 to 1", figure: true },
        cell: <NumberField at="recoveredFraction" label="Taken up again" bare />,
      },
    ]}
  />
);

/** Every burst of ultrasound, to be mended row by row. */
export const BurstRows = () => (
  <Rows
    at="ultrasonics"
    label="Ultrasound"
    start={startsByDialog}
    nameOf={(_, index) => `burst ${index + 1}`}
    columns={[
      { head: "On", cell: <SelectField at="on" label="On" words={workedOnWords} bare /> },
      {
        head: "Alloy",
        cell: <SelectField at="alloy" label="Alloy" words={fragmentAlloyWords} unset="not said" bare />,
      },
      { head: "Cooled", cell: <SelectField at="coolant" label="Cooled by" words={coolantWords} bare /> },
      { head: "Canal", narrow: "name", cell: <TextField at="canal" label="Canal" optional bare /> },
      {
        ...{ head: "For", unit: "s", figure: true },
        cell: <NumberField at="seconds" label="Worked for" unit="s" required bare />,
      },
      {
        ...{ head: "Then rest", unit: "s", figure: true },
        cell: <NumberField at="restSeconds" label="Rest after it" unit="s" required bare />,
      },
      { head: "Power", cell: <NumberField at="power" label="Power" bare />, figure: true },
      minute,
    ]}
  />
);
