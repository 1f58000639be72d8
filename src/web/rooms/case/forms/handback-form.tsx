import { DayField } from "../../../parts/fields/day-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";

/** The tooth handed back: what must be done by when, and what a later re-entry must know. */
export const HandbackForm = () => (
  <div className="fields">
    <DayField at="on" label="Handed back on" />
    <DayField at="restoreBy" label="To be restored by" optional />
    <TextField at="restoreWith" label="To be restored with" prose />
    <TextField at="orificesMarkedBy" label="Orifices are marked by" prose />
    <TextField at="warnings" label="Whoever enters again must know" prose />
    <TextField at="prognosis" label="Outlook" prose />
  </div>
);
