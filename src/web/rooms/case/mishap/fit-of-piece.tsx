import { type FitTold, fitSubject, fitTold } from "../../../../ledger/fit-told.ts";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { refusalInWords, sentenceInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";

/** Which of the instruments used the piece could be from, by its measures. */
export function FitOfPiece({ mishapId }: { readonly mishapId: string }) {
  const { ledger } = useCaseNow();
  const entry = ledger.find(({ subject }) => subject === fitSubject(mishapId));
  const told = fitTold(entry);
  if (entry === undefined) return null;
  const others = told?.candidates.filter(({ consistent }) => !consistent) ?? [];
  return (
    <div className="mishap-block">
      <h3>Which instrument the piece could be from</h3>
      {entry.refused?.map((why) => (
        <p key={why} className="quiet">
          ◇ {refusalInWords(why)}
        </p>
      ))}
      <Candidates of={told?.candidates.filter(({ consistent }) => consistent) ?? []} entryId={entry.id} />
      {others.length > 0 && (
        <details className="mishap-more">
          <summary>Not consistent with it ({others.length})</summary>
          <Candidates of={others} entryId={entry.id} />
        </details>
      )}
      {told?.cautions.map((caution) => (
        <p key={caution} className="quiet">
          {sentenceInWords(caution)}
        </p>
      ))}
    </div>
  );
}

interface CandidatesOptions {
  readonly of: FitTold["candidates"];
  readonly entryId: string;
}

const Candidates = ({ of, entryId }: CandidatesOptions) => (
  <ul className="mishap-fits">
    {of.map(({ name, misfitSd, consistent, impossible }) => (
      <li key={name}>
        <strong>{name}</strong>{" "}
        {impossible === undefined ? (
          <>
            {consistent ? "● consistent with it" : "○ not consistent with it"}
            {misfitSd !== undefined && (
              <span className="quiet">
                {" "}
                <a href={`#${entryId}`}>{numberInWords(misfitSd, 1)} SD</a> off
              </span>
            )}
          </>
        ) : (
          <>○ not from it: {sentenceInWords(impossible)}</>
        )}
      </li>
    ))}
  </ul>
);
