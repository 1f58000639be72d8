import type { RemovalTold } from "../../../../ledger/removal-told.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

/** What speaks for taking the piece out and what against it, in sentences with their numbers, and how it is told plainly. */
export const ForAndAgainst = ({ reasons, tellPatient }: Pick<RemovalTold, "reasons" | "tellPatient">) => (
  <section className="form-part" aria-labelledby="removal-reasons">
    <h2 id="removal-reasons">For and against taking it out</h2>
    <div className="removal-walls">
      <Reasons title="For" of={reasons.for} />
      <Reasons title="Against" of={reasons.against} />
    </div>
    {tellPatient.length > 0 && (
      <details className="removal-from">
        <summary>The same in plain words, to tell the patient</summary>
        <ul>
          {tellPatient.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </details>
    )}
  </section>
);

const Reasons = ({ title, of }: { readonly title: string; readonly of: readonly string[] }) => (
  <div className="form-part">
    <h3>{title}</h3>
    {of.length === 0 ? (
      <p className="quiet">Nothing that the figures know.</p>
    ) : (
      <ul className="removal-points">
        {of.map((one) => (
          <li key={one}>{sentenceInWords(one)}</li>
        ))}
      </ul>
    )}
  </div>
);
