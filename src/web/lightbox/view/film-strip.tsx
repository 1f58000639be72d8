import "./film-strip.css";
import { type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { KeyHint } from "../../parts/key-hint.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { type Film, purposeName } from "../kernels/film-name.ts";
import { type StripDay, stripDays, tubeFrom, tubeFromInWords } from "../kernels/strip-days.ts";
import { filmDragged } from "./dragged-film.ts";

interface FilmStripOptions {
  readonly films: readonly Film[];
  readonly presentedOn: string;
  /** The film in hand. */
  readonly shown: string | undefined;
  /** All films that lie on the box, pane by pane. */
  readonly lying: readonly (string | undefined)[];
  readonly show: (filmId: string) => void;
  readonly add: () => void;
}

/** The films of the case by day and angle, under the light; the last place takes a new one. */
export function FilmStrip({ films, presentedOn, shown, lying, show, add }: FilmStripOptions) {
  const days = useMemo(() => stripDays(films, presentedOn), [films, presentedOn]);
  const inOrder = days.flatMap((day) => day.films);
  const step = (by: number) => {
    const next = inOrder[inOrder.findIndex(({ id }) => id === shown) + by];
    if (next !== undefined) show(next.id);
  };
  useShortcut(",", "Light box", "The film before", () => step(-1));
  useShortcut(".", "Light box", "The next film", () => step(1));
  useShortcut("f", "Light box", "Take in a film", add);
  const strip = useShownInSight(shown);
  return (
    <nav className="film-strip" aria-label="Films of this case" ref={strip} onKeyDown={walk}>
      <ol className="film-days">
        {days.map((day) => (
          <li key={day.day} className="film-day">
            <DayOfFilms day={day} {...{ shown, lying, show }} />
          </li>
        ))}
      </ol>
      <button type="button" className="film-thumb film-add" onClick={add} aria-keyshortcuts="f">
        <span className="film-add-place" aria-hidden="true">
          +
        </span>
        <span className="film-thumb-words">
          drop, paste, open <KeyHint keys="F" />
        </span>
      </button>
    </nav>
  );
}

/** Keeps the film in hand within the strip's sight. */
function useShownInSight(shown: string | undefined) {
  const strip = useRef<HTMLElement>(null);
  useEffect(() => {
    if (shown === undefined) return;
    const keep = () =>
      strip.current?.querySelector("[aria-current=true]")?.scrollIntoView({ block: "nearest", inline: "nearest" });
    keep();
    window.addEventListener("resize", keep);
    return () => window.removeEventListener("resize", keep);
  }, [shown]);
  return strip;
}

/** Arrows walk from film to film, Home and End to the ends. */
function walk(event: KeyboardEvent<HTMLElement>): void {
  const thumbs = [...event.currentTarget.querySelectorAll<HTMLElement>(".film-thumb")];
  const at = thumbs.findIndex((thumb) => thumb.matches(":focus"));
  const places: Readonly<Record<string, number>> = {
    ArrowLeft: at - 1,
    ArrowRight: at + 1,
    Home: 0,
    End: thumbs.length - 1,
  };
  const to = thumbs[places[event.key] ?? -1];
  if (at === -1 || to === undefined) return;
  event.preventDefault();
  to.focus();
}

interface DayOptions extends Pick<FilmStripOptions, "shown" | "lying" | "show"> {
  readonly day: StripDay;
}

const DayOfFilms = ({ day: { day, films }, ...more }: DayOptions) => (
  <>
    <h3 className="film-day-name">{day}</h3>
    <ol>
      {films.map((film) => (
        <li key={film.id}>
          <FilmThumb {...{ film, day }} {...more} />
        </li>
      ))}
    </ol>
  </>
);

interface FilmThumbOptions extends Pick<FilmStripOptions, "shown" | "lying" | "show"> {
  readonly film: Film;
  readonly day: string;
}

function FilmThumb({ film, day, shown, lying, show }: FilmThumbOptions) {
  const { id, body } = film;
  const pane = lying.indexOf(id);
  return (
    <button
      type="button"
      className="film-thumb"
      aria-current={id === shown ? "true" : undefined}
      data-lying={pane !== -1}
      draggable
      onDragStart={({ dataTransfer }) => filmDragged.put(dataTransfer, id)}
      onClick={() => show(id)}
    >
      <span className="film-thumb-picture">
        <img
          src={`/api/films/${body.hash}/preview?width=240`}
          alt=""
          width={104}
          height={64}
          loading="lazy"
          draggable={false}
          className={body.view?.invert === true ? "film-thumb-negative" : undefined}
        />
        {lying.length > 1 && pane !== -1 && (
          <span className="film-thumb-pane">
            <span className="unseen">in pane </span>
            {pane + 1}
          </span>
        )}
      </span>
      <span className="film-thumb-words">
        <span className="unseen">{day} · </span>
        {purposeName(body.purpose)}
      </span>
      <TubeDrawing film={film} />
    </button>
  );
}

/** From where the tube looked, as a small drawing and in words: the film below, the ray from its side. */
function TubeDrawing({ film }: { film: Film }) {
  const words = tubeFromInWords(film);
  if (words === "")
    return <span className="film-thumb-angle">{film.body.purpose === "angled" && "angle not noted"}</span>;
  const mesialAtLeft = film.body.uRunsTo !== "mesial";
  const isLeft = (tubeFrom(film) === "mesial") === mesialAtLeft;
  const lean = tubeFrom(film) === "straight" ? 0 : isLeft ? -6 : 6;
  return (
    <span className="film-thumb-angle">
      <svg viewBox="0 0 18 12" aria-hidden="true">
        <path d={`M2 11h14M${9 + lean} 1L9 8.500M9 8.500l${lean / 6 - 1.8} -2.400M9 8.500l${lean / 6 + 1.8} -2.400`} />
      </svg>
      {words}
    </span>
  );
}
