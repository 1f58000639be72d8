import { useMemo } from "react";
import { difficultySubject } from "../../../../ledger/difficulty-told.ts";
import { planSubject, planTold } from "../../../../ledger/plan-told.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { wayChosen } from "../../../../record/way-chosen.ts";
import { wayWords, wordFor } from "../../../../record/words/case-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { useEditedPart, useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { refusalInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";
import { ChosenField } from "../plan/chosen-field.tsx";
import { DifficultyAsPlanned } from "../plan/difficulty-as-planned.tsx";
import { PlanFacts } from "../plan/plan-facts.tsx";
import { RisksInWords } from "../plan/risks-in-words.tsx";
import { SaidPlainly } from "../plan/said-plainly.tsx";
import { SincePlanned } from "../plan/since-planned.tsx";
import { WaysWeighed } from "../plan/ways-weighed.tsx";
import { rowName } from "./row-name.ts";

/** What can be done with what was known on the day of the plan, what was chosen and why. */
export function PlanForm() {
  const { caseId, ledger } = useCaseNow();
  const { id } = useEditedPart();
  const plan = useField("", "Plan").value as BodyOf<"plan">;
  const entry = ledger.find(({ subject }) => subject === planSubject(id));
  const told = useMemo(() => planTold(entry), [entry]);
  const difficulty = ledger.find(({ subject }) => subject === difficultySubject(id));
  const stands = {
    planEntry: entry?.id,
    difficultyEntry: difficulty?.output === undefined ? undefined : difficulty.id,
  };
  return (
    <>
      <div className="fields">
        <ChosenField stands={stands} />
        <NumberField at="visitsExpected" label="Visits expected" />
        <DayField at="madeOn" label="Made on" />
        <TextField at="because" label="Because" prose />
        <SaidPlainly />
      </div>
      {entry?.refused?.map((why) => (
        <p key={why} className="look">
          {refusalInWords(why)}
        </p>
      ))}
      {told && entry ? <WaysWeighed {...{ caseId, told, entry, stands }} /> : <WaysByHand />}
      {entry && wayChosen(plan) !== undefined && <SincePlanned {...plan} entryId={plan.planEntry ?? entry.id} />}
      <section className="form-part">
        <h2>Risks named to the patient</h2>
        <Rows
          at="risksNamed"
          label="Risks named"
          add="Add a risk"
          start={() => ""}
          nameOf={(row, index) => (typeof row === "string" && row !== "" ? row : `risk ${index + 1}`)}
          columns={[{ head: "Risk", cell: <TextField at="" label="Risk" wraps bare /> }]}
        />
        <RisksInWords told={told} />
      </section>
      <PlanFacts />
      <DifficultyAsPlanned entryId={plan.difficultyEntry ?? stands.difficultyEntry} />
    </>
  );
}

/** The ways as the person lists them, where the ledger has nothing to lay beside them. */
const WaysByHand = () => (
  <section className="form-part">
    <h2>The ways that were weighed</h2>
    <Rows
      at="options"
      label="Ways that were weighed"
      add="Add a way"
      start={() => ({ way: "watch", forIt: "", againstIt: "" })}
      nameOf={(row, index) => wordFor(wayWords, rowName(row, "way", `way ${index + 1}`))}
      columns={[
        { head: "Way", cell: <SelectField at="way" label="Way" words={wayWords} bare /> },
        { head: "For it", cell: <TextField at="forIt" label="For it" wraps bare />, wide: true },
        { head: "Against it", cell: <TextField at="againstIt" label="Against it" wraps bare />, wide: true },
      ]}
    />
  </section>
);
