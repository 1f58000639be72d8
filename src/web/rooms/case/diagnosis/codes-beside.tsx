import { codesShown } from "../../../../ledger/own-codes.ts";
import { Codes, CodesAre } from "./told-parts.tsx";
import type { OwnDiagnosis } from "./use-own-diagnosis.ts";

/** The codes of the person's own terms, and beside them those of the findings where their terms are others. */
export function CodesBeside({ own: { body, entry } }: { readonly own: OwnDiagnosis }) {
  const { own, told } = codesShown(body, entry);
  if (own === undefined && told === undefined) return null;
  return (
    <section aria-label="Codes">
      <div className="codes-beside">
        {own && <Codes told={own} title="Codes of your diagnosis" cautions={own.cautions} />}
        {told && <Codes told={told} />}
      </div>
      <CodesAre />
    </section>
  );
}
