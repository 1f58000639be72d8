import { Link } from "wouter";
import { type Part, partsOf } from "../../../../record/parts.ts";
import { dayName, type Film, filmsByDay, purposeName } from "../../../lightbox/kernels/film-name.ts";
import { tubeAngleInWords } from "../../../lightbox/kernels/tube-angle.ts";
import { filmsChosen } from "../../../lightbox/two-view/pairing-gestures.ts";
import { filmsTracing } from "../../../lightbox/two-view/traced-films.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { useTwoView } from "./two-view-work.ts";

interface CanalBarOptions {
  readonly parts: readonly Part[];
  readonly canals: readonly string[];
  readonly show: (canal: string) => void;
}

/** Which canal, and from which of its films. */
export function CanalBar({ parts, canals, show }: CanalBarOptions) {
  const { canal } = useTwoView();
  const films = filmsByDay(partsOf(parts, "film"));
  const traced = filmsTracing(parts, canal);
  return (
    <footer className="canal-bar">
      <div className="canal-choice" role="radiogroup" aria-label="Canal">
        {canals.map((name) => (
          <label key={name}>
            <input type="radio" name="canal" checked={name === canal} onChange={() => show(name)} />
            <span>{name}</span>
          </label>
        ))}
        <KeyHint keys="[ ]" />
      </div>
      <ul className="film-choice" aria-label={`Films that give the course of ${canal}`}>
        {films.map((film) => (
          <li key={film.id}>
            <FilmTick
              film={film}
              isTraced={traced.some((one) => one.film.id === film.id)}
              traced={traced.map((one) => one.film)}
            />
          </li>
        ))}
      </ul>
    </footer>
  );
}

interface FilmTickOptions {
  readonly film: Film;
  readonly isTraced: boolean;
  readonly traced: readonly Film[];
}

const mostFilms = 6;

/** One film of the case: in the sum or not; one without the canal's trace leads to where it is traced. */
function FilmTick({ film, isTraced, traced }: FilmTickOptions) {
  const { caseId, canal, films, hand, presentedOn, record } = useTwoView();
  const { body, id } = film;
  const isIn = films.some((one) => one.film.id === id);
  const picture = (
    <>
      <span className="film-pick-picture">
        <img src={`/api/films/${body.hash}/preview?width=240`} alt="" width={78} height={48} loading="lazy" />
      </span>
      <span className="film-pick-words">
        {dayName(presentedOn, body.takenOn)} · {purposeName(body.purpose)}
        <br />
        {body.horizontalAngleDeg === undefined ? "angle not known" : tubeAngleInWords(body.horizontalAngleDeg)}
      </span>
    </>
  );
  if (!isTraced)
    return (
      <Link
        href={`/case/${caseId}/light-box/${id}`}
        className="film-pick"
        data-traced="false"
        title={`Trace ${canal} here`}
      >
        {picture}
        <span className="unseen">: {canal} is not traced here; go and trace it</span>
      </Link>
    );
  const isLast = isIn && films.length <= 2;
  const isFull = !isIn && films.length >= mostFilms;
  const toggle = () => {
    const ids = isIn
      ? films.filter((one) => one.film.id !== id).map((one) => one.film)
      : [...films.map((one) => one.film), film];
    if (ids.length >= 2) record(filmsChosen(hand, ids, presentedOn));
  };
  return (
    <label
      className="film-pick"
      data-in={isIn}
      title={isLast ? "Two films are the least: add another first" : undefined}
    >
      <input type="checkbox" checked={isIn} disabled={traced.length < 2 || isLast || isFull} onChange={toggle} />
      {picture}
    </label>
  );
}
