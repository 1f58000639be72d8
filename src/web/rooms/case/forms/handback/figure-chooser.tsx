import { useState } from "react";
import { endsText, percentText } from "../../../../../figures/chance-text.ts";
import { type FigureForOutlook, figuresForOutlook } from "../../../../../ledger/figures-for-outlook.ts";
import { sourceWithStar } from "../../../../../pages/source-name.ts";
import { wayWords } from "../../../../../record/words/case-words.ts";
import { Button } from "../../../../parts/button.tsx";
import { useField } from "../../../../parts/fields/editing.tsx";
import { EntryDialog } from "../../ledger/entry-dialog.tsx";
import { useHandback } from "./use-handback.ts";

/** So many series stand in sight; the others are a press away. */
const inSight = 4;

/** The published figure that the outlook is told with: one that prints its counts, or none. */
export function FigureChooser() {
  const { caseId, handback, ledger, parts, readOnly } = useHandback();
  const field = useField("figure", "Figure of the outlook");
  const [all, setAll] = useState(false);
  const [shown, setShown] = useState<string>();
  const figures = figuresForOutlook(parts, ledger);
  const [first] = figures;
  if (first === undefined)
    return <p className="quiet">No figure with its counts is offered: choose a way in the plan first.</p>;
  const { figure } = handback;
  const isChosen = (one: FigureForOutlook) => one.entryId === figure?.entry && one.outcome.id === figure.outcome;
  const choose = ({ entryId, way, outcome }: FigureForOutlook) =>
    field.write({ entry: entryId, way, outcome: outcome.id }, `${outcome.events} of ${outcome.n} chosen`, "now");
  const listed = figures.filter((one, at) => all || at < inSight || isChosen(one));
  return (
    <fieldset className="handback-figures" disabled={readOnly}>
      <legend>Published figure, of {wayWords[first.way]}</legend>
      {listed.map((one) => (
        <label key={one.outcome.id} className="handback-figure">
          <input type="radio" name={field.id} checked={isChosen(one)} onChange={() => choose(one)} />
          <FigureInWords outcome={one.outcome} />
        </label>
      ))}
      <label className="handback-figure">
        <input
          type="radio"
          name={field.id}
          checked={figure === undefined}
          onChange={() => field.write(undefined, "none", "now")}
        />
        <span>No figure</span>
      </label>
      {figure !== undefined && !figures.some(isChosen) && (
        <p>◇ A figure was chosen that an earlier sum holds; it stays in the letter until another is chosen.</p>
      )}
      <div className="handback-line">
        {listed.length < figures.length && (
          <Button onClick={() => setAll(true)}>Show the other {figures.length - listed.length}</Button>
        )}
        <Button onClick={() => setShown(first.entryId)}>Where these come from</Button>
      </div>
      {shown !== undefined && <EntryDialog caseId={caseId} entryId={shown} close={() => setShown(undefined)} />}
    </fieldset>
  );
}

function FigureInWords({ outcome }: Pick<FigureForOutlook, "outcome">) {
  const { what, events, n, proportion, interval, followUp, group } = outcome;
  const ends = interval === undefined ? "" : ` (${endsText(interval)})`;
  return (
    <span>
      {what}: {events} of {n}, {percentText(proportion)} %{ends}{" "}
      <span className="quiet">{[followUp, group, sourceWithStar(outcome)].filter((one) => one !== "").join("; ")}</span>
    </span>
  );
}
