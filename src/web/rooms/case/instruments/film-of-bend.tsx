import { useMemo } from "react";
import { Link } from "wouter";
import { strainOnFilm } from "../../../../figures/strain-on-film.ts";
import { strainText } from "../../../../figures/strain-ramp.ts";
import type { BendTold } from "../../../../ledger/bend-told.ts";
import { bendAbout, strainOnFilms } from "../../../../ledger/strain-on-film.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import { purposeWords } from "../../../../record/words/later-words.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { FigureView } from "../../../parts/figure-view.tsx";

interface FilmOfBendOptions {
  readonly told: BendTold;
  readonly entry: LedgerEntry;
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  /** A place that is pointed at, mm from the tip. */
  readonly place: number | undefined;
}

/** The film that gave the course, with the strain over it; it leads to the light box with the same drawing. */
export function FilmOfBend({ told, entry, caseId, parts, ledger, place }: FilmOfBendOptions) {
  const about = useMemo(() => bendAbout(entry, parts), [entry, parts]);
  const on = useMemo(() => strainOnFilms(told, about?.on ?? "", { parts, ledger })[0], [told, about, parts, ledger]);
  const name = about === undefined ? "instrument" : `${about.name} in ${about.canal}`;
  if (on === undefined) return null;
  const { film, seated, tightest, byShare } = on;
  const { columns, rows, hash, caption, purpose, takenOn } = film.body;
  const figure = strainOnFilm({
    ...{ columns, rows, name, seated, place: place === undefined ? undefined : on.at(place) },
    ...(tightest === undefined ? {} : { tightest: { at: tightest, label: `most ${strainText(told.peakStrain)}` } }),
  });
  return (
    <figure className="instruments-film">
      <Link href={`/case/${caseId}/light-box/${film.id}?strain=${entry.id}`}>
        <span className="instruments-film-picture">
          <img src={`/api/films/${hash}/preview?width=640`} alt="" loading="lazy" />
          <FigureView figure={figure} />
        </span>
        <span>On the light box: {caption || purposeWords[purpose]}</span>
      </Link>
      <figcaption className="quiet">
        {dayInWords(takenOn)}; the ring marks where it is bent most.
        {byShare && " The course is one in space; on this film its places stand by their share of the way."}
      </figcaption>
    </figure>
  );
}
