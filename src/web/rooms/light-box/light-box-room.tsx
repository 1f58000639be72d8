import { useQueryClient } from "@tanstack/react-query";
import { useMemo, useState, useSyncExternalStore } from "react";
import { useLocation } from "wouter";
import { canalStatesOn } from "../../../record/canal-states.ts";
import type { Gesture } from "../../../record/change.ts";
import { partsOf } from "../../../record/parts.ts";
import type { CaseView } from "../../../server/api.ts";
import { type Film, filmsByDay } from "../../lightbox/kernels/film-name.ts";
import { CaseOnBoxContext } from "../../lightbox/view/case-on-box.ts";
import { FilmStrip } from "../../lightbox/view/film-strip.tsx";
import { ImportSheet } from "../../lightbox/view/import/import-sheet.tsx";
import { IncomingFiles } from "../../lightbox/view/import/incoming-files.tsx";
import { useAnnounce } from "../../parts/announcer.tsx";
import { Opening } from "../../parts/opening.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { caseKey, useCase, useDraftBook, useRecord, useSaveQueue } from "../../record/case-access.tsx";
import { useLeaveNothing } from "../../record/leave-nothing.ts";
import type { SaveState } from "../../record/save-queue.ts";
import { ConflictDialog } from "../case/conflict-dialog.tsx";
import { SaveTrouble } from "../case/save-mark.tsx";
import { FilmOnBox } from "./film-on-box.tsx";
import { LightBoxHead } from "./light-box-head.tsx";
import { NoFilms } from "./no-films.tsx";
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
  useTitle(view && `Light box of ${view.facts.tooth}, ${view.facts.pseudonym}`);
  if (view === undefined)
    return (
      <div data-room="dark" className="light-box">
        {error === null ? <Opening says="Opening the films" /> : <SayRefusal of={error} whole />}
      </div>
    );
  return (
    <div data-room="dark" className="light-box">
      <div>
        <LightBoxHead view={view} save={save} pending={book.pending} />
        <SaveTrouble save={save} retry={() => queue.retry()} />
      </div>
      <Films view={view} save={save} filmPartId={filmPartId} />
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
}

function Films({ view, save, filmPartId }: FilmsOptions) {
  const { caseId, parts, facts } = view;
  const [incoming, setIncoming] = useState<File>();
  const films = useMemo(() => filmsByDay(partsOf(parts, "film")), [parts]);
  const film = filmPartId === undefined ? films[0] : films.find(({ id }) => id === filmPartId);
  const caseOnBox = useMemo(() => ({ caseId, parts }), [caseId, parts]);
  const { record, take, show } = useFilmActs(caseId);
  return (
    <CaseOnBoxContext value={caseOnBox}>
      <IncomingFiles take={setIncoming}>
        {(open, isOver) => (
          <>
            <Box {...{ view, save, films, film, open, record }} isMissing={filmPartId !== undefined} />
            <FilmStrip films={films} presentedOn={facts.presentedOn} shown={film?.id} show={show} add={open} />
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

interface BoxOptions {
  readonly view: CaseView;
  readonly save: SaveState;
  readonly films: readonly Film[];
  readonly film: Film | undefined;
  readonly isMissing: boolean;
  readonly open: () => void;
  readonly record: (gesture: Gesture) => void;
}

/** The film on the box, or what stands in its place. */
function Box({ view, save, films, film, isMissing, open, record }: BoxOptions) {
  const { caseId, facts, parts, ledger } = view;
  const say = useAnnounce();
  const marks = useMemo(() => partsOf(parts, "mark").filter(({ body }) => body.film === film?.id), [parts, film?.id]);
  const canals = useMemo(() => Object.keys(canalStatesOn(parts)), [parts]);
  if (films.length === 0) return <NoFilms open={open} />;
  if (film === undefined)
    return (
      <main className="no-films">
        <h1>{isMissing ? "This film is not in the case" : "No film"}</h1>
        <p>
          It was taken out, or the address names another case. The films of this case are below; undo brings it back.
        </p>
      </main>
    );
  return (
    <FilmOnBox
      key={`${caseId} ${film.id}`}
      options={{ film, presentedOn: facts.presentedOn, marks, record, say }}
      {...{ ledger, canals }}
      measuring={save.is === "saving"}
    />
  );
}

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
