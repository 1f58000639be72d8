import { faultsOf } from "../../../../../core/faults-of.ts";
import type { Fault } from "../../../../../core/refusal.ts";
import { type ClinicRules, clinicRules } from "../../../../../record/clinic-rules.ts";

/** A room as the record keeps it. */
export type Room = NonNullable<ClinicRules["room"]>;

/** A room as it is being written: what is not told yet is absent. */
export interface RoomDraft {
  readonly name?: string | undefined;
  readonly volumeM3?: number | undefined;
  readonly airChangesPerHour?: number | undefined;
  readonly temperatureC?: number | undefined;
  readonly nearField?:
    | { readonly radiusM?: number | undefined; readonly airSpeedMPerMin?: number | undefined }
    | undefined;
  readonly assistantIn?: "near" | "far" | undefined;
  readonly from?: string | undefined;
}

const roomForm = clinicRules.shape.room.unwrap();

/** A draft as a room that can be kept, or what it lacks; faults name their field, as `nearField.radiusM`. */
export function roomOfDraft(draft: RoomDraft): { readonly room: Room } | { readonly faults: readonly Fault[] } {
  const whole = withoutAbsent({ from: "", ...draft, nearField: draft.nearField && withoutAbsent(draft.nearField) });
  const { data, error } = roomForm.safeParse(whole);
  return data === undefined ? { faults: error === undefined ? [] : faultsOf(error, whole) } : { room: data };
}

const withoutAbsent = (fields: object): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
