import { useState } from "react";
import type { AnaestheticTold } from "../../../../../ledger/anaesthetic-told.ts";
import { unusualSolution } from "../../../../../record/unusual-amounts.ts";
import { Button } from "../../../../parts/button.tsx";
import { leftInNumbers } from "../../../../parts/figures-in-words.ts";
import { AskedOnce } from "./asked-once.tsx";
import { type Asked, asksOf, confirmationFaults, confirmedOf } from "./confirmed-read.ts";
import { boundWords } from "./dose-ahead.ts";
import { quantity } from "./dose-in-words.ts";
import { type Injection, type Solution, solutionInWords } from "./read-injection.ts";
import type { StockOf } from "./stock-offered.ts";
import { useTyped } from "./use-entry.ts";
import { useStock } from "./use-stock.ts";
import { useVisit, type Visit } from "./use-visit.ts";

interface NextSolutionOptions {
  readonly told: AnaestheticTold["planned"];
  readonly entryId: string | undefined;
}

/** What would be given next, and how many whole cartridges of it are left before any limit. */
export function NextSolution({ told, entryId }: NextSolutionOptions) {
  const { visit, readOnly, record } = useVisit("Next solution");
  const stock = useStock("anaesthetic", visit);
  const next = visit.nextAnaesthetic;
  const solutions = solutionsToChoose(stock, visit);
  const look = (solution: Solution, said: Pick<Injection, "confirmed"> = {}) =>
    record({ ...visit, nextAnaesthetic: { ...solution, ...said } }, `${nameOf(solution)} looked at`);
  const [wanted, want] = useState<Solution>();
  const choose = (name: string) => {
    const solution = solutions.find((one) => nameOf(one) === name);
    if (solution === undefined) return;
    const isUnusual = unusualSolution(solution).length > 0;
    want(isUnusual ? solution : undefined);
    if (!isUnusual) look(solution);
  };
  const { nextAnaesthetic: _next, ...without } = visit;
  if (readOnly && next === undefined) return null;
  return (
    <div className="sum-next">
      <h3>Left to give</h3>
      {!readOnly && solutions.length > 0 && (
        <div className="entry-press">
          <label>
            <span className="field-label">Of which solution</span>{" "}
            <select
              className="field-select sum-select"
              value={nameShown(wanted ?? next)}
              onChange={({ target }) => choose(target.value)}
            >
              <option value="" disabled>
                choose one
              </option>
              {solutions.map((solution) => (
                <option key={nameOf(solution)}>{nameOf(solution)}</option>
              ))}
            </select>
          </label>
          {next && wanted === undefined && (
            <Button weight="bare" onClick={() => record(without, "none looked at")}>
              Look at none
            </Button>
          )}
        </div>
      )}
      {wanted && (
        <AskedOfSolution
          key={nameOf(wanted)}
          asked={{ amounts: unusualSolution(wanted) }}
          leave={() => want(undefined)}
          take={(said) => {
            look(wanted, said);
            want(undefined);
          }}
        />
      )}
      {told && next && (
        <p>
          <a className="sum-number sum-left" href={`#${entryId ?? ""}`}>
            {told.cartridgesLeft} whole
          </a>{" "}
          of {nameOf(next)}: {quantity(told.mg, "mg")}, bound by {boundWords(told.boundBy, next)}.{" "}
          <span className="quiet">
            {told.bounds
              .map(({ by, cartridges }) => `${boundWords(by, next)} leaves ${leftInNumbers(cartridges, 1)}`)
              .join("; ")}
            .
          </span>
        </p>
      )}
    </div>
  );
}

interface AskedOfSolutionOptions {
  readonly asked: Asked;
  readonly take: (said: Pick<Injection, "confirmed">) => void;
  readonly leave: () => void;
}

/** Who says that an unusual solution is as it is written, before anything is told of it. */
function AskedOfSolution({ asked, take, leave }: AskedOfSolutionOptions) {
  const fields = useTyped();
  const faults = confirmationFaults(fields.typed, asked);
  const press = () => (Object.keys(faults).length > 0 ? fields.sayAll() : take(confirmedOf(fields.typed, asked)));
  return (
    <>
      <AskedOnce asks={asksOf(asked)} entry={{ ...fields, faults }} />
      <div className="entry-press">
        <Button weight="look" onClick={press}>
          Look at it as it is
        </Button>
        <Button onClick={leave}>Leave it</Button>
      </div>
    </>
  );
}

const nameShown = (solution: Solution | undefined): string => (solution === undefined ? "" : nameOf(solution));
const nameOf = (solution: Solution): string => `${solutionInWords(solution)}, ${solution.cartridgeMl} ml`;

/** The clinic's solutions, and those that this visit was given or looks at; each once. */
function solutionsToChoose(stock: readonly StockOf<"anaesthetic">[], visit: Visit): readonly Solution[] {
  const all: readonly Solution[] = [
    ...stock.map(({ body }) => body.holds),
    ...visit.anaesthetic,
    ...(visit.nextAnaesthetic === undefined ? [] : [visit.nextAnaesthetic]),
  ];
  const each = new Map(all.map((one) => [nameOf(one), solutionAlone(one)]));
  return [...each.values()];
}

const solutionAlone = ({ agent, percent, vasoconstrictor, cartridgeMl }: Solution): Solution => ({
  ...{ agent, percent, cartridgeMl },
  ...(vasoconstrictor === undefined ? {} : { vasoconstrictor }),
});
