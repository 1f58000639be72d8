import type { Difference } from "../../../../ledger/diagnosis-told.ts";
import { TextField } from "../../../parts/fields/text-field.tsx";
import type { OwnDiagnosis } from "./use-own-diagnosis.ts";

const aboutWords: Readonly<Record<Difference["about"], string>> = {
  pulpal: "On the pulp",
  apical: "At the apex",
  source: "On where the complaint comes from",
};

/** Where the person says something else than the findings: shown, and a reason asked for; nothing is written over. */
export function Differs({ own: { differences, body } }: { readonly own: OwnDiagnosis }) {
  const reasoned = (body.differsBecause ?? "") !== "";
  if (differences.length === 0 && !reasoned) return null;
  return (
    <section {...(differences.length > 0 ? { className: "differs" } : {})} aria-label="Difference from the findings">
      {differences.length > 0 && <h3>Your diagnosis differs from the findings</h3>}
      {differences.length === 0 && <p className="quiet">Nothing differs now; this reason was written when it did.</p>}
      <ul>
        {differences.map(({ about, told, own }) => (
          <li key={about}>
            {aboutWords[about]}: you wrote <strong>{own}</strong>, the findings speak for <strong>{told}</strong>
          </li>
        ))}
      </ul>
      <TextField at="differsBecause" label="Why it differs" prose optional />
      {!reasoned && <p className="look">◇ A reason is asked for: it will be asked again at the panel.</p>}
    </section>
  );
}
