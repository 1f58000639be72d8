import { useId, useState } from "react";
import { stepAboutWords } from "../../../record/words/stock-words.ts";
import { holdPointWords } from "../../../record/words/visit-words.ts";
import { Button } from "../../parts/button.tsx";
import { SelectField } from "../../parts/fields/choice-field.tsx";
import { useField } from "../../parts/fields/editing.tsx";
import { Rows } from "../../parts/fields/rows.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { ChooseItem } from "./ask-instrument.tsx";
import { useCabinetNow } from "./cabinet-now.ts";
import { stockChoices } from "./stock-state.ts";

/** What the clinic wants of a kind of visit: its steps in order, and the materials that are offered first. */
export const TemplatePage = () => (
  <>
    <div className="fields">
      <TextField at="name" label="Name" />
      <TextField at="aim" label="Aim of such a visit" optional />
    </div>
    <section className="form-part">
      <h3>Steps, in order</h3>
      <Steps />
      <AddStep />
      <p className="quiet">
        Alt and an arrow key move a step, as the arrows beside it do. What a step is about opens what records it; at a
        hold point the supervisor looks. A visit takes a copy when it begins.
      </p>
    </section>
    <section className="form-part">
      <h3>Materials that are offered first, in order</h3>
      <Materials />
    </section>
  </>
);

const Steps = () => (
  <Rows
    at="steps"
    label="Steps"
    ordered
    start={() => undefined}
    nameOf={(_, index) => `step ${index + 1}`}
    columns={[
      { head: "Step", cell: <TextField at="says" label="Words" bare wraps />, wide: true },
      { head: "About", cell: <SelectField at="about" label="About" words={stepAboutWords} unset="not said" bare /> },
      {
        head: "Hold point",
        cell: <SelectField at="holdPoint" label="Hold point" words={holdPointWords} unset="none" bare />,
      },
    ]}
  />
);

/** One more step, in the clinic's words. */
function AddStep() {
  const steps = useField("steps", "Steps");
  const [says, write] = useState("");
  const id = useId();
  const before: readonly unknown[] = Array.isArray(steps.value) ? steps.value : [];
  const add = () => {
    if (says.trim() === "") return;
    steps.write([...before, { says: says.trim() }], `“${says.trim().slice(0, 60)}” added`, "now");
    write("");
  };
  return (
    <form
      className="cabinet-ways"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div className="cabinet-because">
        <label className="field-label" htmlFor={id}>
          The next step, in a few words
        </label>
        <input
          id={id}
          className="field-line"
          value={says}
          maxLength={300}
          onChange={({ target }) => write(target.value)}
        />
      </div>
      <Button type="submit" disabled={says.trim() === "" || before.length >= 60}>
        Add a step
      </Button>
    </form>
  );
}

function Materials() {
  const { view } = useCabinetNow();
  const field = useField("stock", "Materials");
  const named = Array.isArray(field.value) ? field.value.filter((one) => typeof one === "string") : [];
  const all = stockChoices(view.items);
  const left = stockChoices(view.items, named);
  const add = (id: string) => field.write([...named, id], `${all[id] ?? "a material"} added`, "now");
  if (Object.keys(all).length === 0)
    return (
      <p className="quiet">
        The cabinet holds no material yet; add one with <kbd>M</kbd>.
      </p>
    );
  return (
    <>
      <Rows
        at="stock"
        label="Materials that are offered first"
        ordered
        start={() => undefined}
        nameOf={(_, index) => `material ${index + 1}`}
        columns={[{ head: "Material", cell: <SelectField at="" label="Material" words={all} bare />, wide: true }]}
      />
      {Object.keys(left).length > 0 && (
        <ChooseItem label="The next material" add="Offer it too" choices={left} choose={add} />
      )}
    </>
  );
}
