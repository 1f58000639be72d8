import { doseSetsOffered, vasoconstrictorTaken } from "../../../ledger/clinic-offered.ts";
import { sourceName } from "../../../pages/source-name.ts";
import { vasoconstrictorWords } from "../../../record/words/visit-words.ts";
import { ChoiceField, SelectField } from "../../parts/fields/choice-field.tsx";
import { useField } from "../../parts/fields/editing.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { Rows } from "../../parts/fields/rows.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { DoseSetTable } from "./dose-set-table.tsx";

const limitWords = {
  unitedStatesLabel: "the United States' label set",
  canada: "Canada",
  australia: "Australia",
  conservative: "the lowest of all that are held here",
  own: "our own rows below",
} as const;

/** Whose limits count of agents and vasoconstrictors, with what each says. */
export function AnaestheticLimits() {
  const chosen = useField("doseLimits", "Whose limits").value;
  const agents = [...new Set(doseSetsOffered.flatMap(({ rows }) => rows.map(({ agent }) => agent)))];
  return (
    <>
      <ChoiceField
        at="doseLimits"
        label="Whose limits"
        words={limitWords}
        unset="not set: the United States' label set counts"
      />
      <details className="settings-more">
        <summary>What each set says, and where it is from</summary>
        {doseSetsOffered.map((set) => (
          <DoseSetTable key={set.name} set={set} isChosen={chosen === set.name} />
        ))}
      </details>
      <div className="form-part">
        <h3>Own limits of agents{chosen === "own" ? "" : ": they count where “our own rows” is chosen"}</h3>
        <Rows
          at="ownDoseLimits"
          label="Own limits of agents"
          add="Add a limit of an agent"
          start={() => ({})}
          nameOf={(_, index) => `agent ${index + 1}`}
          columns={[
            { head: "Agent", cell: <TextField at="agent" label="Agent" bare offers={agents} />, wide: true },
            {
              head: "By mass",
              unit: "mg/kg",
              cell: <NumberField at="mgPerKg" label="By mass" unit="mg/kg" bare />,
              figure: true,
            },
            {
              head: "In all",
              unit: "mg",
              cell: <NumberField at="maxMg" label="In all" unit="mg" bare />,
              figure: true,
            },
            { head: "Where it is printed", cell: <TextField at="source" label="Source" bare wraps />, wide: true },
          ]}
        />
      </div>
      <div className="form-part">
        <h3>Own limits of a vasoconstrictor in a visit</h3>
        <Rows
          at="vasoconstrictorLimits"
          label="Own limits of a vasoconstrictor"
          add="Add a limit of a vasoconstrictor"
          start={() => ({})}
          nameOf={(_, index) => `vasoconstrictor ${index + 1}`}
          columns={[
            {
              head: "Vasoconstrictor",
              cell: (
                <SelectField at="name" label="Vasoconstrictor" words={vasoconstrictorWords} unset="not said" bare />
              ),
              wide: true,
            },
            {
              head: "Limit",
              unit: "µg, of felypressin IU",
              cell: <NumberField at="limit" label="Limit" bare />,
              figure: true,
            },
            { head: "Where it is printed", cell: <TextField at="source" label="Source" bare wraps />, wide: true },
          ]}
        />
        <p className="quiet">Without a row: {takenInWords()}.</p>
      </div>
    </>
  );
}

/** What counts of each vasoconstrictor where no row stands. */
function takenInWords(): string {
  const { epinephrine, epinephrineCardiac, levonordefrin } = vasoconstrictorTaken;
  const from = (one: typeof epinephrine) =>
    one === undefined ? "" : ` (${/\d/.test(one.source) ? sourceName(one.source) : "teaching documents"}, ${one.mark})`;
  return [
    `epinephrine ${epinephrine?.limit} µg, with a disease of the heart ${epinephrineCardiac?.limit} µg${from(epinephrine)}`,
    `levonordefrin ${levonordefrin?.limit} µg${from(levonordefrin)}`,
    "felypressin has no limit that was found",
  ].join("; ");
}
