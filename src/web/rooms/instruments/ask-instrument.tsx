import { useId, useState } from "react";
import { cabinetKindWords } from "../../../record/words/cabinet-words.ts";
import { Button } from "../../parts/button.tsx";
import { Dialog } from "../../parts/dialog.tsx";
import { useCabinetNow } from "./cabinet-now.ts";
import { instrumentChoices } from "./item-names.ts";

interface ChooseItemOptions {
  readonly label: string;
  /** The words of the button. */
  readonly add: string;
  /** What can be chosen: name by id. */
  readonly choices: Readonly<Record<string, string>>;
  readonly choose: (item: string) => void;
}

/** An instrument of the cabinet, none before the person chooses one; the button takes it. */
export function ChooseInstrument(options: Omit<ChooseItemOptions, "choices">) {
  const { view } = useCabinetNow();
  return <ChooseItem {...options} choices={instrumentChoices(view.items)} />;
}

/** An item of the cabinet, none before the person chooses one; the button takes it. */
export function ChooseItem({ label, add, choices, choose }: ChooseItemOptions) {
  const [chosen, set] = useState("");
  const id = useId();
  return (
    <form
      className="cabinet-ways"
      onSubmit={(event) => {
        event.preventDefault();
        if (chosen === "") return;
        choose(chosen);
        set("");
      }}
    >
      <div className="field">
        <label className="field-label" htmlFor={id}>
          {label}
        </label>
        <select id={id} className="field-select" value={chosen} onChange={({ target }) => set(target.value)}>
          <option value="">not chosen yet</option>
          {Object.entries(choices).map(([one, name]) => (
            <option key={one} value={one}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <Button type="submit" disabled={chosen === ""}>
        {add}
      </Button>
    </form>
  );
}

/** Asks which instrument a new file or sequence is of, where none is looked at. */
export function AskInstrument() {
  const { asking, answer } = useCabinetNow();
  if (asking === undefined || asking === "stock") return null;
  const kind = cabinetKindWords[asking].toLowerCase();
  return (
    <Dialog title={`New ${kind}`} close={() => answer(undefined)}>
      <ChooseInstrument
        label={asking === "file" ? "Which instrument it is of" : "Which instrument goes first"}
        add={`Add the ${kind}`}
        choose={answer}
      />
    </Dialog>
  );
}
