import { KeyHint } from "../../parts/key-hint.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { dayName, type Film, purposeName } from "../kernels/film-name.ts";

interface FilmStripOptions {
  readonly films: readonly Film[];
  readonly presentedOn: string;
  readonly shown: string | undefined;
  readonly show: (filmId: string) => void;
  readonly add: () => void;
}

/** The films of the case by day, under the light; the last place takes a new one. */
export function FilmStrip({ films, presentedOn, shown, show, add }: FilmStripOptions) {
  const step = (by: number) => {
    const next = films[films.findIndex(({ id }) => id === shown) + by];
    if (next !== undefined) show(next.id);
  };
  useShortcut(",", "Light box", "The film before", () => step(-1));
  useShortcut(".", "Light box", "The next film", () => step(1));
  useShortcut("f", "Light box", "Take in a film", add);
  return (
    <nav className="film-strip" aria-label="Films of this case">
      <ol>
        {films.map((film) => (
          <li key={film.id}>
            <FilmThumb film={film} presentedOn={presentedOn} isShown={film.id === shown} show={show} />
          </li>
        ))}
        <li>
          <button type="button" className="film-thumb film-add" onClick={add} aria-keyshortcuts="f">
            <span className="film-add-place" aria-hidden="true">
              +
            </span>
            <span className="film-thumb-words">
              drop, paste, open <KeyHint keys="F" />
            </span>
          </button>
        </li>
      </ol>
    </nav>
  );
}

interface FilmThumbOptions {
  readonly film: Film;
  readonly presentedOn: string;
  readonly isShown: boolean;
  readonly show: (filmId: string) => void;
}

const FilmThumb = ({ film: { id, body }, presentedOn, isShown, show }: FilmThumbOptions) => (
  <button type="button" className="film-thumb" aria-current={isShown ? "true" : undefined} onClick={() => show(id)}>
    <span className="film-thumb-picture">
      <img
        src={`/api/films/${body.hash}/preview?width=240`}
        alt=""
        width={104}
        height={64}
        loading="lazy"
        className={body.view?.invert === true ? "film-thumb-negative" : undefined}
      />
    </span>
    <span className="film-thumb-words">
      {dayName(presentedOn, body.takenOn)} · {purposeName(body.purpose)}
    </span>
  </button>
);
