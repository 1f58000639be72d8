import { useMemo } from "react";
import { Link } from "wouter";
import { chanceLadder } from "../../../../figures/chance-ladder.ts";
import { endsText, percentText } from "../../../../figures/chance-text.ts";
import { testStrengthRungs, testStrengthTold } from "../../../../ledger/test-strength-told.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { Cautions } from "../../../parts/cautions.tsx";
import { useEditedPart, useField } from "../../../parts/fields/editing.tsx";
import { FigureView } from "../../../parts/figure-view.tsx";
import { refusalInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";
import { PriorPart } from "./prior-part.tsx";
import "./test-strength.css";

/** How strongly the tests of this sheet speak: from the share before them to the share after them. */
export function TestStrength() {
  const { ledger } = useCaseNow();
  const { id } = useEditedPart();
  const entry = ledger.find(({ subject }) => subject === `testStrength of ${id}`);
  const hasPrior = useField("prior", "Prior").value !== undefined;
  return (
    <section className="form-part test-strength">
      <h2>Strength of the tests</h2>
      {!hasPrior && (
        <p className="quiet">
          How likely a non-vital pulp is after these tests depends on how likely it was before them: choose that share.
        </p>
      )}
      <PriorPart />
      {hasPrior && <Strength entry={entry} />}
    </section>
  );
}

function Strength({ entry }: { readonly entry: LedgerEntry | undefined }) {
  const told = testStrengthTold(entry);
  const figure = useMemo(
    () =>
      chanceLadder({ that: "the pulp is not vital", rungs: testStrengthRungs(entry), theme: "paper", widthPx: 600 }),
    [entry],
  );
  if (entry === undefined)
    return (
      <p className="quiet">
        Nothing to weigh yet: it takes a test of cold, heat or current on the tooth, and a tooth that was not opened or
        filled before.
      </p>
    );
  if (told === undefined) return entry.refused?.map((line) => <p key={line}>{refusalInWords(line)}</p>);
  const { mean, interval } = told.posterior;
  return (
    <>
      <p className="test-strength-now">
        <a href={`#${entry.id}`}>{percentText(mean)} %</a>{" "}
        {interval && <span className="quiet">({endsText(interval)})</span>} that the pulp is not vital, after these
        tests
      </p>
      <FigureView figure={figure} />
      <Cautions topic="testStrength" cautions={told.cautions} />
      <p>
        <Link href="/methods/testStrength">How this is computed</Link>
      </p>
    </>
  );
}
