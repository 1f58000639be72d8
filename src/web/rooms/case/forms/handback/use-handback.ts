import { partId } from "../../../../../core/ids.ts";
import type { BodyOf, Part } from "../../../../../record/parts.ts";
import { useEditedPart, useField } from "../../../../parts/fields/editing.tsx";
import { useCaseNow } from "../../case-now.ts";

/** The hand-back as it is written, and the case with it in its place and no other hand-back. */
export function useHandback() {
  const { parts, ledger, caseId } = useCaseNow();
  const { id } = useEditedPart();
  const whole = useField("", "Hand-back");
  const handback = whole.value as BodyOf<"handback">;
  const others = parts.filter(({ kind }) => kind !== "handback");
  const here: Part = { id: partId(id), kind: "handback", revision: 1, body: handback };
  return { caseId, handback, ledger, parts: [...others, here], readOnly: whole.readOnly };
}
