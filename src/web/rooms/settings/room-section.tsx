import { evaporationTaken } from "../../../ledger/clinic-offered.ts";
import { Button } from "../../parts/button.tsx";
import { useFaultsUnder, useField } from "../../parts/fields/editing.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import type { RoomDraft } from "../case/visit/air/room-draft.ts";
import { RoomFields } from "../case/visit/air/room-fields.tsx";

/** The room in which solvents are used, and how fast they go into its air. */
export function RoomSection() {
  const field = useField("room", "Room");
  const room: RoomDraft = Object(field.value);
  const faults = useFaultsUnder("room");
  return (
    <>
      <RoomFields value={room} change={(next, inWords) => field.write(next, inWords, "typing")} faults={faults} />
      {room.airChangesPerHour === 0 && (
        <p className="settings-note" role="status">
          ◆ A closed room: no air changes, what evaporates stays. That is what is summed.
        </p>
      )}
      {field.value !== undefined && (
        <p>
          <Button weight="bare" onClick={() => field.write(undefined, "taken out", "now")}>
            Take the room out
          </Button>
        </p>
      )}
      <div className="form-part">
        <h3>Evaporation: the share of a dose that goes into the air in a minute</h3>
        <div className="fields">
          <NumberField at="evaporationPerMin.low" label="At least" unit="per min" />
          <NumberField at="evaporationPerMin.high" label="At most" unit="per min" />
        </div>
        <p className="quiet">
          Of what is left. None is published for a pulp chamber. Where both stay empty the sum spans{" "}
          {evaporationTaken.low.toPrecision(2)} to {evaporationTaken.high} per min: the lower end is of watery spills
          (Abattan 2023), the upper an assumption.
        </p>
      </div>
    </>
  );
}
