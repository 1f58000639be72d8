import { type ClinicRules, clinicRules } from "../../../../../record/clinic-rules.ts";
import type { BodyOf } from "../../../../../record/parts.ts";
import { useEditedPart, useField } from "../../../../parts/fields/editing.tsx";

/** The visit as it is recorded, and the settings that it is written with now. */
interface VisitInAir {
  readonly id: string;
  readonly revision: number;
  readonly visit: BodyOf<"visit"> | undefined;
  /** As they are being written; what has no form yet counts as absent. */
  readonly clinic: ClinicRules;
  readonly readOnly: boolean;
}

/** See {@link VisitInAir}. */
export function useVisitInAir(): VisitInAir {
  const part = useEditedPart();
  const { value, readOnly } = useField("clinic", "Settings of this visit");
  const clinic = clinicRules.safeParse(value ?? {}).data ?? {};
  return {
    id: part.id,
    revision: part.revision,
    visit: part.kind === "visit" ? part.body : undefined,
    clinic,
    readOnly,
  };
}
