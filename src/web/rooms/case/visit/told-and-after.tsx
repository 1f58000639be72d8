import { openBeforeLeaving } from "../../../../record/chairside/visit-standing.ts";
import { afterwardsWords, flareUpWords } from "../../../../record/words/visit-words.ts";
import { Button } from "../../../parts/button.tsx";
import { ChoiceField, SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { rowName } from "../forms/row-name.ts";
import { useBenchWays } from "./bench/opened.ts";
import { StandingChips } from "./bench/standing-chips.tsx";
import { useBench } from "./bench/use-bench.ts";

/** What was told, when the patient comes again, what is still open, and how it went afterwards. */
export function ToldAndAfter() {
  return (
    <>
      <section className="form-part">
        <h2>Told, and next</h2>
        <div className="fields">
          <div id="visit-told" className="field" data-wide="true">
            <TextField at="told" label="Told to the patient" prose />
          </div>
          <TextField at="note" label="Note" prose />
          <div id="visit-next">
            <DayField at="nextOn" label="Next" optional />
          </div>
        </div>
        <Rows
          at="log"
          label="Noted while working"
          start={() => ({})}
          nameOf={(_, index) => `note ${index + 1}`}
          columns={[
            {
              head: "At",
              unit: "min",
              cell: <NumberField at="atMin" label="At minute" unit="min" required bare />,
              figure: true,
            },
            { head: "Noted", cell: <TextField at="says" label="Noted" wraps bare />, wide: true },
          ]}
        />
      </section>
      <BeforeLeaving />
      <Afterwards />
    </>
  );
}

/** What is open before the patient leaves; each leads to where it is written. */
function BeforeLeaving() {
  const { visit, readOnly } = useBench("Visit");
  const open = openBeforeLeaving(visit);
  if (readOnly) return null;
  return (
    <section className="form-part">
      <h2>Before the patient leaves</h2>
      {open.length === 0 ? (
        <p className="quiet">✓ Nothing of what is asked here is open.</p>
      ) : (
        <StandingChips standing={open} readOnly={readOnly} label="Open before the patient leaves" />
      )}
    </section>
  );
}

function Afterwards() {
  const { readOnly } = useBench("Afterwards");
  const { open } = useBenchWays();
  return (
    <section className="form-part">
      <h2>Pain, and afterwards</h2>
      <div className="fields">
        <NumberField at="painBefore" label="Pain before, 0 to 10" />
        <NumberField at="painAfter24h" label="Pain after a day, 0 to 10" />
        <NumberField at="painAfter7d" label="Pain after a week, 0 to 10" />
        <ChoiceField at="flareUp" label="Afterwards" words={flareUpWords} />
      </div>
      <Rows
        at="afterwards"
        label="Calls, and visits that nobody had planned"
        start={() => ({})}
        nameOf={(row, index) => rowName(row, "on", `call ${index + 1}`)}
        columns={[
          { head: "On", cell: <DayField at="on" label="On" bare /> },
          { head: "What", cell: <SelectField at="what" label="What it was" words={afterwardsWords} bare /> },
          { head: "Pain", cell: <NumberField at="pain" label="Pain, 0 to 10" bare />, figure: true },
          { head: "Said", cell: <TextField at="says" label="Said" wraps bare />, wide: true },
          { head: "Done", cell: <TextField at="did" label="Done" optional wraps bare />, wide: true },
        ]}
      />
      {!readOnly && (
        <Button hint="l" onClick={() => open("afterwards")}>
          Note a call or a visit afterwards
        </Button>
      )}
    </section>
  );
}
