import type { BodyOf } from "../../../../record/parts.ts";
import { wayChosen } from "../../../../record/way-chosen.ts";
import { wayWords } from "../../../../record/words/case-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { faultProps, Labelled } from "../../../parts/fields/labelled.tsx";
import { type EntriesOfChoice, withChoice } from "./ways-shown.ts";

/** The way that was chosen; choosing another notes in the same gesture what the ledger said when it was chosen. */
export function ChosenField({ stands }: { readonly stands: EntriesOfChoice }) {
  const field = useField("chosen", "Chosen");
  const whole = useField("", "Chosen");
  const plan = whole.value as BodyOf<"plan">;
  const isOpen = wayChosen(plan) === undefined;
  const choose = (way: string, word: string) =>
    whole.write(withChoice(plan, way as BodyOf<"plan">["chosen"], stands), word, "now");
  return (
    <Labelled field={field} label="Chosen">
      <select
        id={field.id}
        className="field-select"
        data-unset={isOpen}
        value={isOpen || typeof field.value !== "string" ? "" : field.value}
        disabled={field.readOnly}
        {...faultProps(field)}
        onChange={({ target }) => choose(target.value, target.selectedOptions[0]?.text ?? "")}
      >
        {isOpen && <option value="">not chosen yet</option>}
        {Object.entries<string>(wayWords).map(([value, word]) => (
          <option key={value} value={value}>
            {word}
          </option>
        ))}
      </select>
    </Labelled>
  );
}
