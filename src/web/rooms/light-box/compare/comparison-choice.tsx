import { useState } from "react";
import { Link } from "wouter";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import {
  type Comparison,
  comparisonName,
  type FilmPair,
  firstAndLast,
  type Side,
} from "../../../lightbox/compare/comparison.ts";
import { entryOfComparison, readComparison } from "../../../lightbox/compare/comparison-reading.ts";
import { dayName, type Film, purposeName } from "../../../lightbox/kernels/film-name.ts";
import { Button } from "../../../parts/button.tsx";
import { numberInWords, withUnit } from "../../../parts/figures-in-words.ts";

interface ChoiceOptions {
  readonly caseId: string;
  readonly comparisons: readonly Comparison[];
  readonly shown: string | undefined;
  readonly films: readonly Film[];
  readonly presentedOn: string;
  readonly ledger: readonly LedgerEntry[];
  readonly begin: (films: FilmPair) => void;
}

/** The comparisons of the case, and two films for a new one. */
export function ComparisonChoice(options: ChoiceOptions) {
  const { caseId, comparisons, shown, films, presentedOn, ledger } = options;
  return (
    <nav className="comparison-choice" aria-label="Comparisons of this case">
      <ul>
        {comparisons.map((one) => (
          <li key={one.id}>
            <Link
              href={`/case/${caseId}/light-box/compare/${one.id}`}
              className="comparison-tab"
              aria-current={one.id === shown ? "page" : undefined}
            >
              {comparisonName(one.body, films, presentedOn)}
              <span className="quiet">{standOf(one, ledger)}</span>
            </Link>
          </li>
        ))}
      </ul>
      <NewComparison {...options} />
    </nav>
  );
}

function standOf({ id, body }: Comparison, ledger: readonly LedgerEntry[]): string {
  const entry = entryOfComparison(ledger, id);
  const read = readComparison(entry);
  if (read !== undefined) return read.comparable ? "compared" : "can't be compared";
  return body.landmarks.length < 4 ? "landmarks missing" : "not compared yet";
}

function NewComparison({ films, presentedOn, begin, comparisons }: ChoiceOptions) {
  const usual = firstAndLast(films);
  const [chosen, setChosen] = useState<Partial<Record<Side, string>>>({});
  const [open, setOpen] = useState(comparisons.length === 0);
  if (usual === undefined) return null;
  const pair = { ...usual, ...chosen };
  if (!open) return <Button onClick={() => setOpen(true)}>Compare two other films</Button>;
  const same = pair.before === pair.after;
  return (
    <form
      className="new-comparison"
      aria-label="Two films to compare"
      onSubmit={(event) => {
        event.preventDefault();
        if (same) return;
        begin(pair);
        setOpen(false);
      }}
    >
      {(["before", "after"] as const).map((side) => (
        <label key={side}>
          <span>{side === "before" ? "Before" : "After"}</span>
          <select
            className="field-select"
            value={pair[side]}
            onChange={(event) => setChosen({ ...chosen, [side]: event.target.value })}
          >
            {films.map(({ id, body }) => (
              <option key={id} value={id}>
                {dayName(presentedOn, body.takenOn)}, {purposeName(body.purpose)}
                {body.horizontalAngleDeg ? `, tube ${withUnit(numberInWords(body.horizontalAngleDeg, 0), "°")}` : ""}
              </option>
            ))}
          </select>
        </label>
      ))}
      <Button type="submit" weight="strong" disabled={same}>
        Mark landmarks
      </Button>
      {same && <p className="quiet">Choose two different films.</p>}
    </form>
  );
}
