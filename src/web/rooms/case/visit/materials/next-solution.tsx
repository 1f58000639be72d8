import type { AnaestheticTold } from "../../../../../ledger/anaesthetic-told.ts";
import { Button } from "../../../../parts/button.tsx";
import { boundWords } from "./dose-ahead.ts";
import { quantity } from "./dose-in-words.ts";
import { type Solution, solutionInWords } from "./read-injection.ts";
import type { StockOf } from "./stock-offered.ts";
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
  const choose = (name: string) => {
    const solution = solutions.find((one) => nameOf(one) === name);
    if (solution !== undefined) record({ ...visit, nextAnaesthetic: { ...solution } }, `${nameOf(solution)} looked at`);
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
              value={next === undefined ? "" : nameOf(next)}
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
          {next && (
            <Button weight="bare" onClick={() => record(without, "none looked at")}>
              Look at none
            </Button>
          )}
        </div>
      )}
      {told && next && (
        <p>
          <a className="sum-number sum-left" href={`#${entryId ?? ""}`}>
            {told.cartridgesLeft} whole
          </a>{" "}
          of {nameOf(next)}: {quantity(told.mg, "mg")}, bound by {boundWords(told.boundBy, next)}.{" "}
          <span className="quiet">
            {told.bounds
              .map(({ by, cartridges }) => `${boundWords(by, next)} leaves ${cartridges.toFixed(1)}`)
              .join("; ")}
            .
          </span>
        </p>
      )}
    </div>
  );
}

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
