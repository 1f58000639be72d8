import { type PlanTold, planTold, waysSince } from "../../../../ledger/plan-told.ts";
import { wayWords } from "../../../../record/words/case-words.ts";
import { useLedgerEntry } from "../../../record/readings.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

/** Ways that stand elsewhere today than when the choice was made; nothing where none does. */
export function SincePlanned({ entryId, now }: { readonly entryId: string; readonly now: PlanTold }) {
  const then = planTold(useLedgerEntry(entryId).data);
  const changes = then === undefined ? [] : waysSince(then, now);
  if (changes.length === 0) return null;
  return (
    <section className="form-part">
      <h2>Changed since the choice was made</h2>
      <ul className="plan-lines">
        {changes.map((change) => (
          <li key={change.way}>
            <span className="plan-standing">≠ changed</span>
            <span>
              {sentenceInWords(wayWords[change.way])}: {change.now} <span className="quiet">(was: {change.was})</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
