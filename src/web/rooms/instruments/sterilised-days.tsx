import { today } from "../../parts/days-in-words.ts";
import { DayField } from "../../parts/fields/day-field.tsx";
import { Rows } from "../../parts/fields/rows.tsx";

/** The days on which a file was sterilised. */
export const SterilisedDays = () => (
  <details className="cabinet-days">
    <summary>Days on which it was sterilised</summary>
    <Rows
      at="sterilisedOn"
      label="Sterilised on"
      add="Add a day"
      start={() => today()}
      nameOf={(_, index) => `sterilisation ${index + 1}`}
      columns={[{ head: "Sterilised on", cell: <DayField at="" label="Day" bare /> }]}
    />
  </details>
);
