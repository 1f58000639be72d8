import {
  activatedWords,
  agentWords,
  medicamentWords,
  solutionWords,
  solventWords,
  vasoconstrictorWords,
} from "../../../../../record/words/visit-words.ts";
import { SelectField } from "../../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { Optional, Rows } from "../../../../parts/fields/rows.tsx";
import { TextField } from "../../../../parts/fields/text-field.tsx";
import { InstrumentsEntered } from "../../entry/instruments-entered.tsx";
import { rowName } from "../../forms/row-name.ts";

/** What was used, in the order in which it was used. */
export const Materials = () => (
  <>
    <section className="form-part">
      <h2>Irrigation, in order</h2>
      <Rows
        at="irrigation"
        label="Irrigation"
        add="Add an irrigant"
        start={() => ({ solution: "sodium hypochlorite", volumeMl: 5, minutes: 1, activated: "no" })}
        nameOf={(row, index) => rowName(row, "solution", `irrigant ${index + 1}`)}
        columns={[
          {
            head: "Irrigant",
            cell: <SelectField at="solution" label="Irrigant" words={solutionWords} bare />,
            wide: true,
          },
          {
            head: "Strength",
            unit: "%",
            cell: <NumberField at="percent" label="Strength" unit="%" bare />,
            figure: true,
          },
          {
            head: "Volume",
            unit: "ml",
            cell: <NumberField at="volumeMl" label="Volume" unit="ml" required bare />,
            figure: true,
          },
          {
            head: "For",
            unit: "min",
            cell: <NumberField at="minutes" label="Time" unit="min" required bare />,
            figure: true,
          },
          {
            head: "From",
            unit: "min",
            cell: <NumberField at="atMin" label="From minute" unit="min" bare />,
            figure: true,
          },
          { head: "Activated", cell: <SelectField at="activated" label="Activated" words={activatedWords} bare /> },
        ]}
      />
    </section>
    <InstrumentsEntered />
    <section className="form-part">
      <h2>Solvent</h2>
      <Rows
        at="solvent"
        label="Solvent"
        add="Add a dose of solvent"
        start={() => ({ solvent: "chloroform", volumeMl: 0.1, atMin: 0 })}
        nameOf={(row, index) => rowName(row, "solvent", `dose ${index + 1}`)}
        columns={[
          { head: "Solvent", cell: <SelectField at="solvent" label="Solvent" words={solventWords} bare />, wide: true },
          {
            head: "Volume",
            unit: "ml",
            cell: <NumberField at="volumeMl" label="Volume" unit="ml" required bare />,
            figure: true,
          },
          {
            head: "At",
            unit: "min",
            cell: <NumberField at="atMin" label="At minute" unit="min" required bare />,
            figure: true,
          },
          {
            head: "Taken up again",
            unit: "0 to 1",
            cell: <NumberField at="recoveredFraction" label="Taken up again" bare />,
            figure: true,
          },
        ]}
      />
    </section>
    <section className="form-part">
      <h2>Local anaesthetic</h2>
      <Rows
        at="anaesthetic"
        label="Local anaesthetic"
        add="Add an injection"
        start={() => ({ agent: "articaine", percent: 4, cartridgeMl: 1.7, cartridges: 1 })}
        nameOf={(row, index) => rowName(row, "agent", `injection ${index + 1}`)}
        columns={[
          { head: "Agent", cell: <SelectField at="agent" label="Agent" words={agentWords} bare /> },
          {
            head: "Strength",
            unit: "%",
            cell: <NumberField at="percent" label="Strength" unit="%" required bare />,
            figure: true,
          },
          { head: "With, one to", cell: <Vasoconstrictor /> },
          { head: "Cartridges", cell: <NumberField at="cartridges" label="Cartridges" required bare />, figure: true },
          {
            head: "each",
            unit: "ml",
            cell: <NumberField at="cartridgeMl" label="Volume of one" unit="ml" required bare />,
            figure: true,
          },
          { head: "At", unit: "min", cell: <NumberField at="atMin" label="At minute" unit="min" bare />, figure: true },
          { head: "Technique", cell: <TextField at="technique" label="Technique" optional wraps bare />, wide: true },
        ]}
      />
    </section>
    <LeftInTheTooth />
  </>
);

const LeftInTheTooth = () => (
  <section className="form-part">
    <h2>Left in the tooth</h2>
    <div className="fields">
      <Optional
        at="medicament"
        label="medicament"
        add="A medicament was left"
        start={() => ({ kind: "calciumHydroxide" })}
      >
        <SelectField at="kind" label="Medicament" words={medicamentWords} />
        <TextField at="detail" label="Detail" optional wraps />
      </Optional>
    </div>
    <div className="fields">
      <Optional
        at="temporary"
        label="temporary filling"
        add="A temporary filling was placed"
        start={() => ({ material: "" })}
      >
        <TextField at="material" label="Temporary filling" wraps />
        <NumberField at="thicknessMm" label="Thickness" unit="mm" />
      </Optional>
    </div>
    <div className="fields">
      <TextField at="orificeBarrier" label="Barrier at the orifice" optional wraps />
      <TextField at="buildUp" label="Build-up" optional wraps />
    </div>
  </section>
);

const Vasoconstrictor = () => (
  <div className="cell-pair">
    <SelectField at="vasoconstrictor.name" label="Vasoconstrictor" words={vasoconstrictorWords} unset="none" bare />
    <NumberField at="vasoconstrictor.ratio" label="One to" bare />
  </div>
);
