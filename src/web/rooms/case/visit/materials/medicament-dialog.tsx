import { medicamentWords } from "../../../../../record/words/visit-words.ts";
import { AskedOnce } from "./asked-once.tsx";
import { asksOf, confirmationFaults } from "./confirmed-read.ts";
import type { DialogOptions } from "./dialog-options.ts";
import { ChoiceOfEntry, DayOfEntry, WordsField } from "./entry-fields.tsx";
import { EntryShell } from "./entry-shell.tsx";
import { LotFields } from "./lot-fields.tsx";
import { askedOfLot, lotTyped, withPackage } from "./lots-of.ts";
import { anotherOne } from "./offers.tsx";
import { oneOf } from "./read-typed.ts";
import { useChoosing } from "./use-entry.ts";
import { offerOf, useStock } from "./use-stock.ts";
import { useVisit } from "./use-visit.ts";

/** What is left in the canals until the next visit, and by when it is to come out. */
export function MedicamentDialog({ close, atMin }: DialogOptions) {
  const { visit, record } = useVisit("Medicament noted");
  const stock = useStock("medicament", visit);
  const { chosen, setChosen, missed, fields, typed, unlessMissing } = useChoosing();
  const kind = oneOf(medicamentWords, typed.kind ?? "");
  const detail = (typed.detail ?? "").trim();
  const name = detail !== "" ? detail : kind === undefined ? "" : medicamentWords[kind];
  const asked = { amounts: askedOfLot(name, typed, visit.on) };
  const faults = {
    ...(kind === undefined ? { kind: "which medicament?" } : {}),
    ...(typed.changeBy !== undefined && typed.changeBy !== "" && typed.changeBy < visit.on
      ? { changeBy: "lies before this visit" }
      : {}),
    ...confirmationFaults(typed, asked),
  };
  const entry = { ...fields, faults };
  const choose = (id: string) => {
    if (id === chosen) return;
    setChosen(id);
    const item = stock.find((one) => one.id === id);
    const { medicament = "", detail: more = "" } = item?.body.holds ?? {};
    fields.empty({ kind: medicament, detail: more, changeBy: typed.changeBy ?? "", ...lotTyped(item) });
  };
  const save = () => {
    if (kind === undefined) return;
    const { changeBy = "" } = typed;
    const medicament = { kind, ...(detail === "" ? {} : { detail }), ...(changeBy === "" ? {} : { changeBy }) };
    const used = { material: name, typed, asked: asked.amounts, atMin };
    const { next, expired } = withPackage({ ...visit, medicament }, used);
    record(next, `${name}${expired}`);
    close();
  };
  const enter = () => unlessMissing(faults, save);
  return (
    <EntryShell
      {...{ close, chosen, choose, enter, missed }}
      title="Medicament"
      label="Which one is left in the canals"
      offers={stock.map((one) => offerOf(one, medicamentWords[one.body.holds.medicament], visit.on))}
      isAsked={asked.amounts.length > 0}
      records={asked.amounts.length > 0 ? "Record although expired" : "Record the medicament"}
    >
      {visit.medicament && (
        <p className="entry-told">
          Takes the place of what is noted now:{" "}
          {[medicamentWords[visit.medicament.kind], visit.medicament.detail].filter(Boolean).join(", ")}.
        </p>
      )}
      {chosen === anotherOne && <ChoiceOfEntry at="kind" label="Kind" entry={entry} words={medicamentWords} first />}
      <div className="fields">
        {chosen === anotherOne && <WordsField at="detail" label="Detail, by kind" entry={entry} />}
        <DayOfEntry at="changeBy" label="Out, or changed, by" entry={entry} />
        <LotFields entry={entry} />
      </div>
      <AskedOnce asks={asksOf(asked)} entry={entry} />
    </EntryShell>
  );
}
