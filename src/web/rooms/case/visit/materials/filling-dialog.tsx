import { useState } from "react";
import { AskedOnce } from "./asked-once.tsx";
import { asksOf, confirmationFaults } from "./confirmed-read.ts";
import type { DialogOptions } from "./dialog-options.ts";
import { ChoiceOfEntry, WordsField } from "./entry-fields.tsx";
import { EntryShell } from "./entry-shell.tsx";
import { LotFields } from "./lot-fields.tsx";
import { askedOfLot, lotTyped, withPackage } from "./lots-of.ts";
import { anotherOne } from "./offers.tsx";
import { oneOf } from "./read-typed.ts";
import { useChoosing } from "./use-entry.ts";
import { offerOf, useStock } from "./use-stock.ts";
import { useVisit } from "./use-visit.ts";
import { fillingAsWords, withFilling } from "./with-filling.ts";

/** What stays in the tooth, where, and of which lot. */
export function FillingDialog({ close, atMin }: DialogOptions) {
  const { visit, record } = useVisit("Material noted");
  const stock = useStock("filling", visit);
  const [canals, setCanals] = useState<readonly string[]>([]);
  const { chosen, setChosen, missed, fields, typed, unlessMissing } = useChoosing();
  const material = (typed.material ?? "").trim();
  const as = oneOf(fillingAsWords, typed.as ?? "");
  const asked = { amounts: askedOfLot(material, typed, visit.on) };
  const inCanals = (as === "core" || as === "sealer") && visit.canals.length > 0;
  const faults = {
    ...(material === "" ? { material: "what is it made of?" } : {}),
    ...(as === undefined ? { as: "what is it there for?" } : {}),
    ...confirmationFaults(typed, asked),
  };
  const entry = { ...fields, faults };
  const choose = (id: string) => {
    if (id === chosen) return;
    setChosen(id);
    const item = stock.find((one) => one.id === id);
    fields.empty({ material: item?.body.holds.material ?? "", as: item?.body.holds.as ?? "", ...lotTyped(item) });
  };
  const save = () => {
    if (as === undefined) return;
    const used = { material, typed, asked: asked.amounts, atMin };
    const { next, expired } = withPackage(withFilling(visit, material, as, canals), used);
    const where = inCanals && canals.length > 0 ? `, ${canals.join(" ")}` : "";
    record(next, `${material} as ${fillingAsWords[as]}${where}${expired}`);
    close();
  };
  const enter = () => unlessMissing(faults, save);
  return (
    <EntryShell
      {...{ close, chosen, choose, enter, missed }}
      title="What stays in the tooth"
      label="Which material"
      offers={stock.map((one) => offerOf(one, fillingAsWords[one.body.holds.as], visit.on))}
      isAsked={asked.amounts.length > 0}
      records={asked.amounts.length > 0 ? "Record although expired" : "Record the material"}
    >
      {chosen === anotherOne && (
        <>
          <div className="fields">
            <WordsField at="material" label="Material, by kind" entry={entry} first />
          </div>
          <ChoiceOfEntry at="as" label="As" entry={entry} words={fillingAsWords} />
        </>
      )}
      {inCanals && <CanalsFilled names={visit.canals.map(({ canal }) => canal)} chosen={canals} choose={setCanals} />}
      <div className="fields">
        <LotFields entry={entry} />
      </div>
      <AskedOnce asks={asksOf(asked)} entry={entry} />
    </EntryShell>
  );
}

interface CanalsFilledOptions {
  readonly names: readonly string[];
  readonly chosen: readonly string[];
  readonly choose: (names: readonly string[]) => void;
}

/** In which canals it lies; none is taken for granted. */
const CanalsFilled = ({ names, chosen, choose }: CanalsFilledOptions) => (
  <fieldset className="entry-choice">
    <legend className="field-label">In which canals</legend>
    <div className="entry-targets">
      {names.map((name, index) => (
        <label key={name} className="entry-target">
          <input
            type="checkbox"
            checked={chosen.includes(name)}
            data-entry-first={index === 0 || undefined}
            onChange={({ target }) => choose(target.checked ? [...chosen, name] : chosen.filter((one) => one !== name))}
          />
          <span>
            <span aria-hidden="true">{chosen.includes(name) ? "✓" : "○"}</span> {name}
          </span>
        </label>
      ))}
    </div>
  </fieldset>
);
