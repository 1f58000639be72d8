import { AskedOnce } from "./asked-once.tsx";
import { asksOf, confirmationFaults } from "./confirmed-read.ts";
import type { DialogOptions } from "./dialog-options.ts";
import { AmountField, WordsField } from "./entry-fields.tsx";
import { EntryShell } from "./entry-shell.tsx";
import { LotFields } from "./lot-fields.tsx";
import { askedOfLot, lotTyped, withPackage } from "./lots-of.ts";
import { anotherOne } from "./offers.tsx";
import { readAmounts } from "./read-typed.ts";
import { useChoosing } from "./use-entry.ts";
import { offerOf, useStock } from "./use-stock.ts";
import { useVisit } from "./use-visit.ts";

const thickness = {
  ...{ at: "thicknessMm", unit: "mm", low: 0, high: 10 },
  mistaken: (value: number) => (value === 0 ? "0 mm are no filling" : undefined),
};

/** The filling that closes the tooth until the next visit, and how thick it is. */
export function TemporaryDialog({ close, atMin }: DialogOptions) {
  const { visit, record } = useVisit("Temporary filling noted");
  const stock = useStock("temporary", visit);
  const { chosen, setChosen, missed, fields, typed, unlessMissing } = useChoosing();
  const material = (typed.material ?? "").trim();
  const asked = { amounts: askedOfLot(material, typed, visit.on) };
  const read = readAmounts(typed, [thickness]);
  const faults = {
    ...read.faults,
    ...(material === "" ? { material: "what is it made of?" } : {}),
    ...confirmationFaults(typed, asked),
  };
  const entry = { ...fields, faults };
  const choose = (id: string) => {
    if (id === chosen) return;
    setChosen(id);
    const item = stock.find((one) => one.id === id);
    fields.empty({
      ...{ material: item?.body.holds.material ?? "", thicknessMm: typed.thicknessMm ?? "" },
      ...lotTyped(item),
    });
  };
  const save = () => {
    const { thicknessMm } = read.values;
    const temporary = { material, ...(thicknessMm === undefined ? {} : { thicknessMm }) };
    const used = { material, typed, asked: asked.amounts, atMin };
    const { next, expired } = withPackage({ ...visit, temporary }, used);
    const says = [material, ...(thicknessMm === undefined ? [] : [`${thicknessMm} mm`])].join(", ");
    record(next, `${says}${expired}`);
    close();
  };
  const enter = () => unlessMissing(faults, save);
  return (
    <EntryShell
      {...{ close, chosen, choose, enter, missed }}
      title="Temporary filling"
      label="Which material"
      offers={stock.map((one) => offerOf(one, one.body.holds.material, visit.on))}
      isAsked={asked.amounts.length > 0}
      records={asked.amounts.length > 0 ? "Record although expired" : "Record the filling"}
    >
      {visit.temporary && (
        <p className="entry-told">Takes the place of what is noted now: {visit.temporary.material}.</p>
      )}
      <div className="fields">
        {chosen === anotherOne && <WordsField at="material" label="Material, by kind" entry={entry} first />}
        <AmountField
          {...{ entry, at: "thicknessMm", label: "Thickness", unit: "mm", step: 0.5 }}
          first={chosen !== anotherOne}
        />
        <LotFields entry={entry} />
      </div>
      <AskedOnce asks={asksOf(asked)} entry={entry} />
    </EntryShell>
  );
}
