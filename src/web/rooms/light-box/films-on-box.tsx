import { useEffect, useMemo, useState } from "react";
import { createPortal } from "react-dom";
import { ledgerReader } from "../../../pages/ledger-reader.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { BoxLayout } from "../../lightbox/kernels/box-layout.ts";
import type { Film } from "../../lightbox/kernels/film-name.ts";
import { relativeTo } from "../../lightbox/kernels/grey-window.ts";
import { scaleOfFilm } from "../../lightbox/kernels/ledger-reading.ts";
import type { Mark } from "../../lightbox/kernels/mark-shape.ts";
import { measuredMarks } from "../../lightbox/kernels/measured-marks.ts";
import { AskingWords } from "../../lightbox/view/asking-words.tsx";
import { CornerWords } from "../../lightbox/view/corner-words.tsx";
import { FilmStage } from "../../lightbox/view/film-stage.tsx";
import type { LightBox, LightBoxOptions, LikeShown } from "../../lightbox/view/light-box.ts";
import { LookPanel } from "../../lightbox/view/look-panel.tsx";
import { Loupe } from "../../lightbox/view/loupe.tsx";
import { MeasurePanel } from "../../lightbox/view/measure-panel.tsx";
import { PaneWords } from "../../lightbox/view/pane-words.tsx";
import { ToolBar } from "../../lightbox/view/tool-bar.tsx";
import { useLightBox } from "../../lightbox/view/use-light-box.ts";
import type { PaneGroupUse } from "../../lightbox/view/use-pane-group.ts";
import { useStrainShown } from "../../lightbox/view/use-strain-shown.ts";
import { ViewBar, type ViewBarOptions } from "../../lightbox/view/view-bar.tsx";
import { PaneForDrop } from "./pane-for-drop.tsx";

interface FilmsOnBoxOptions {
  readonly layout: BoxLayout;
  readonly films: readonly Film[];
  readonly marks: readonly Mark[];
  readonly ledger: readonly LedgerEntry[];
  readonly canals: readonly string[];
  readonly roots: readonly string[];
  readonly measuring: boolean;
  readonly group: PaneGroupUse;
  /** What is the same for every film. */
  readonly shared: Pick<LightBoxOptions, "presentedOn" | "record" | "say" | "side" | "tooth" | "sight">;
  readonly bar: ViewBarOptions;
  readonly takeInHand: (pane: number) => void;
  readonly put: (film: string, pane: number) => void;
}

/** Places in the room that belong to the film in hand: its tools, the bar under it, its measures. */
interface Places {
  readonly tools: HTMLElement | null;
  readonly bar: HTMLElement | null;
  readonly measures: HTMLElement | null;
}

/** One film or several side by side; tools at the left and measures at the right are those of the film in hand. */
export function FilmsOnBox(options: FilmsOnBoxOptions) {
  const { layout, films, put, takeInHand } = options;
  const [tools, setTools] = useState<HTMLElement | null>(null);
  const [bar, setBar] = useState<HTMLElement | null>(null);
  const [measures, setMeasures] = useState<HTMLElement | null>(null);
  const [like, tellLike] = useState<LikeShown>();
  return (
    <div className="light-box-body" data-panes={layout.count}>
      <div ref={setTools} className="tool-bar-place" />
      <main className="films-place">
        <div className="film-panes">
          {layout.films.map((id, pane) => {
            const film = films.find((one) => one.id === id);
            const isInHand = pane === layout.inHand;
            return (
              <PaneForDrop
                // biome-ignore lint/suspicious/noArrayIndexKey: a pane is its place; what lies in it has its own key
                key={pane}
                {...{ pane, isInHand, isOneOfMany: layout.count > 1 }}
                isEmpty={film === undefined}
                take={() => takeInHand(pane)}
                put={(dropped) => put(dropped, pane)}
              >
                {film && (
                  <FilmInPane
                    key={film.id}
                    {...{ film, pane, isInHand, options, tellLike }}
                    like={options.bar.sight.oneWindow ? like : undefined}
                    places={{ tools, bar, measures }}
                  />
                )}
              </PaneForDrop>
            );
          })}
        </div>
        <div ref={setBar} />
        {layout.films[layout.inHand] === undefined &&
          bar &&
          createPortal(<ViewBar box={undefined} {...options.bar} />, bar)}
      </main>
      {layout.count === 1 && <div ref={setMeasures} className="measure-place" />}
    </div>
  );
}

interface FilmInPaneOptions {
  readonly film: Film;
  readonly pane: number;
  readonly isInHand: boolean;
  readonly options: FilmsOnBoxOptions;
  readonly places: Places;
  /** How the film in hand is shown, where all are to be shown the like of it; and the way to tell it. */
  readonly like: LikeShown | undefined;
  readonly tellLike: (like: LikeShown) => void;
}

function FilmInPane({ film, pane, isInHand, options, places, like, tellLike }: FilmInPaneOptions) {
  const { ledger, canals, roots, measuring, group, shared, bar, layout, marks } = options;
  const box = useLightBox({
    ...{ film, isInHand, ...shared },
    group: layout.count > 1 ? group : undefined,
    paneId: `${pane} ${film.id}`,
    mmPerPx: scaleOfFilm(ledger, film.id),
    marks: useMarksOf(marks, film),
    like: isInHand ? undefined : like,
  });
  const strain = useStrainShown(film.id, ledger);
  useTellLike(box, layout.count > 1 && isInHand && bar.sight.oneWindow ? tellLike : undefined);
  return (
    <>
      <FilmStage box={box} measured={useMeasured(box, ledger)} strain={bar.sight.marks ? strain.shown : undefined} />
      {layout.count > 1 && <PaneWords box={box} pane={pane} />}
      {isInHand && <CornerWords box={box} />}
      <AskingWords {...{ box, canals, roots }} />
      {bar.sight.loupe !== 0 && <Loupe box={box} times={bar.sight.loupe} />}
      {isInHand && bar.isLookOpen && <LookPanel box={box} close={bar.openLook} />}
      {isInHand && places.tools && createPortal(<ToolBar box={box} />, places.tools)}
      {isInHand && places.bar && createPortal(<ViewBar box={box} {...bar} />, places.bar)}
      {isInHand &&
        places.measures &&
        createPortal(<MeasurePanel {...{ box, ledger, canals, measuring }} />, places.measures)}
    </>
  );
}

/** What the ledger measured of the marks on a film, but of the one in the hand: that is measured when it is let go. */
function useMeasured({ shown, marks, sight }: LightBox, ledger: readonly LedgerEntry[]) {
  const read = useMemo(() => ledgerReader(ledger), [ledger]);
  return useMemo(
    () =>
      sight.marks
        ? measuredMarks(
            shown.filter((mark) => marks.includes(mark)),
            read,
          )
        : [],
    [shown, marks, sight.marks, read],
  );
}

/** Tells how the film in hand is shown whenever that changes. */
function useTellLike({ pixels, window, look }: LightBox, tell: FilmInPaneOptions["tellLike"] | undefined): void {
  const own = pixels.is === "open" ? pixels.film.window : undefined;
  useEffect(() => {
    if (own !== undefined) tell?.({ window: relativeTo(own, window), look });
  }, [own, window, look, tell]);
}

const useMarksOf = (marks: readonly Mark[], { id }: Film): readonly Mark[] =>
  useMemo(() => marks.filter(({ body }) => body.film === id), [marks, id]);
