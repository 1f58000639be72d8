import { SelectField } from "../../parts/fields/choice-field.tsx";
import { useField } from "../../parts/fields/editing.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { Rows } from "../../parts/fields/rows.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { ChooseInstrument } from "./ask-instrument.tsx";
import { useCabinetNow } from "./cabinet-now.ts";
import { instrumentChoices } from "./item-names.ts";

/** Instruments in the order in which a canal usually meets them. */
export function SequencePage() {
  const { view } = useCabinetNow();
  return (
    <>
      <div className="fields">
        <TextField at="name" label="Name" />
      </div>
      <section className="form-part">
        <h3>Steps, in order</h3>
        <Rows
          at="steps"
          label="Steps"
          ordered
          start={() => ({})}
          nameOf={(_, index) => `step ${index + 1}`}
          columns={[
            {
              head: "Instrument",
              cell: <SelectField at="instrument" label="Instrument" words={instrumentChoices(view.items)} bare />,
              wide: true,
            },
            {
              head: "Short of the length by",
              unit: "mm",
              cell: (
                <NumberField
                  at="shortByMm"
                  label="Short of the working length by"
                  unit="mm"
                  digits={1}
                  bare
                  placeholder="0"
                />
              ),
              figure: true,
            },
            {
              head: "For",
              unit: "s",
              cell: <NumberField at="seconds" label="Time" unit="s" bare placeholder="usual" />,
              figure: true,
            },
          ]}
        />
        <AddStep />
        <p className="quiet">
          Alt and an arrow key move a step, as the arrows beside it do. A step goes to the working length unless it
          stays short of it; without a time of its own it takes the instrument's usual one.
        </p>
      </section>
    </>
  );
}

/** One more step, of the instrument that is chosen for it. */
function AddStep() {
  const steps = useField("steps", "Steps");
  const before: readonly unknown[] = Array.isArray(steps.value) ? steps.value : [];
  return (
    <ChooseInstrument
      label="The next step's instrument"
      add="Add a step"
      choose={(instrument) => steps.write([...before, { instrument }], "row added", "now")}
    />
  );
}
