import { emergencyNames } from "../../../record/clinic-rules.ts";
import { emergencyWords } from "../../../record/words/emergency-words.ts";
import { Rows } from "../../parts/fields/rows.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { capital } from "../../words/capital.ts";

/** Whom to call, where the kit is, and what the clinic has written down itself. */
export const EmergencyFields = () => (
  <>
    <div className="form-part">
      <h3>Whom to call, the first one first</h3>
      <Rows
        at="emergency.calls"
        label="Whom to call"
        add="Add a call"
        ordered
        start={() => ({})}
        nameOf={(_, index) => `call ${index + 1}`}
        columns={[
          { head: "Whom", cell: <TextField at="who" label="Whom" bare wraps />, wide: true },
          { head: "Number", cell: <TextField at="number" label="Number" bare />, wide: true },
        ]}
      />
      <p className="quiet">Alt and an arrow key move a row, as the arrows beside it do.</p>
    </div>
    <div className="fields settings-one">
      <TextField at="emergency.kit" label="Where the emergency kit and the oxygen are" prose optional />
    </div>
    <div className="form-part">
      <h3>The clinic's own protocols, as they are pasted in</h3>
      <div className="fields settings-one">
        {emergencyNames.map((name) => (
          <TextField
            key={name}
            at={`emergency.protocols.${name}`}
            label={capital(emergencyWords[name])}
            placeholder="none yet; the usual first steps alone are shown"
            prose
            optional
          />
        ))}
      </div>
    </div>
  </>
);
