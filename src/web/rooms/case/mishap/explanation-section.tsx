import { useId } from "react";
import { Link } from "wouter";
import { type FractureTold, fractureSubject, fractureTold } from "../../../../ledger/fracture-told.ts";
import { explanationsDecide } from "../../../../pages/fracture-account.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { PartOf } from "../../../../record/parts.ts";
import { Cautions } from "../../../parts/cautions.tsx";
import { refusalInWords, sentenceInWords } from "../../../words/value-words.ts";
import { useCaseNow } from "../case-now.ts";
import { BreakDrawn } from "./break-drawn.tsx";
import { ExplanationsBeside } from "./explanations-beside.tsx";
import "../../../parts/ruled-table.css";
import "./explanation.css";
import { FactsThatWeigh } from "./facts-that-weigh.tsx";
import { FitOfPiece } from "./fit-of-piece.tsx";
import { IfAssumedOtherwise } from "./if-assumed-otherwise.tsx";
import { PieceAmongPublished } from "./piece-among-published.tsx";
import { PublishedSplits } from "./published-splits.tsx";

/** How it broke: three explanations side by side, what weighs, and what would decide. */
export function ExplanationSection({ mishap }: { readonly mishap: PartOf<"mishap"> }) {
  const { ledger } = useCaseNow();
  const entry = ledger.find(({ subject }) => subject === fractureSubject(mishap.id));
  const told = fractureTold(entry);
  const heading = useId();
  return (
    <section className="form-part mishap-why" aria-labelledby={heading}>
      <h2 id={heading}>How it may have broken</h2>
      {entry === undefined && <NotYet mishap={mishap} />}
      {entry?.refused?.map((why) => (
        <p key={why} className="look">
          ◇ {refusalInWords(why)}
        </p>
      ))}
      {entry && told && <Told {...{ told, mishap, entry }} />}
    </section>
  );
}

/** What the explanation waits for. */
function NotYet({ mishap: { body } }: { readonly mishap: PartOf<"mishap"> }) {
  const missing = [
    ...(body.instrument === undefined ? ["which instrument it was"] : []),
    ...(body.separated === undefined ? ["what was seen of the piece"] : []),
  ];
  return (
    <p className="quiet">
      Nothing is explained yet. Say {missing.length === 0 ? "how long the piece is" : missing.join(" and ")}; the length
      of the piece, the depth of the tip and the traced canal then say where it was to be expected to break.
    </p>
  );
}

interface ToldOptions {
  readonly told: FractureTold;
  readonly mishap: PartOf<"mishap">;
  readonly entry: LedgerEntry;
}

const Told = ({ told, mishap, entry }: ToldOptions) => (
  <>
    <p className="mishap-verdict">
      {explanationsDecide(told)
        ? "● The first interval lies above the next, under the assumptions made. Consistent with, no more."
        : "◇ The intervals overlap: these facts do not decide. Consistent with, no more."}
    </p>
    <ExplanationsBeside told={told} entryId={entry.id} />
    <BreakDrawn {...{ told, entry }} mishapId={mishap.id} />
    <dl className="mishap-decides">
      <div>
        <dt>Weighs most</dt>
        <dd>{sentenceInWords(told.weighsMost)}</dd>
      </div>
      <div>
        <dt>Would decide</dt>
        <dd>
          {told.wouldDecide.length === 0 ? "Nothing more that is known of." : ""}
          <ul>
            {told.wouldDecide.map((what) => (
              <li key={what}>{sentenceInWords(what)}</li>
            ))}
          </ul>
        </dd>
      </div>
    </dl>
    <PieceAmongPublished told={told} entryId={entry.id} />
    <FitOfPiece mishapId={mishap.id} />
    <FactsThatWeigh told={told} entryId={entry.id} />
    <PublishedSplits told={told} entryId={entry.id} />
    <IfAssumedOtherwise told={told} entryId={entry.id} />
    <Cautions topic="fracture" cautions={told.cautions} />
    {told.notComputed.length > 0 && (
      <details className="mishap-more">
        <summary>Not computed ({told.notComputed.length})</summary>
        <ul>
          {told.notComputed.map(({ name, why }) => (
            <li key={name}>
              {sentenceInWords(name)}: {sentenceInWords(why)}
            </li>
          ))}
        </ul>
      </details>
    )}
    <p>
      <Link href="/methods/fracture">What is published, what is physics and what is assumption</Link>
    </p>
  </>
);
