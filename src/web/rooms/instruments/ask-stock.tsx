import { type FormEvent, useId, useState } from "react";
import type { Fault } from "../../../core/refusal.ts";
import { stockKindWords } from "../../../record/words/stock-words.ts";
import { Button } from "../../parts/button.tsx";
import { Dialog } from "../../parts/dialog.tsx";
import { DayField } from "../../parts/fields/day-field.tsx";
import { EditSheet } from "../../parts/fields/editing.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { placeOfFault, valueAt } from "../../record/body-path.ts";
import { useCabinetNow } from "./cabinet-now.ts";
import { stockOfDraft } from "./stock-draft.ts";
import { StockFields } from "./stock-fields.tsx";

const nothing: readonly Fault[] = [];
type Kind = keyof typeof stockKindWords;
const isKind = (value: unknown): value is Kind => typeof value === "string" && value in stockKindWords;

/** Asks what a new material is, its kind first; nothing is chosen before the person chooses it. */
export function AskStock() {
  const { asking, answerStock } = useCabinetNow();
  if (asking !== "stock") return null;
  return (
    <Dialog title="New material" close={() => answerStock(undefined)} wide>
      <NewStock />
    </Dialog>
  );
}

function NewStock() {
  const { answerStock } = useCabinetNow();
  const [draft, setDraft] = useState<unknown>({});
  const [isTried, setTried] = useState(false);
  const made = stockOfDraft(draft);
  const faults =
    isTried && "faults" in made ? made.faults.map(({ path, says }) => ({ path: placeOfFault(path), says })) : nothing;
  const kind = valueAt(draft, "holds.kind");
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if ("body" in made) return answerStock(made.body);
    setTried(true);
  };
  return (
    <form className="stock-new" noValidate onSubmit={submit}>
      <KindField kind={kind} choose={(one) => setDraft({ holds: { kind: one } })} />
      {isKind(kind) && (
        <EditSheet key={kind} body={draft} change={setDraft} faults={faults}>
          <StockFields kind={kind} isNew />
          <div className="fields">
            <TextField at="name" label="Own name, if it has one" placeholder="as by kind; no maker's name" optional />
            <TextField at="lot" label="Lot of the package in use" optional />
            <DayField at="expires" label="Expires" optional />
          </div>
        </EditSheet>
      )}
      <div className="cabinet-ways">
        <Button type="submit" weight="strong" disabled={!isKind(kind)}>
          Add the material
        </Button>
        {faults.length > 0 && (
          <span className="look" role="status">
            ◆ {faults.length === 1 ? "One field is" : `${faults.length} fields are`} still needed or can't be so.
          </span>
        )}
      </div>
    </form>
  );
}

interface KindFieldOptions {
  readonly kind: unknown;
  readonly choose: (kind: Kind) => void;
}

function KindField({ kind, choose }: KindFieldOptions) {
  const group = useId();
  return (
    <fieldset className="field">
      <legend className="field-label">Kind of material</legend>
      <div className="field-choices">
        {Object.entries(stockKindWords).map(([one, word]) => (
          <label key={one} className="field-choice">
            <input type="radio" name={group} checked={kind === one} onChange={() => isKind(one) && choose(one)} />
            <span>{word}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
