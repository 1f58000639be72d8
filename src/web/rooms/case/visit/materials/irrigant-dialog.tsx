import { useState } from "react";
import { expiredAsked, unusualIrrigant } from "../../../../../record/unusual-amounts.ts";
import { activatedWords, solutionWords } from "../../../../../record/words/visit-words.ts";
import { AskedOnce } from "./asked-once.tsx";
import { asksOf, confirmationFaults, confirmedOf } from "./confirmed-read.ts";
import type { DialogOptions } from "./dialog-options.ts";
import { AmountField, ChoiceOfEntry, WordsField } from "./entry-fields.tsx";
import { EntryShell } from "./entry-shell.tsx";
import { IrrigantLookedAt } from "./irrigant-looked-at.tsx";
import { NeedleOfEntry } from "./needle-of-entry.tsx";
import { anotherOne } from "./offers.tsx";
import { type Irrigant, irrigantInWords, irrigantTyped, needleTyped, readIrrigant } from "./read-irrigant.ts";
import { oneOf, type Typed } from "./read-typed.ts";
import type { StockOf } from "./stock-offered.ts";
import { type Entry, useChoosing } from "./use-entry.ts";
import { useIrrigantAhead } from "./use-irrigant-ahead.ts";
import { useOnceAnswered } from "./use-once-answered.ts";
import { minuteTyped, offerOf, useStock, usualFrom } from "./use-stock.ts";
import { useVisit } from "./use-visit.ts";

/** One irrigant: what it would meet is said the moment it is chosen, with the remedy, before it is recorded. */
export function IrrigantDialog({ close, atMin }: DialogOptions) {
  const stands = useVisit("Irrigant noted");
  const { visit, record } = stands;
  const stock = useStock("irrigant", visit);
  const { chosen, setChosen, missed, fields, typed, unlessMissing } = useChoosing(() => ({
    atMin: minuteTyped(atMin),
  }));
  const [rinsed, setRinsed] = useState<string>();
  const item = stock.find(({ id }) => id === chosen);
  const read = readIrrigant(typed);
  const ahead = useIrrigantAhead(stands, asFarAsTold(typed));
  const asked = {
    amounts: [
      ...(read.row === undefined ? [] : unusualIrrigant(read.row)),
      ...expiredAsked(item?.body.name ?? "", item?.body.expires, visit.on),
    ],
  };
  const faults = { ...read.faults, ...confirmationFaults(typed, asked) };
  const entry = { ...fields, faults };
  const needleBefore = visit.irrigation.findLast(({ needle }) => needle !== undefined)?.needle;
  const last = visit.irrigation.at(-1);
  const add = (row: Irrigant) =>
    record({ ...visit, irrigation: [...visit.irrigation, row] }, `${irrigantInWords(row)}, ${row.volumeMl} ml`);
  const save = () => {
    if (read.row === undefined) return;
    add({ ...read.row, ...confirmedOf(typed, asked) });
    close();
  };
  const enter = useOnceAnswered(typed, { waits: ahead?.waits ?? false }, () => unlessMissing(faults, save));
  const choose = (id: string) => {
    if (id === chosen) return;
    setChosen(id);
    const holds = stock.find((one) => one.id === id)?.body.holds;
    fields.empty({ ...irrigantTyped(holds), atMin: typed.atMin ?? "" });
  };
  const repeat = (row: Irrigant) => {
    setChosen(stock.find(({ body }) => irrigantInWords(body.holds) === irrigantInWords(row))?.id ?? anotherOne);
    fields.empty({ ...irrigantTyped(row), atMin: typed.atMin ?? "" });
  };
  const sameNeedle = () => fields.lay(needleTyped(needleBefore));
  const isAsked = asksOf(asked).length > 0;
  return (
    <EntryShell
      {...{ close, chosen, choose, missed, isAsked }}
      enter={enter.press}
      title="Irrigant"
      label="Which solution"
      offers={stock.map((one) => offerOf(one, stockSays(one), visit.on))}
      again={last && { says: rowSays(last), take: () => repeat(last) }}
      keys={needleBefore === undefined ? {} : { n: sameNeedle }}
      records={recordsOf(enter.isWaiting, isAsked, ahead?.clashes.length ?? 0)}
    >
      {chosen === anotherOne && <AnotherSolution entry={entry} />}
      <IrrigantLookedAt
        {...{ ahead, atMin, on: visit.on, rinsed }}
        rinses={stock.filter(({ body }) => isRinse(body.holds.solution))}
        rinse={(row) => {
          add(row);
          setRinsed(irrigantInWords(row));
        }}
      />
      <div className="fields">
        <AmountField
          {...{ entry, at: "volumeMl", label: "Volume", unit: "ml", step: 1 }}
          first={chosen !== anotherOne}
          from={usualFrom(item?.body.holds.volumeMl, typed.volumeMl)}
        />
        <AmountField
          {...{ entry, at: "minutes", label: "For", unit: "min", step: 1 }}
          from={usualFrom(item?.body.holds.minutes, typed.minutes)}
        />
        <AmountField {...{ entry, at: "atMin", label: "From minute", unit: "min" }} />
      </div>
      {(item?.body.holds.activated === undefined || faults.activated !== undefined) && (
        <ChoiceOfEntry at="activated" label="Activated" entry={entry} words={activatedWords} />
      )}
      <CanalsReached entry={entry} names={visit.canals.map(({ canal }) => canal)} />
      <NeedleOfEntry entry={entry} before={needleBefore} same={sameNeedle} />
      <AskedOnce asks={asksOf(asked)} entry={entry} />
    </EntryShell>
  );
}

function recordsOf(isWaiting: boolean, isAsked: boolean, clashes: number): string {
  if (isWaiting) return "Recorded as soon as the sum has answered";
  if (clashes > 0) return "Record although they meet";
  return isAsked ? "Record as it is" : "Record the irrigant";
}

/** What is known of the row the moment its solution is chosen: how much of it does not change what it meets. */
function asFarAsTold(typed: Typed): Irrigant | undefined {
  const solution = oneOf(solutionWords, typed.solution ?? "");
  if (solution === undefined) return undefined;
  const whole = readIrrigant({ ...typed, activated: typed.activated || "no" }).row;
  if (whole !== undefined) return whole;
  const { row } = readIrrigant({
    ...{ solution, activated: "no", volumeMl: "0", minutes: "0" },
    ...{ named: typed.named || "another solution", canal: typed.canal ?? "", atMin: typed.atMin ?? "" },
  });
  return row;
}

const isRinse = (solution: Irrigant["solution"]): boolean => solution === "sterile water" || solution === "saline";

const stockSays = ({ body: { name, holds } }: StockOf<"irrigant">): string =>
  [
    ...(name === irrigantInWords(holds) ? [] : [irrigantInWords(holds)]),
    ...(holds.volumeMl === undefined ? [] : [`usually ${holds.volumeMl} ml`]),
    ...(holds.minutes === undefined ? [] : [`${holds.minutes} min`]),
    ...(holds.activated === undefined ? [] : [activatedWords[holds.activated]]),
  ].join(", ");

const rowSays = (row: Irrigant): string => `${irrigantInWords(row)}, ${row.volumeMl} ml, ${row.minutes} min`;

const AnotherSolution = ({ entry }: { readonly entry: Entry }) => (
  <>
    <ChoiceOfEntry at="solution" label="Solution" entry={entry} words={solutionWords} first />
    <div className="fields">
      {entry.typed.solution === "other" && <WordsField at="named" label="What it is" entry={entry} />}
      <AmountField {...{ entry, at: "percent", label: "Strength", unit: "%" }} />
    </div>
  </>
);

/** One canal, or all that are open: then nothing is chosen. */
const CanalsReached = ({ entry, names }: { readonly entry: Entry; readonly names: readonly string[] }) =>
  names.length === 0 ? null : (
    <ChoiceOfEntry
      {...{ at: "canal", label: "In", entry }}
      words={{ "": "all that are open", ...Object.fromEntries(names.map((name) => [name, name])) }}
    />
  );
