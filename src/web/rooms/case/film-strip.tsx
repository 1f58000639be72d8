import { Link } from "wouter";
import type { PartOf } from "../../../record/parts.ts";
import { purposeWords } from "../../../record/words/later-words.ts";
import "./film-strip.css";

interface FilmStripOptions {
  readonly caseId: string;
  readonly films: readonly PartOf<"film">[];
}

/** The films of a moment; each opens in the light box. */
export function FilmStrip({ caseId, films }: FilmStripOptions) {
  if (films.length === 0) return null;
  return (
    <ul className="moment-films" aria-label="Films">
      {films.map((film) => (
        <li key={film.id}>
          <Link href={`/case/${caseId}/light-box/${film.id}`}>
            <img src={`/api/films/${film.body.hash}/preview?width=320`} alt="" loading="lazy" />
            <span>{film.body.caption || purposeWords[film.body.purpose]}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
