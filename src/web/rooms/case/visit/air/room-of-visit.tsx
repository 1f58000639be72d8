import { useState } from "react";
import { Link } from "wouter";
import type { ClinicRules } from "../../../../../record/clinic-rules.ts";
import { useField } from "../../../../parts/fields/editing.tsx";
import { useSettings } from "../../../../record/readings.ts";
import { TakeClinic } from "../take-clinic.tsx";
import { EvaporationFields } from "./evaporation-fields.tsx";
import { type RoomDraft, roomOfDraft } from "./room-draft.ts";
import { RoomFields } from "./room-fields.tsx";
import { useVisitInAir } from "./use-visit-in-air.ts";

/** The room that this visit's sums rest on: taken from the clinic's settings in one press, or told here; nothing is filled in. */
export function RoomOfVisit() {
  const { clinic, readOnly } = useVisitInAir();
  const { room } = clinic;
  // It stays as the person has it: a room that has just become whole does not close under their hands.
  const [isOpen, setOpen] = useState(room === undefined);
  const says =
    room === undefined
      ? "The room of this visit is not told: without its volume and its changes of air nothing is reckoned."
      : `${room.name === undefined ? "" : `${room.name}: `}${room.volumeM3} m³, ${changesInWords(room.airChangesPerHour)}${room.nearField === undefined ? ", mixed throughout" : ""}`;
  if (room === undefined && readOnly) return <p className="quiet">{says}</p>;
  return (
    <details className="air-room" open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        {room === undefined ? <span className="look">◆ {says}</span> : `The room of this visit: ${says}`}
      </summary>
      <div className="air-room-form">
        <TakeClinicSettings readOnly={readOnly} />
        <RoomHere room={room} readOnly={readOnly} />
        <EvaporationFields />
      </div>
    </details>
  );
}

const changesInWords = (changes: number): string =>
  changes === 0 ? "closed: no change of air" : `${changes} ${changes === 1 ? "change" : "changes"} of air an hour`;

/** Copies what is set in the settings into the visit, which keeps it whatever is set later. */
function TakeClinicSettings({ readOnly }: { readonly readOnly: boolean }) {
  const settings = useSettings().data;
  if (readOnly || settings === undefined) return null;
  if (settings.clinic?.room === undefined)
    return (
      <p className="quiet">
        The settings hold no room yet. <Link href="/settings">Set it once in the settings</Link>, or tell this
        visit&apos;s here.
      </p>
    );
  return (
    <div>
      <TakeClinic weight="strong" />
    </div>
  );
}

interface RoomHereOptions {
  readonly room: ClinicRules["room"];
  readonly readOnly: boolean;
}

/** What is half told stays here; the visit is given a room once it is whole, so that nothing else waits for it. */
function RoomHere({ room, readOnly }: RoomHereOptions) {
  const field = useField("clinic.room", "Room");
  const [draft, setDraft] = useState<RoomDraft>();
  const read = draft === undefined ? undefined : roomOfDraft(draft);
  const change = (next: RoomDraft, inWords: string) => {
    const whole = roomOfDraft(next);
    if ("room" in whole) field.write(whole.room, inWords, "typing");
    setDraft("room" in whole ? undefined : next);
  };
  const faults = read !== undefined && "faults" in read ? read.faults : [];
  return (
    <div className="form-part">
      <RoomFields value={draft ?? room ?? {}} {...{ change, faults, readOnly }} />
      {faults.length > 0 && (
        <p className="look" role="status">
          ◆ Not kept yet: the room is not whole.
        </p>
      )}
    </div>
  );
}
