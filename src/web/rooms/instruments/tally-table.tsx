import type { CabinetView } from "../../../server/api.ts";
import { dayInWords } from "../../parts/days-in-words.ts";
import { countOf, numberInWords } from "../../parts/figures-in-words.ts";
import { turnsInWords } from "./turns-in-words.ts";

type Tally = CabinetView["files"][string];

/** What a file has behind it; each number opens to how it is counted. */
export function TallyTable({ tally }: { readonly tally: Tally | undefined }) {
  if (tally === undefined) return <p className="quiet">Its uses are counted once it is recorded.</p>;
  return (
    <section className="cabinet-tally" aria-label="What it has behind it">
      {linesOf(tally).map(({ name, value, how }) => (
        <details key={name}>
          <summary>
            <span className="field-label">{name}</span>
            <strong>{value}</strong>
          </summary>
          <p className="quiet">{how}</p>
        </details>
      ))}
    </section>
  );
}

interface Line {
  readonly name: string;
  readonly value: string;
  readonly how: string;
}

function linesOf({ lastUsedOn, equivalentTurns, ...tally }: Tally): readonly Line[] {
  const untimed =
    tally.untimed === 0
      ? ""
      : ` ${countOf(tally.untimed, "row")} without time or speed ${tally.untimed === 1 ? "is" : "are"} not among them.`;
  return [
    {
      ...{ name: "Visits in use", value: numberInWords(tally.uses, 0) },
      how: `Visits whose rows name this file, in ${countOf(tally.cases, "case")}.`,
    },
    {
      ...{ name: "Canals", value: numberInWords(tally.canals, 0) },
      how: "Each canal once for each visit; a row that names no canal counts as one.",
    },
    {
      ...{ name: "Sterilisations", value: numberInWords(tally.sterilisations, 0) },
      how: "The days noted below.",
    },
    {
      ...{ name: "Turns", value: numberInWords(tally.turnsNet, 0) },
      how: `Speed by time, less the turning back of a reciprocating file; ${numberInWords(tally.turnsSwept, 0)} with every direction added up.${untimed}`,
    },
    {
      ...{ name: "Equivalent turns", value: equivalentTurns ? turnsInWords(equivalentTurns) : "not computed" },
      how: equivalentTurns
        ? `Turns in the reference canal that would wear it alike, from the life used in ${countOf(equivalentTurns.cases, "case")}: no fewer than the case that wore it most, no more than all of them together, since the worst places of several cases need not be one.`
        : "No case says yet how the canals that it was in are bent.",
    },
    {
      ...{ name: "Last used", value: lastUsedOn === undefined ? "not yet" : dayInWords(lastUsedOn) },
      how: "The day of the last visit that names it.",
    },
  ];
}
