import { irrigationTaken } from "../../../ledger/clinic-offered.ts";
import { sourceName } from "../../../pages/source-name.ts";
import { solutionWords } from "../../../record/words/visit-words.ts";
import { SelectField } from "../../parts/fields/choice-field.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { Rows } from "../../parts/fields/rows.tsx";

const { rinse, openEndedMm, sideVentedMm, flowMlPerMin } = irrigationTaken;
const { other: _other, ...solutions } = solutionWords;

/** Least rinse, distances and flow of needles, contact times. */
export const IrrigationFields = () => (
  <>
    <div className="settings-figure settings-pair">
      <div className="fields">
        <NumberField at="irrigation.rinse.volumeMl" label="Least rinse between two solutions" unit="ml" />
        <NumberField at="irrigation.rinse.minutes" label="over" unit="min" />
      </div>
      <Taken>
        {rinse.volumeMl} ml over {rinse.minutes} min, common practice
      </Taken>
    </div>
    <div className="settings-figure">
      <NumberField at="irrigation.openEndedMm" label="Open needle: least distance from its stop" unit="mm" />
      <Taken>
        {openEndedMm.value} mm ({sourceName(openEndedMm.source)})
      </Taken>
    </div>
    <div className="settings-figure">
      <NumberField at="irrigation.sideVentedMm" label="Closed, side-vented needle: the same" unit="mm" />
      <Taken>{sideVentedMm.value} mm, common practice</Taken>
    </div>
    <div className="settings-figure">
      <NumberField at="irrigation.flowMlPerMin" label="Flow that is not to be passed" unit="ml/min" />
      <Taken>
        {flowMlPerMin.value} ml/min ({sourceName(flowMlPerMin.source)})
      </Taken>
    </div>
    <div className="form-part">
      <h3>Contact and volumes that the clinic wants</h3>
      <Rows
        at="irrigation.protocol"
        label="Contact and volumes that the clinic wants"
        add="Add a solution"
        start={() => ({})}
        nameOf={(_, index) => `solution ${index + 1}`}
        columns={[
          {
            head: "Solution",
            cell: <SelectField at="solution" label="Solution" words={solutions} unset="not said" bare />,
            wide: true,
          },
          {
            head: "At least",
            unit: "min",
            cell: <NumberField at="minutesAtLeast" label="At least" unit="min" bare />,
            figure: true,
          },
          {
            head: "At most",
            unit: "min",
            cell: <NumberField at="minutesAtMost" label="At most" unit="min" bare />,
            figure: true,
          },
          {
            head: "At least",
            unit: "ml",
            cell: <NumberField at="volumeMlAtLeast" label="Volume at least" unit="ml" bare />,
            figure: true,
          },
        ]}
      />
      <p className="quiet">Without a row nothing is held against a contact time but the cautions of the method.</p>
    </div>
  </>
);

const Taken = ({ children }: { readonly children: React.ReactNode }) => (
  <p className="quiet">Where it stays empty: {children}.</p>
);
