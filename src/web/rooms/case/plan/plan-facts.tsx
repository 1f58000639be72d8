import { isInFull } from "../../../../record/own-figures.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { wayWords, wordFor } from "../../../../record/words/case-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { rowName } from "../forms/row-name.ts";
import "./plan.css";

const alteredWords = {
  respected: "as it was",
  altered: "altered",
  notAssessed: "not assessed",
} as const;
/** A plan that keeps "not asked" is told as not recorded: neither says anything of the crown. */
const crownedWords = { yes: "yes", no: "no" } as const;
const kindWords = {
  healing: "healing",
  pulp: "pulp alive",
  retention: "still in place",
  replacement: "replacement",
} as const;

/** Facts that the weighing asks for and no other moment holds, and figures of the person's own. */
export const PlanFacts = () => (
  <section className="form-part">
    <h2>What the weighing asks for beside the findings</h2>
    <div className="fields">
      <SelectField
        at="altered"
        label="Form of the canals after earlier treatment"
        words={alteredWords}
        unset="not recorded"
      />
      <SelectField at="crowned" label="Carries a crown or a bridge" words={crownedWords} unset="not recorded" />
    </div>
    <OwnFigures />
  </section>
);

/** Figures for a way that are not published here, each with where it comes from; the first makes the list. */
function OwnFigures() {
  const rows = (useField("own", "Own figures").value ?? []) as NonNullable<BodyOf<"plan">["own"]>;
  const unfinished = rows.filter((row) => !isInFull(row)).length;
  return (
    <div className="own-figures">
      {rows.length > 0 && <h3>Figures of your own</h3>}
      <Rows
        at="own"
        label="Figures of your own"
        add="Add a figure of your own for a way"
        start={() => ({ way: "treat", what: "healed", kind: "healing", followUp: "1 year", from: "own cases" })}
        nameOf={(row, index) => `${wordFor(wayWords, rowName(row, "way", `figure ${index + 1}`))}, figure ${index + 1}`}
        columns={[
          { head: "Way", cell: <SelectField at="way" label="Way" words={wayWords} bare /> },
          { head: "What was counted", cell: <TextField at="what" label="What was counted" wraps bare /> },
          { head: "Kind", cell: <SelectField at="kind" label="Kind" words={kindWords} bare /> },
          { head: "Had it", cell: <NumberField at="events" label="Had it" bare />, figure: true },
          { head: "Of", cell: <NumberField at="n" label="Of" bare />, figure: true },
          { head: "Or %", cell: <NumberField at="percent" label="Or percent" bare />, figure: true },
          { head: "Low", cell: <NumberField at="lowPercent" label="Low end, percent" bare />, figure: true },
          { head: "High", cell: <NumberField at="highPercent" label="High end, percent" bare />, figure: true },
          { head: "After", cell: <TextField at="followUp" label="After" bare />, narrow: true },
          { head: "From where", cell: <TextField at="from" label="From where" wraps bare />, wide: true },
        ]}
      />
      {unfinished > 0 && (
        <p className="look">
          ◇ {unfinished === 1 ? "One figure is" : `${unfinished} figures are`} not weighed yet: how many had it and of
          how many, or a percentage, and not both.
        </p>
      )}
    </div>
  );
}
