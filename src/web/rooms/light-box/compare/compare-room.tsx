import { useMemo } from "react";
import { Link, useLocation } from "wouter";
import { partsOf } from "../../../../record/parts.ts";
import type { CaseView } from "../../../../server/api.ts";
import { comparisonName, type FilmPair, filmsOf } from "../../../lightbox/compare/comparison.ts";
import { comparisonBegun, comparisonTakenAway } from "../../../lightbox/compare/comparison-gestures.ts";
import { filmsByDay } from "../../../lightbox/kernels/film-name.ts";
import { CaseOnBoxContext } from "../../../lightbox/view/case-on-box.ts";
import { newPartId } from "../../../record/new-part-id.ts";
import { useRecording } from "../../../record/use-recording.ts";
import { LightBoxFrame } from "../light-box-frame.tsx";
import { CompareWork } from "./compare-work.tsx";
import { ComparisonChoice } from "./comparison-choice.tsx";
import "./compare-room.css";

interface CompareRoomOptions {
  readonly caseId: string;
  readonly comparisonId?: string;
}

/** Two films of two dates laid on each other: landmarks, what changed, and by how much. */
export const CompareRoom = ({ caseId, comparisonId }: CompareRoomOptions) => (
  <LightBoxFrame caseId={caseId} title="Two dates" at="two dates">
    {(view) => <Comparisons view={view} comparisonId={comparisonId} />}
  </LightBoxFrame>
);

function Comparisons({ view, comparisonId }: { view: CaseView; comparisonId: string | undefined }) {
  const { caseId, parts, ledger, facts } = view;
  const { presentedOn } = facts;
  const films = useMemo(() => filmsByDay(partsOf(parts, "film")), [parts]);
  const comparisons = useMemo(() => partsOf(parts, "comparison"), [parts]);
  const caseOnBox = useMemo(() => ({ caseId, parts }), [caseId, parts]);
  const shown = comparisonId === undefined ? comparisons[0] : comparisons.find(({ id }) => id === comparisonId);
  const record = useRecording(caseId);
  const [, go] = useLocation();
  const begin = (pair: FilmPair) => {
    const id = newPartId("comparison");
    record(comparisonBegun(id, pair, comparisonName(pair, films, presentedOn)));
    go(`/case/${caseId}/light-box/compare/${id}`);
  };
  const pair = shown && filmsOf(shown.body, films);
  return (
    <CaseOnBoxContext value={caseOnBox}>
      <div className="compare-room">
        <ComparisonChoice {...{ caseId, comparisons, films, presentedOn, ledger, begin }} shown={shown?.id} />
        {shown !== undefined && pair?.before !== undefined && pair.after !== undefined ? (
          <CompareWork
            key={shown.id}
            view={view}
            comparison={shown}
            films={{ before: pair.before, after: pair.after }}
            record={record}
            takeAway={() => {
              record(comparisonTakenAway(shown, comparisonName(shown.body, films, presentedOn)));
              go(`/case/${caseId}/light-box/compare`);
            }}
          />
        ) : (
          <NoComparison
            caseId={caseId}
            films={films.length}
            isMissing={comparisonId !== undefined}
            hasFilm={shown === undefined}
          />
        )}
      </div>
    </CaseOnBoxContext>
  );
}

interface NoneOptions {
  readonly caseId: string;
  readonly films: number;
  readonly isMissing: boolean;
  /** Whether there is no comparison at all; otherwise a film of it is gone. */
  readonly hasFilm: boolean;
}

function NoComparison({ caseId, films, isMissing, hasFilm }: NoneOptions) {
  const says = !hasFilm
    ? "A film of this comparison was taken out of the case. Undo brings it back; or compare two other films."
    : isMissing
      ? "It was taken away, or the address names another case. Undo brings it back."
      : films < 2
        ? "Two films of this tooth are needed, of two dates. Take in another one in the light box."
        : "Choose the earlier and the later film above. Places that are marked on both bring them together; then they can be laid on each other, and the lesion's change is given in numbers.";
  return (
    <main className="no-films">
      <h1>{isMissing || !hasFilm ? "This comparison can't be shown" : "No films are compared yet"}</h1>
      <p>{says}</p>
      <Link href={`/case/${caseId}/light-box`} className="button">
        Light box
      </Link>
    </main>
  );
}
