import { useId } from "react";
import { fractureSubject, fractureTold } from "../../../../ledger/fracture-told.ts";
import { fractureAccount } from "../../../../pages/fracture-account.ts";
import type { PartOf } from "../../../../record/parts.ts";
import { Button } from "../../../parts/button.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useCaseNow } from "../case-now.ts";
import { useMishap } from "./use-mishap.ts";
import { withSentences } from "./with-sentences.ts";

/** Written to be defended: the resident's account, what the ledger speaks for beside it, and what a supervisor objects. */
export function Defence({ part }: { readonly part: PartOf<"mishap"> }) {
  const { mishap, readOnly, write } = useMishap("Own account");
  const { ledger } = useCaseNow();
  const told = fractureTold(ledger.find(({ subject }) => subject === fractureSubject(part.id)));
  const sentences = told === undefined ? [] : fractureAccount(told);
  const written = mishap.defence ?? "";
  const put = (some: readonly string[], says: string) =>
    write({ ...mishap, defence: withSentences(written, some) }, says);
  const heading = useId();
  return (
    <section className="form-part mishap-defence" aria-labelledby={heading}>
      <h2 id={heading}>Written to be defended</h2>
      <div className="mishap-beside">
        <div className="fields">
          <TextField at="defence" label="Why it broke: the resident's own account" prose optional />
          <TextField at="objection" label="What the supervisor objects" prose optional />
        </div>
        {sentences.length > 0 && (
          <div className="mishap-suggested">
            <h3>What the ledger speaks for</h3>
            <ul>
              {sentences.map((sentence) => (
                <li key={sentence}>
                  <span>{sentence}</span>
                  {!readOnly && (
                    <Button
                      weight="bare"
                      disabled={written.includes(sentence)}
                      onClick={() => put([sentence], "a sentence of the ledger put in")}
                    >
                      {written.includes(sentence) ? "Stands there" : "Put it in"}
                      <span className="unseen">: {sentence}</span>
                    </Button>
                  )}
                </li>
              ))}
            </ul>
            {!readOnly && (
              <Button
                disabled={withSentences(written, sentences) === written}
                onClick={() => put(sentences, "the ledger's sentences put in")}
              >
                Put all of them in, to be changed
              </Button>
            )}
          </div>
        )}
      </div>
    </section>
  );
}
