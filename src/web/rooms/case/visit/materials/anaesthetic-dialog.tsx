import { useEffect } from "react";
import { expiredAsked, unusualInjection } from "../../../../../record/unusual-amounts.ts";
import { agentWords, vasoconstrictorWords } from "../../../../../record/words/visit-words.ts";
import { AskedOnce } from "./asked-once.tsx";
import { type Asked, asksOf, confirmationFaults, confirmedOf } from "./confirmed-read.ts";
import type { DialogOptions } from "./dialog-options.ts";
import { type DoseAhead, leftInWords, useDoseAhead, useSolutionsLeft } from "./dose-ahead.ts";
import { DoseLookedAt } from "./dose-looked-at.tsx";
import { AmountField, ChoiceOfEntry, WordsField } from "./entry-fields.tsx";
import { EntryShell } from "./entry-shell.tsx";
import { anotherOne } from "./offers.tsx";
import {
  cartridgesInWords,
  type Injection,
  plain,
  readInjection,
  readSolution,
  type Solution,
  solutionInWords,
  solutionTyped,
} from "./read-injection.ts";
import { asTyped } from "./read-typed.ts";
import type { StockOf } from "./stock-offered.ts";
import { type Entry, useChoosing } from "./use-entry.ts";
import { useOnceAnswered } from "./use-once-answered.ts";
import { minuteTyped, offerOf, useStock } from "./use-stock.ts";
import { useVisit } from "./use-visit.ts";

/** One injection: the sum is asked what it would come to before it is recorded, and over a limit who says so. */
export function AnaestheticDialog({ close, atMin }: DialogOptions) {
  const stands = useVisit("Injection noted");
  const { visit, record } = stands;
  const stock = useStock("anaesthetic", visit);
  const { chosen, setChosen, missed, fields, typed, unlessMissing } = useChoosing(() => ({
    atMin: minuteTyped(atMin),
  }));
  const item = stock.find(({ id }) => id === chosen);
  const read = readInjection(typed);
  const ahead = useDoseAhead(stands, read.row);
  const asked = askedOf(read.row, ahead, expiredAsked(item?.body.name ?? "", item?.body.expires, visit.on));
  useAnswerToItsQuestion(asksOf(asked), () => fields.lay({ confirmedBy: "", because: "" }));
  const faults = { ...read.faults, ...confirmationFaults(typed, asked) };
  const entry = { ...fields, faults };
  const save = () => {
    if (read.row === undefined || ahead === undefined) return;
    const row = { ...read.row, ...confirmedOf(typed, asked) };
    record({ ...visit, anaesthetic: [...visit.anaesthetic, row] }, saysOf(row, asked, ahead));
    close();
  };
  const answering = { waits: ahead?.waits ?? false, isUnanswered: ahead?.why !== undefined };
  const enter = useOnceAnswered(typed, answering, () => unlessMissing(faults, save));
  const choose = (id: string) => {
    if (id === chosen) return;
    setChosen(id);
    const holds = stock.find((one) => one.id === id)?.body.holds;
    fields.empty({ ...(holds === undefined ? {} : solutionTyped(holds)), atMin: typed.atMin ?? "" });
  };
  const last = visit.anaesthetic.at(-1);
  const repeat = (row: Injection) => {
    setChosen(stock.find(({ body }) => isSame(body.holds, row))?.id ?? anotherOne);
    fields.empty({ ...solutionTyped(row), cartridges: asTyped(row.cartridges), atMin: typed.atMin ?? "" });
  };
  return (
    <EntryShell
      {...{ close, chosen, choose, missed }}
      enter={enter.press}
      title="Injection"
      label="Which solution; whole cartridges left before any limit"
      offers={useOffers(stands, stock)}
      again={
        last && { says: `${solutionInWords(last)}, ${cartridgesInWords(last.cartridges)}`, take: () => repeat(last) }
      }
      isAsked={asksOf(asked).length > 0 || ahead?.why !== undefined}
      records={enter.isWaiting ? "Recorded as soon as the sum has answered" : recordsOf(asked, ahead)}
    >
      {chosen === anotherOne && <AnotherSolution entry={entry} />}
      <div className="fields">
        <AmountField {...{ entry, at: "cartridges", label: "Cartridges", step: 1 }} first={chosen !== anotherOne} />
        <AmountField {...{ entry, at: "atMin", label: "At minute", unit: "min" }} />
        <WordsField at="technique" label="Technique and place" entry={entry} />
      </div>
      <DoseLookedAt ahead={ahead} solution={readSolution(typed).row} />
      <AskedOnce asks={asksOf(asked)} isOver={(asked.limits ?? []).length > 0} entry={entry} />
    </EntryShell>
  );
}

/** Everything that is asked of an injection: limits by the sum, amounts by the record, the package by its day. */
function askedOf(row: Injection | undefined, ahead: DoseAhead | undefined, expired: Asked["amounts"]): Asked {
  return {
    amounts: [...(row === undefined ? [] : unusualInjection(row)), ...unusualMass(ahead?.why), ...expired],
    limits: ahead?.limits ?? [],
  };
}

/** A mass that the sum takes once a person stands by it; the answer goes with the injection. */
function unusualMass(why: string | undefined): Asked["amounts"] {
  const [, says] = /bodyMassKg: (.*?)(?:: [^:]*)? confirm bodyMassKg if it is so/.exec(why ?? "") ?? [];
  return says === undefined ? [] : [{ at: "bodyMassKg", says: `${says}: is it so?`, unusual: "bodyMassKg" }];
}

function recordsOf({ amounts, limits = [] }: Asked, ahead: DoseAhead | undefined): string {
  if (limits.length > 0) return "Record over the limit";
  if (ahead?.why !== undefined) return "Record; the limit is not looked at";
  return amounts.length > 0 ? "Record as it is" : "Record the injection";
}

function saysOf(row: Injection, { limits = [] }: Asked, ahead: DoseAhead): string {
  const says = `${solutionInWords(row)}, ${cartridgesInWords(row.cartridges)}`;
  if (limits.length > 0) return `${says}, over the limit, confirmed by ${row.confirmed?.by}`;
  return ahead.why === undefined ? says : `${says}, limit not looked at`;
}

const isSame = (one: Solution, other: Solution): boolean =>
  solutionInWords(one) === solutionInWords(other) && one.cartridgeMl === other.cartridgeMl;

/** The clinic's solutions, each with what is left of it before any limit. */
function useOffers(stands: ReturnType<typeof useVisit>, stock: readonly StockOf<"anaesthetic">[]) {
  const solutions = stock.slice(0, 9).map(({ body: { holds } }): Solution => {
    const { kind: _kind, ...solution } = holds;
    return solution;
  });
  const left = useSolutionsLeft(stands, solutions);
  return stock.map((item, place) => {
    const [planned, solution] = [left[place], solutions[place]];
    const told = planned === undefined || solution === undefined ? [] : [leftInWords(planned, solution)];
    const offer = offerOf(item, [`${item.body.holds.cartridgeMl} ml`, ...told].join("; "), stands.visit.on);
    return planned?.cartridgesLeft === 0 ? { ...offer, look: offer.look ?? "no whole one before a limit" } : offer;
  });
}

/** An answer belongs to what was asked: another question is answered anew. */
function useAnswerToItsQuestion(asks: readonly string[], forget: () => void): void {
  const question = asks.join("\n");
  // biome-ignore lint/correctness/useExhaustiveDependencies: the answer goes when the question is another, and only then
  useEffect(forget, [question]);
}

const vasoconstrictors = { [plain]: "none, plain", ...vasoconstrictorWords };

const AnotherSolution = ({ entry }: { readonly entry: Entry }) => (
  <>
    <ChoiceOfEntry at="agent" label="Agent" entry={entry} words={agentWords} first />
    <ChoiceOfEntry at="vasoconstrictor" label="Vasoconstrictor" entry={entry} words={vasoconstrictors} />
    <div className="fields">
      <AmountField {...{ entry, at: "percent", label: "Strength", unit: "%" }} />
      {entry.typed.vasoconstrictor === "felypressin" ? (
        <AmountField {...{ entry, at: "iuPerMl", label: "Felypressin", unit: "IU/ml" }} />
      ) : (
        (entry.typed.vasoconstrictor ?? plain) !== plain && (
          <AmountField {...{ entry, at: "ratio", label: "Vasoconstrictor, one to" }} />
        )
      )}
      <AmountField {...{ entry, at: "cartridgeMl", label: "Volume of a cartridge", unit: "ml" }} />
    </div>
  </>
);
