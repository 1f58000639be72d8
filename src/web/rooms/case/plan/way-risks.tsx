import type { WayTold } from "../../../../ledger/plan-told.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { sentenceInWords } from "../../../words/value-words.ts";
import { SourceMark } from "./source-mark.tsx";
import { withRisk } from "./ways-shown.ts";

/** The risks that the facts call for; one press names one to the patient, or takes it back. */
export function WayRisks({ of: risks }: { readonly of: WayTold["risks"] }) {
  const field = useField("risksNamed", "Risks named to the patient");
  const named = Array.isArray(field.value) ? field.value.filter((one): one is string => typeof one === "string") : [];
  if (risks.length === 0) return null;
  const toggle = (risk: string) =>
    field.write(withRisk(named, risk), named.includes(risk) ? `not “${risk}”` : `“${risk}”`, "now");
  return (
    <section className="way-part">
      <h3>Risks that the facts call for; ticked ones were named to the patient</h3>
      <ul className="plan-risks">
        {risks.map(({ id, says, because, plain, ...from }) => (
          <li key={id}>
            <label className="field-tick">
              <input
                type="checkbox"
                checked={named.includes(says)}
                disabled={field.readOnly}
                onChange={() => toggle(says)}
              />
              <span>{sentenceInWords(says)}</span>
            </label>
            <span className="quiet plan-note">
              because {because} <SourceMark {...from} />
            </span>
            <span className="plan-plain">“{plain}”</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
