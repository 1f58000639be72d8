import type { PlanTold } from "../../../../ledger/plan-told.ts";
import { notPlain } from "../../../../pages/consent/plain-reason.ts";
import { useField } from "../../../parts/fields/editing.tsx";

/** The risks of the person's own that the consent page prints as they stand, though a patient may not follow them. */
export function RisksInWords({ told }: { readonly told: PlanTold | undefined }) {
  const { value } = useField("risksNamed", "Risks named");
  const named = Array.isArray(value) ? value.filter((one): one is string => typeof one === "string") : [];
  const called = new Set(told?.options.flatMap(({ risks }) => risks.map(({ says }) => says)));
  const words = [...new Set(named.filter((one) => !called.has(one)).flatMap((one) => notPlain(one)?.jargon ?? []))];
  if (words.length === 0) return null;
  return (
    <p className="quiet plan-note">
      ◇ The consent page prints risks of your own as they stand; a patient may not know: {words.join(", ")}.
    </p>
  );
}
