import { useQueryClient } from "@tanstack/react-query";
import { useMemo, useState } from "react";
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
import { caseKey } from "../../record/case-access.tsx";
import { useTeeth } from "../../record/readings.ts";
import type { SaveState } from "../../record/save-queue.ts";
import { useRecording } from "../../record/use-recording.ts";
import { FilmsOnBox } from "./films-on-box.tsx";
import { LightBoxFrame } from "./light-box-frame.tsx";
import { NoFilms } from "./no-films.tsx";
import { type BoxLayoutUse, useBoxLayout } from "./use-box-layout.ts";
import { useLooking } from "./use-looking.ts";

interface LightBoxRoomOptions {
  readonly caseId: string;
  readonly filmPartId?: string;
}

/** The room of the films: take in, look at, calibrate, trace, mark. */
export function LightBoxRoom({ caseId, filmPartId }: LightBoxRoomOptions) {
  const [isWholeScreen, wholeScreen] = useWholeScreen();
  return (
    <LightBoxFrame caseId={caseId} title="Light box" isWholeScreen={isWholeScreen}>
      {(view, save) => <Films {...{ view, save, filmPartId, isWholeScreen, wholeScreen }} />}
    </LightBoxFrame>
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
  const record = useRecording(caseId);
  const [, go] = useLocation();
  const show = (filmId: string) => go(`/case/${caseId}/light-box/${filmId}`);
  return {
    show,
    record,
    take: (view: CaseView, filmId: string) => {
      client.setQueryData(caseKey(caseId), view);
      void client.invalidateQueries({ queryKey: ["changes", caseId] });
      void client.invalidateQueries({ queryKey: ["cases"] });
      show(filmId);
    },
  };
}
