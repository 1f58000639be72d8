import { useEffect, useRef } from "react";
import { differenceScale } from "../../../figures/difference-scale.ts";
import { FigureView } from "../../parts/figure-view.tsx";
import { plainLook } from "../kernels/film-look.ts";
import { type Film, filmName } from "../kernels/film-name.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";
import { FilmCanvas } from "../view/film-canvas.tsx";
import { usePixelsAt } from "../view/use-film-pixels.ts";
import { type FilmView, useFilmView } from "../view/use-film-view.ts";
import { useMovingFilm } from "../view/use-moving-film.ts";
import type { PlacementUse } from "../view/use-placement.ts";
import { blinked, type ComparedLook, layerStyle, swipedBy, swipedTo } from "./compared-look.ts";
import type { FilmOutline, Side } from "./comparison.ts";
import { closedPath, HardPartsDrawn } from "./hard-parts-drawn.tsx";

interface ComparedPaneOptions {
  readonly films: Readonly<Record<Side, Film>>;
  readonly presentedOn: string;
  readonly entryId: string;
  /** Of the difference where nothing changed; absent where the films can't be compared. */
  readonly sigma: number | undefined;
  readonly look: ComparedLook;
  readonly setLook: (next: (look: ComparedLook) => ComparedLook) => void;
  readonly outlines: Readonly<Record<Side, readonly FilmOutline[]>>;
  /** Parts that the films were brought together by. */
  readonly hardParts: readonly FilmOutline[];
}

/** The second film laid on the first, in the window of the first: in squares, beside a line, blinking, or their difference. */
export function ComparedPane({
  films,
  presentedOn,
  entryId,
  sigma,
  look,
  setLook,
  outlines,
  hardParts,
}: ComparedPaneOptions) {
  const view = useFilmView(films.before);
  const moving = useMovingFilm(view);
  const swipe = useSwipe(view, look, setLook);
  useBlinking(look, setLook);
  const says = `${filmName(films.before, presentedOn)} and ${filmName(films.after, presentedOn)}, ${look.as}`;
  return (
    <div className="compared-pane">
      <div
        {...moving}
        ref={view.pane.element}
        className="film-stage"
        role="application"
        aria-label={says}
        aria-describedby="compared-keys"
        onPointerDown={(event) => swipe.down(event) || moving.onPointerDown?.(event)}
        onPointerMove={(event) => swipe.move(event) || moving.onPointerMove?.(event)}
        onPointerUp={(event) => swipe.up() || moving.onPointerUp?.(event)}
        onPointerCancel={(event) => swipe.up() || moving.onPointerCancel?.(event)}
        onKeyDown={(event) => (swipe.key(event) ? event.preventDefault() : moving.onKeyDown?.(event))}
      >
        <span id="compared-keys" className="unseen">
          Plus and minus change the size, 0 shows the whole film. In swipe the left and right arrows move the line, with
          Shift farther; else arrows move the film.
        </span>
        <Layers {...{ view, entryId, look, outlines, hardParts }} />
      </div>
      {look.as === "swipe" && <SwipeLine look={look} setLook={setLook} films={films} presentedOn={presentedOn} />}
      {look.as === "difference" && sigma !== undefined && sigma > 0 && (
        <figure className="difference-scale">
          <FigureView figure={differenceScale({ sigma, theme: "dark", widthPx: 400 })} />
          <figcaption className="quiet">Change of grey, in percent of its full range</figcaption>
        </figure>
      )}
      {look.as === "blink" && (
        <p className="pane-words">
          <span className="pane-side">{look.blinksTo === "before" ? "Before" : "After"}</span>{" "}
          {filmName(films[look.blinksTo], presentedOn)}
        </p>
      )}
    </div>
  );
}

interface LayersOptions extends Pick<ComparedPaneOptions, "entryId" | "look" | "outlines" | "hardParts"> {
  readonly view: FilmView;
}

function Layers({ view, entryId, look, outlines, hardParts }: LayersOptions) {
  const { placing, pixels } = view;
  const isDifference = look.as === "difference";
  // A picture that was opened once stays open, so that going from one to the other takes no time.
  const wasDifference = useRef(isDifference);
  wasDifference.current ||= isDifference;
  if (pixels.is === "refused") return <p className="film-refused">{pixels.says}</p>;
  if (pixels.is === "loading" || placing === undefined) return <p className="film-waiting">Opening the film</p>;
  const at = `/api/comparisons/${entryId}`;
  const { matrix } = placing;
  return (
    <>
      <FilmCanvas film={pixels.film} line={pixels.line} window={view.window} look={view.look} matrix={matrix} />
      <div className="compared-layer" style={layerStyle(look)} hidden={isDifference}>
        <Laid address={`${at}/aligned`} window={view.window} look={view.look} matrix={matrix} />
      </div>
      {wasDifference.current && (
        <div className="compared-layer" hidden={!isDifference}>
          <Laid address={`${at}/difference`} window={asItIs} look={plainLook} matrix={matrix} />
        </div>
      )}
      {look.outlines && <Outlines {...{ outlines, hardParts, placing }} />}
    </>
  );
}

/** A difference is drawn as its file has it: middle grey is no change whatever the film's window. */
const asItIs: GreyWindow = { centre: 128, width: 256, invert: false };

interface LaidOptions extends Pick<FilmView, "window" | "look">, Pick<PlacementUse, "matrix"> {
  readonly address: string;
}

function Laid({ address, ...shown }: LaidOptions) {
  const laid = usePixelsAt(address);
  if (laid.is === "loading") return <p className="film-waiting">Laying the films on each other</p>;
  if (laid.is === "refused") return <p className="film-refused">{laid.says}</p>;
  return <FilmCanvas film={laid.film} line={laid.line} {...shown} />;
}

/** The lesion as it was and as it is; the two differ in dash as well as in colour. */
function Outlines({
  outlines,
  hardParts,
  placing: { matrix, pane },
}: Pick<LayersOptions, "outlines" | "hardParts"> & { placing: PlacementUse }) {
  return (
    <svg className="film-overlay" width={pane.width} height={pane.height} aria-hidden="true">
      <g transform={`matrix(${matrix.join(" ")})`}>
        <HardPartsDrawn outlines={hardParts} />
        {(["before", "after"] as const).flatMap((side) =>
          outlines[side].map((outline) => (
            <g key={`${side} ${outline[0]?.join(" ")}`} className="compared-outline" data-side={side}>
              <path className="mark-rim" d={closedPath(outline)} />
              <path className="mark-line" d={closedPath(outline)} />
            </g>
          )),
        )}
      </g>
    </svg>
  );
}

/** Two films a second and a half: slow enough that nothing flashes. */
const blinkMs = 750;

function useBlinking(look: ComparedLook, setLook: ComparedPaneOptions["setLook"]): void {
  const blinks = look.as === "blink";
  const latest = useRef(setLook);
  latest.current = setLook;
  useEffect(() => {
    // Who asked for less motion changes films by hand.
    if (!blinks || matchMedia("(prefers-reduced-motion: reduce)").matches) return;
    const turning = setInterval(() => latest.current(blinked), blinkMs);
    return () => clearInterval(turning);
  }, [blinks]);
}

/** How near a press has to come to the line of the swipe to take hold of it, px of the screen. */
const besideLine = 14;

function useSwipe({ pane, placing }: FilmView, look: ComparedLook, setLook: ComparedPaneOptions["setLook"]) {
  const held = useRef(false);
  const width = placing?.pane.width ?? 1;
  const shareOf = (event: React.PointerEvent): number => pane.screenOf(event).x / width;
  return {
    down: (event: React.PointerEvent): boolean => {
      const near = look.as === "swipe" && Math.abs(pane.screenOf(event).x - look.swipeShare * width) <= besideLine;
      if (!near || event.button !== 0) return false;
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current = true;
      return true;
    },
    move: (event: React.PointerEvent): boolean => {
      if (held.current) setLook((now) => swipedTo(now, shareOf(event)));
      return held.current;
    },
    up: (): boolean => {
      const was = held.current;
      held.current = false;
      return was;
    },
    key: ({ key, shiftKey }: React.KeyboardEvent): boolean => {
      if (look.as !== "swipe" || (key !== "ArrowLeft" && key !== "ArrowRight")) return false;
      setLook((now) => swipedBy(now, key === "ArrowRight" ? 1 : -1, shiftKey));
      return true;
    },
  };
}

function SwipeLine({
  look,
  setLook,
  films,
  presentedOn,
}: Pick<ComparedPaneOptions, "look" | "setLook" | "films" | "presentedOn">) {
  const percent = Math.round(100 * look.swipeShare);
  return (
    <>
      <div className="swipe-line" style={{ left: `${100 * look.swipeShare}%` }}>
        <div
          role="slider"
          className="swipe-handle"
          tabIndex={0}
          aria-label="Line between the films"
          aria-valuemin={0}
          aria-valuemax={100}
          aria-valuenow={percent}
          aria-valuetext={`${percent} % from the left`}
          onKeyDown={(event) => {
            const way = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : undefined;
            if (way === undefined) return;
            event.preventDefault();
            setLook((now) => swipedBy(now, way, event.shiftKey));
          }}
        />
      </div>
      <p className="pane-words">
        <span className="pane-side">Before</span> {filmName(films.before, presentedOn)}
      </p>
      <p className="pane-words pane-words-right">
        <span className="pane-side">After</span> {filmName(films.after, presentedOn)}
      </p>
    </>
  );
}
