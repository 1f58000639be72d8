import { expiredAsked, unusualDose } from "../../../../../record/unusual-amounts.ts";
import { solventWords } from "../../../../../record/words/visit-words.ts";
import { AskedOnce } from "./asked-once.tsx";
import { asksOf, confirmationFaults, confirmedOf } from "./confirmed-read.ts";
import type { DialogOptions } from "./dialog-options.ts";
import { AmountField, ChoiceOfEntry, WordsField } from "./entry-fields.tsx";
import { EntryShell } from "./entry-shell.tsx";
import { anotherOne } from "./offers.tsx";
import { doseTyped, readDose, solventInWords } from "./read-dose.ts";
import { useChoosing } from "./use-entry.ts";
import { minuteTyped, offerOf, useStock, usualFrom } from "./use-stock.ts";
import { useVisit } from "./use-visit.ts";

/** One dose of a solvent. */
export function SolventDialog({ close, atMin }: DialogOptions) {
  const { visit, record } = useVisit("Solvent noted");
  const stock = useStock("solvent", visit);
  const { chosen, setChosen, missed, fields, typed, unlessMissing } = useChoosing(() => ({
    atMin: minuteTyped(atMin),
  }));
  const item = stock.find(({ id }) => id === chosen);
  const read = readDose(typed);
  const asked = {
    amounts: [
      ...(read.row === undefined ? [] : unusualDose(read.row)),
      ...expiredAsked(item?.body.name ?? "", item?.body.expires, visit.on),
    ],
  };
  const entry = { ...fields, faults: { ...read.faults, ...confirmationFaults(typed, asked) } };
  const last = visit.solvent.at(-1);
  const choose = (id: string) => {
    if (id === chosen) return;
    setChosen(id);
    const holds = stock.find((one) => one.id === id)?.body.holds;
    fields.empty({ atMin: typed.atMin ?? "", ...doseTyped(holds) });
  };
  const repeat = () => {
    if (last === undefined) return;
    setChosen(stock.find(({ body }) => solventInWords(body.holds) === solventInWords(last))?.id ?? anotherOne);
    fields.empty({ ...doseTyped(last), atMin: typed.atMin ?? "" });
  };
  const save = () => {
    if (read.row === undefined) return;
    const row = { ...read.row, ...confirmedOf(typed, asked) };
    record({ ...visit, solvent: [...visit.solvent, row] }, `${solventInWords(row)} ${row.volumeMl} ml`);
    close();
  };
  const enter = () => unlessMissing(entry.faults, save);
  const isAsked = asksOf(asked).length > 0;
  return (
    <EntryShell
      {...{ close, chosen, choose, enter, missed, isAsked }}
      title="Solvent"
      label="Which solvent"
      offers={stock.map((one) => offerOf(one, volumeSays(one.body.holds.volumeMl), visit.on))}
      again={last && { says: `${solventInWords(last)} ${last.volumeMl} ml`, take: repeat }}
      records={isAsked ? "Record as it is" : "Record the dose"}
    >
      {chosen === anotherOne && <AnotherSolvent entry={entry} isOther={typed.solvent === "other"} />}
      <div className="fields">
        <AmountField
          {...{ entry, at: "volumeMl", label: "Volume", unit: "ml", step: 0.05 }}
          first={chosen !== anotherOne}
          from={usualFrom(item?.body.holds.volumeMl, typed.volumeMl)}
        />
        <AmountField {...{ entry, at: "atMin", label: "At minute", unit: "min" }} />
        <AmountField {...{ entry, at: "recoveredFraction", label: "Taken up again by suction, 0 to 1" }} />
      </div>
      <AskedOnce asks={asksOf(asked)} entry={entry} />
    </EntryShell>
  );
}

const volumeSays = (volumeMl: number | undefined): string => (volumeMl === undefined ? "" : `usually ${volumeMl} ml`);

interface AnotherSolventOptions {
  readonly entry: Parameters<typeof AmountField>[0]["entry"];
  readonly isOther: boolean;
}

const AnotherSolvent = ({ entry, isOther }: AnotherSolventOptions) => (
  <>
    <ChoiceOfEntry at="solvent" label="Solvent" entry={entry} words={solventWords} first />
    {isOther && (
      <div className="fields">
        <WordsField at="name" label="Its name" entry={entry} />
        <AmountField {...{ entry, at: "molarMassGMol", label: "Molar mass", unit: "g/mol" }} />
        <AmountField {...{ entry, at: "densityGMl", label: "Density", unit: "g/ml" }} />
        <AmountField {...{ entry, at: "vapourPressureKPa", label: "Vapour pressure in the room", unit: "kPa" }} />
        <p className="quiet">As its safety data sheet prints them. Without them no sum can be done of it.</p>
      </div>
    )}
  </>
);
