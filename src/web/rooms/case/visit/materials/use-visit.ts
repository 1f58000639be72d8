import type { BodyOf } from "../../../../../record/parts.ts";
import { useAnnounce } from "../../../../parts/announcer.tsx";
import { useEditedPart, useField } from "../../../../parts/fields/editing.tsx";

/** What a visit holds. */
export type Visit = BodyOf<"visit">;

/** The visit as it is being written, and how something whole is recorded in it as one named gesture. */
export function useVisit(label: string) {
  const { id, revision } = useEditedPart();
  const field = useField("", label);
  const announce = useAnnounce();
  const visit = field.value as Visit;
  const record = (next: Visit, says: string) => {
    field.write(next, says, "now");
    announce(`${label}: ${says}`);
  };
  return { visitId: id, revision, visit, readOnly: field.readOnly, record };
}
