import type { PlanTold } from "../../../../ledger/plan-told.ts";
import { ownRisks } from "../../../../pages/consent/own-risks.ts";
import { notPlain } from "../../../../pages/consent/plain-reason.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { useField } from "../../../parts/fields/editing.tsx";

/** The risks of the person's own that the consent page does not print as they stand, and what it does instead. */
export function RisksInWords({ told }: { readonly told: PlanTold | undefined }) {
  const plan = useField("", "Plan").value as BodyOf<"plan">;
  if (told === undefined) return null;
  const { saidAlready, byHand } = ownRisks({ ways: told, plan });
  return (
    <>
      {byHand.length > 0 && (
        <p className="quiet plan-note">
          ◇ The consent page does not print {quoted(byHand)}: {whyNot(byHand)}. It leaves a line for each, to write by
          hand; or say it here in words for the patient.
        </p>
      )}
      {saidAlready.length > 0 && (
        <p className="quiet plan-note">
          ◇ The consent page does not print {quoted(saidAlready)}: a risk that it prints in plain words says about the
          same.
        </p>
      )}
    </>
  );
}

const quoted = (risks: readonly string[]): string => risks.map((risk) => `“${risk}”`).join(", ");

function whyNot(risks: readonly string[]): string {
  const words = [...new Set(risks.flatMap((risk) => notPlain(risk)?.jargon ?? []))];
  return words.length === 0 ? "it is hard to read" : `a patient may not know ${words.join(", ")}`;
}
