import { useMemo } from "react";
import { Link } from "wouter";
import { removalSubject, removalTold } from "../../../../ledger/removal-told.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { BodyOf, Part, PartOf } from "../../../../record/parts.ts";
import type { Piece } from "../../../../record/pieces.ts";
import { bendWords, thirdWords } from "../../../../record/words/later-words.ts";
import { Button } from "../../../parts/button.tsx";
import { Cautions } from "../../../parts/cautions.tsx";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { EditPart } from "../../../parts/fields/editing.tsx";
import type { DraftBook } from "../../../record/draft-book.ts";
import { refusalInWords } from "../../../words/value-words.ts";
import { faultsAtPlaces } from "../ledger/faults-at-places.ts";
import { MomentEmblem } from "../moment-emblem.tsx";
import { AttemptLog } from "./attempt-log.tsx";
import { ForAndAgainst } from "./for-and-against.tsx";
import { NotComputed } from "./not-computed.tsx";
import { PublishedChances } from "./published-chances.tsx";
import "../../../parts/ruled-table.css";
import "./removal-page.css";
import { RemovalResult } from "./removal-result.tsx";
import { StopRules } from "./stop-rules.tsx";
import { isOfWay, WayToIt } from "./way-to-it.tsx";
import { WaysBeside } from "./ways-beside.tsx";
import { WeighRemoval } from "./weigh-removal.tsx";
import { WhatIsNeeded } from "./what-is-needed.tsx";

interface RemovalPageOptions {
  readonly caseId: string;
  readonly piece: Piece;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  readonly day: string;
  /** Absent where the case is only looked at. */
  readonly book: DraftBook | undefined;
  readonly noteAnatomy: (body: BodyOf<"anatomy">) => void;
  readonly takeOut: (removal: PartOf<"removal">) => void;
}

/** A piece of an instrument in the tooth: take it out, pass it or leave it, weighed in numbers; what was tried, and what came of it. */
export function RemovalPage({ caseId, piece, parts, ledger, day, book, noteAnatomy, takeOut }: RemovalPageOptions) {
  const { mishap, removal } = piece;
  return (
    <article className="moment removal" aria-labelledby="moment-title">
      <header className="moment-head">
        <h2 id="moment-title" tabIndex={-1}>
          Removal weighed
        </h2>
        <span className="quiet">take the piece out, pass it, or leave it</span>
      </header>
      <MomentEmblem {...{ parts, day }} {...(book ? { note: noteAnatomy } : {})} />
      <AboutPiece {...{ caseId, mishap }} />
      {removal ? (
        <Weighing key={removal.id} {...{ caseId, mishap, removal, ledger, day, book, takeOut }} />
      ) : (
        mishap && (
          <div className="moment-due">
            <p>Nothing is weighed yet: neither the way to the piece, nor what each way came to elsewhere.</p>
            <WeighRemoval mishap={mishap} />
          </div>
        )
      )}
    </article>
  );
}

/** Which piece it is, and the way back to its mishap. */
function AboutPiece({ caseId, mishap }: { readonly caseId: string; readonly mishap: Piece["mishap"] }) {
  if (mishap === undefined) return <p className="look">The mishap that this piece belongs to was taken out.</p>;
  const { on, canal, third, bend, fragmentMm, instrument } = mishap.body;
  const facts = [
    canal,
    third === "notRecorded" ? undefined : thirdWords[third],
    bend === "notRecorded" ? undefined : bendWords[bend],
    fragmentMm === undefined ? undefined : `${fragmentMm} mm long`,
    instrument?.size === undefined ? undefined : `size ${instrument.size}`,
  ].filter((fact) => fact !== undefined);
  return (
    <p>
      <Link href={`/case/${caseId}/${mishap.id}`}>The mishap of {dayInWords(on)}</Link>
      {facts.length > 0 && `: ${facts.join(", ")}`}
    </p>
  );
}

interface WeighingOptions extends Pick<RemovalPageOptions, "caseId" | "ledger" | "day" | "book" | "takeOut"> {
  readonly mishap: Piece["mishap"];
  readonly removal: PartOf<"removal">;
}

function Weighing({ caseId, mishap, removal, ledger, day, book, takeOut }: WeighingOptions) {
  const entry = ledger.find(({ subject }) => subject === removalSubject(removal.id));
  const told = useMemo(() => removalTold(entry), [entry]);
  const faults = useMemo(() => faultsAtPlaces(ledger, removal.id), [ledger, removal.id]);
  const entryId = entry?.id ?? "";
  return (
    <>
      <EditPart part={removal} title="Removal weighed" draft={book?.of(removal.id)} book={book} told={faults}>
        <WhatIsNeeded removalId={removal.id} entry={entry} />
        {entry?.refused?.map((why) => (
          <p key={why} className="look">
            {refusalInWords(why)}
          </p>
        ))}
        {told && entry && (
          <>
            <WayToIt {...{ told, entry }} />
            <PublishedChances {...{ told, entryId }} />
            <WaysBeside {...{ told, entryId }} />
            <ForAndAgainst {...told} />
            <NotComputed of={told.notComputed.filter((one) => !isOfWay(one))} />
            <Cautions topic="removal" cautions={told.cautions} />
          </>
        )}
        <StopRules />
        <AttemptLog />
        <RemovalResult {...{ removal, mishap, day, book }} />
        <div className="fields">
          <DayField at="on" label="Weighed on" />
        </div>
      </EditPart>
      <footer className="search-foot">
        <Link href={`/case/${caseId}/documents`}>A page about it for the patient</Link>
        <Link href="/methods/removal">How this is computed</Link>
        {book && (
          <Button weight="bare" onClick={() => takeOut(removal)}>
            Take out this weighing
          </Button>
        )}
      </footer>
    </>
  );
}
