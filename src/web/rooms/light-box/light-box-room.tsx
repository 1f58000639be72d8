import { useQueryClient } from "@tanstack/react-query";
import { useMemo, useState, useSyncExternalStore } from "react";
import { useLocation } from "wouter";
import { canalStatesOn } from "../../../record/canal-states.ts";
import type { Gesture } from "../../../record/change.ts";
import { partsOf, thePart } from "../../../record/parts.ts";
import type { CaseView } from "../../../server/api.ts";
import { filmInHand } from "../../lightbox/kernels/box-layout.ts";
import type { Film } from "../../lightbox/kernels/film-name.ts";
import { filmsInStrip } from "../../lightbox/kernels/strip-days.ts";
import { CaseOnBoxContext } from "../../lightbox/view/case-on-box.ts";
import { FilmStrip } from "../../lightbox/view/film-strip.tsx";
import { ImportSheet } from "../../lightbox/view/import/import-sheet.tsx";
import { IncomingFiles } from "../../lightbox/view/import/incoming-files.tsx";
import { useWholeScreen } from "../../lightbox/view/use-whole-screen.ts";
import { useAnnounce } from "../../parts/announcer.tsx";
import { Opening } from "../../parts/opening.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { caseKey, useCase, useDraftBook, useRecord, useSaveQueue } from "../../record/case-access.tsx";
import { useLeaveNothing } from "../../record/leave-nothing.ts";
import { useTeeth } from "../../record/readings.ts";
import type { SaveState } from "../../record/save-queue.ts";
import { ConflictDialog } from "../case/conflict-dialog.tsx";
import { SaveTrouble } from "../case/save-mark.tsx";
import { FilmsOnBox } from "./films-on-box.tsx";
import { LightBoxHead } from "./light-box-head.tsx";
import { NoFilms } from "./no-films.tsx";
import { type BoxLayoutUse, useBoxLayout } from "./use-box-layout.ts";
import { useLooking } from "./use-looking.ts";
import "./light-box-room.css";

interface LightBoxRoomOptions {
  readonly caseId: string;
  readonly filmPartId?: string;
}

/** The room of the films: take in, look at, calibrate, trace, mark. */
export function LightBoxRoom({ caseId, filmPartId }: LightBoxRoomOptions) {
  const { view, recorded, error, save } = useCase(caseId);
  const queue = useSaveQueue(caseId);
  const book = useDraftBook(caseId);
  useSyncExternalStore(book.watch, book.count);
  useLeaveNothing(book, queue);
  const [isWholeScreen, wholeScreen] = useWholeScreen();
  useTitle(view && `Light box of ${view.facts.tooth}, ${view.facts.pseudonym}`);
  if (view === undefined)
    return (
      <div data-room="dark" className="light-box">
        {error === null ? <Opening says="Opening the films" /> : <SayRefusal of={error} whole />}
      </div>
    );
  return (
    <div data-room="dark" className="light-box" data-whole-screen={isWholeScreen}>
      <div className="light-box-head">
        <LightBoxHead view={view} save={save} pending={book.pending} />
        <SaveTrouble save={save} retry={() => queue.retry()} />
      </div>
      <Films {...{ view, save, filmPartId, isWholeScreen, wholeScreen }} />
      {save.is === "conflict" && (
        <ConflictDialog
          words={save.words}
          conflicts={save.conflicts}
          seen={recorded?.parts ?? []}
          settle={(operations) => queue.settle(operations)}
        />
      )}
    </div>
  );
}

interface FilmsOptions {
  readonly view: CaseView;
  readonly save: SaveState;
  readonly filmPartId: string | undefined;
  readonly isWholeScreen: boolean;
  readonly wholeScreen: () => void;
}

function Films({ view, save, filmPartId, ...screen }: FilmsOptions) {
  const { caseId, parts, facts } = view;
  const [incoming, setIncoming] = useState<File>();
  const films = useMemo(() => filmsInStrip(partsOf(parts, "film")), [parts]);
  const strip = useMemo(() => films.map(({ id }) => id), [films]);
  const caseOnBox = useMemo(() => ({ caseId, parts }), [caseId, parts]);
  const { record, take, show } = useFilmActs(caseId);
  const box = useBoxLayout(strip, filmPartId ?? strip[0], show);
  return (
    <CaseOnBoxContext value={caseOnBox}>
      <IncomingFiles take={setIncoming}>
        {(open, isOver) => (
          <>
            <Box {...{ view, save, films, box, open, record, ...screen }} isMissing={filmPartId !== undefined} />
            <FilmStrip
              {...{ films, presentedOn: facts.presentedOn, add: open, show: box.put }}
              shown={filmInHand(box.layout)}
              lying={box.layout.films}
            />
            {isOver && <p className="drop-here">Let go to take in this film</p>}
            {incoming && (
              <ImportSheet
                key={`${incoming.name} ${incoming.lastModified} ${incoming.size}`}
                caseId={caseId}
                file={incoming}
                day={films.at(-1)?.body.takenOn ?? facts.presentedOn}
                taken={take}
                chooseOther={open}
                close={() => setIncoming(undefined)}
              />
            )}
          </>
        )}
      </IncomingFiles>
    </CaseOnBoxContext>
  );
}

interface BoxOptions extends Pick<FilmsOptions, "view" | "save" | "isWholeScreen" | "wholeScreen"> {
  readonly films: readonly Film[];
  readonly box: BoxLayoutUse;
  readonly isMissing: boolean;
  readonly open: () => void;
  readonly record: (gesture: Gesture) => void;
}

/** The films on the box, or what stands in their place. */
function Box({ view, save, films, box, isMissing, open, record, isWholeScreen, wholeScreen }: BoxOptions) {
  const { facts, parts, ledger } = view;
  const { layout } = box;
  const say = useAnnounce();
  const marks = useMemo(() => partsOf(parts, "mark"), [parts]);
  const canals = useMemo(() => Object.keys(canalStatesOn(parts)), [parts]);
  const roots = useMemo(() => thePart(parts, "anatomy")?.body.roots.map(({ name }) => name) ?? [], [parts]);
  const side = useTeeth().data?.find(({ twoDigit }) => twoDigit === facts.tooth)?.side;
  const looking = useLooking(box);
  if (films.length === 0) return <NoFilms open={open} />;
  if (layout.count === 1 && filmInHand(layout) === undefined) return <FilmMissing isMissing={isMissing} />;
  return (
    <FilmsOnBox
      {...{ layout, films, marks, ledger, canals, roots, group: looking.group }}
      measuring={save.is === "saving"}
      shared={{ presentedOn: facts.presentedOn, record, say, side, tooth: facts.tooth, sight: looking.bar.sight }}
      bar={{ ...looking.bar, isWholeScreen, wholeScreen }}
      takeInHand={box.takeInHand}
      put={box.put}
    />
  );
}

const FilmMissing = ({ isMissing }: { isMissing: boolean }) => (
  <main className="no-films">
    <h1>{isMissing ? "This film is not in the case" : "No film"}</h1>
    <p>It was taken out, or the address names another case. The films of this case are below; undo brings it back.</p>
  </main>
);

/** What the room does to the case: record a gesture, take in a film, go to another. */
function useFilmActs(caseId: string) {
  const client = useQueryClient();
  const announce = useAnnounce();
  const send = useRecord(caseId);
  const [, go] = useLocation();
  const show = (filmId: string) => go(`/case/${caseId}/light-box/${filmId}`);
  return {
    show,
    record: ({ words, operations }: Gesture) => {
      send(words, operations).then(
        () => announce(`Saved: ${words}`),
        (error: unknown) => announce(error instanceof Error ? error.message : String(error)),
      );
    },
    take: (view: CaseView, filmId: string) => {
      client.setQueryData(caseKey(caseId), view);
      void client.invalidateQueries({ queryKey: ["changes", caseId] });
      void client.invalidateQueries({ queryKey: ["cases"] });
      show(filmId);
    },
  };
}
