import { useId, useState } from "react";
import { Button } from "../../../../parts/button.tsx";
import { refusalInWords, sentenceInWords } from "../../../../words/value-words.ts";
import { ClashTold } from "./clash-told.tsx";
import { AmountField, ChoiceOfEntry } from "./entry-fields.tsx";
import { type Irrigant, irrigantInWords, irrigantTyped, readIrrigant } from "./read-irrigant.ts";
import type { Typed } from "./read-typed.ts";
import type { StockOf } from "./stock-offered.ts";
import { useTyped } from "./use-entry.ts";
import type { IrrigantAhead } from "./use-irrigant-ahead.ts";
import { minuteTyped } from "./use-stock.ts";

interface IrrigantLookedAtOptions {
  readonly ahead: IrrigantAhead | undefined;
  readonly rinses: readonly StockOf<"irrigant">[];
  readonly rinsed: string | undefined;
  readonly rinse: (row: Irrigant) => void;
  readonly atMin: number | undefined;
}

/** What the chosen irrigant would meet, before it is recorded; a rinse between can be recorded first. */
export function IrrigantLookedAt({ ahead, rinses, rinsed, rinse, atMin }: IrrigantLookedAtOptions) {
  if (ahead === undefined) return null;
  const { waits, why, clashes, cautions } = ahead;
  return (
    <>
      {clashes.length > 0 && (
        <section className="entry-asked" role="alert" aria-label="They must not meet">
          {clashes.map((clash) => (
            <ClashTold key={clash.first + clash.what} clash={clash} />
          ))}
          <RinseBetween {...{ rinses, rinse, atMin }} wanted={ahead.rinse} />
        </section>
      )}
      <div className="irrigant-told" role="status">
        {waits && <p className="quiet">Asking what it meets</p>}
        {why !== undefined && (
          <p className="entry-told" data-look>
            <strong>▲ What it meets is not looked at.</strong> {refusalInWords(why)}
          </p>
        )}
        {rinsed !== undefined && <p className="quiet">Rinse recorded first: {rinsed}.</p>}
        {!waits && why === undefined && clashes.length === 0 && (
          <p className="quiet">○ Nothing that is known of it speaks against it after what came before.</p>
        )}
        {cautions.map((caution) => (
          <p key={caution} className="quiet">
            ◇ {sentenceInWords(caution)}
          </p>
        ))}
      </div>
    </>
  );
}

interface RinseBetweenOptions extends Pick<IrrigantLookedAtOptions, "rinses" | "rinse" | "atMin"> {
  readonly wanted: IrrigantAhead["rinse"];
}

const rinseWords = { "sterile water": "sterile water", saline: "saline" };

/** A rinse that is recorded before the second solution; how much of it is the person's to say. */
function RinseBetween({ rinses, rinse, atMin, wanted }: RinseBetweenOptions) {
  const heading = useId();
  const [open, setOpen] = useState(false);
  const fields = useTyped(() => rinseTyped(rinses, atMin));
  const read = readIrrigant(fields.typed);
  const entry = { ...fields, faults: read.faults };
  const save = () => (read.row === undefined ? fields.sayAll() : rinse(read.row));
  if (!open)
    return (
      <div className="entry-press">
        <Button onClick={() => setOpen(true)}>Rinse between, first</Button>
        {wanted && (
          <span className="quiet">
            A rinse keeps them apart from {wanted.volumeMl} ml over {wanted.minutes} min on.
          </span>
        )}
      </div>
    );
  return (
    <fieldset className="entry-choice" aria-labelledby={heading}>
      <legend id={heading} className="field-label">
        Rinse between
      </legend>
      <ChoiceOfEntry at="solution" label="With" entry={entry} words={rinseWords} first />
      <div className="fields">
        <AmountField {...{ entry, at: "volumeMl", label: "Rinse, volume", unit: "ml", step: 1 }} />
        <AmountField {...{ entry, at: "minutes", label: "Rinse, for", unit: "min", step: 1 }} />
      </div>
      <Button onClick={save}>
        {read.row === undefined ? "Record the rinse" : `Record the rinse: ${irrigantInWords(read.row)}`}
      </Button>
    </fieldset>
  );
}

/** A rinse of the clinic's own stock with the amounts that the clinic entered; else all of it is left to be said. */
function rinseTyped(rinses: readonly StockOf<"irrigant">[], atMin: number | undefined): Typed {
  const [first] = rinses;
  const own = first === undefined ? {} : irrigantTyped({ ...first.body.holds, percent: undefined });
  return { ...own, activated: "no", atMin: minuteTyped(atMin) };
}
