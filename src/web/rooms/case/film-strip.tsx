import { Link } from "wouter";
import type { Part, PartOf } from "../../../record/parts.ts";
import { filmWords } from "./ledger/entry-subject.ts";
import "./film-strip.css";

interface FilmStripOptions {
  readonly caseId: string;
  readonly films: readonly PartOf<"film">[];
  readonly parts: readonly Part[];
}

/** The films of a moment; each opens in the light box. */
export function FilmStrip({ caseId, films, parts }: FilmStripOptions) {
  if (films.length === 0) return null;
  return (
    <ul className="film-strip" aria-label="Films">
      {films.map((film) => (
        <li key={film.id}>
          <Link href={`/case/${caseId}/light-box/${film.id}`}>
            <img src={`/api/films/${film.body.hash}/preview?width=320`} alt="" loading="lazy" />
            <span>{film.body.caption || filmWords(film, parts)}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
