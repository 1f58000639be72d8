import { tracesOf, viewsOf } from "../../../ledger/course-in-space.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { type BodyOf, type Part, type PartOf, partsOf } from "../../../record/parts.ts";
import { type Film, filmsByDay } from "../kernels/film-name.ts";
import { twoViewOf } from "../kernels/hidden-part.ts";
import { numberOf } from "../kernels/ledger-reading.ts";
import type { Mark } from "../kernels/mark-shape.ts";

/** A person's choice of films for a canal. */
export type Pairing = PartOf<"pairing">;
/** A course of a canal on a film. */
export type Trace = Mark & { readonly body: Extract<BodyOf<"mark">, { shape: "trace" }> };
/** A film with the course of the canal in question. */
export interface TracedFilm {
  readonly film: Film;
  readonly trace: Trace;
}

const isTrace = (mark: Mark): mark is Trace => mark.body.shape === "trace";

/** Every film on which a canal is traced, by day; of several courses on one film the last. */
export function filmsTracing(parts: readonly Part[], canal: string): TracedFilm[] {
  const traces = partsOf(parts, "mark")
    .filter(isTrace)
    .filter(({ body }) => body.canal === canal);
  return filmsByDay(partsOf(parts, "film")).flatMap((film) => {
    const trace = traces.findLast(({ body }) => body.film === film.id);
    return trace === undefined ? [] : [{ film, trace }];
  });
}

/** The canals that are traced anywhere, in the order in which they first were. */
export const tracedCanals = (parts: readonly Part[]): string[] => [
  ...new Set(partsOf(parts, "mark").flatMap((mark) => (isTrace(mark) ? (mark.body.canal ?? []) : []))),
];

/** The canal to show first: the one of which most is hidden, else the one on most films. */
export function canalToShow(parts: readonly Part[], ledger: readonly LedgerEntry[]): string | undefined {
  const hidden = (canal: string): number => numberOf(twoViewOf(ledger, canal), "hiddenDeg")?.value ?? -1;
  const films = (canal: string): number => filmsTracing(parts, canal).length;
  return tracedCanals(parts).sort((a, b) => hidden(b) - hidden(a) || films(b) - films(a))[0];
}

/** The person's choice for a canal, where there is one. */
export const pairingOf = (parts: readonly Part[], canal: string): Pairing | undefined =>
  partsOf(parts, "pairing").findLast(({ body }) => body.canal === canal);

/**
 * The films that stand side by side: those a person chose, else those the ledger's entry names, else the two that are
 * nearest to straight on and farthest from it.
 */
export function filmsBeside(parts: readonly Part[], ledger: readonly LedgerEntry[], canal: string): TracedFilm[] {
  const traced = filmsTracing(parts, canal);
  const entry = twoViewOf(ledger, canal);
  const named = pairingOf(parts, canal)?.body.films ?? (entry && viewsOf(entry).films);
  const found = named?.flatMap((id) => traced.find(({ film }) => film.id === id) ?? []) ?? [];
  if (found.length > 1) return withTracesOf(entry, found, parts);
  return farthestApart(traced);
}

/** The entry names its traces; a canal traced twice on a film is shown as it was computed. */
function withTracesOf(entry: LedgerEntry | undefined, films: TracedFilm[], parts: readonly Part[]): TracedFilm[] {
  const ids = entry === undefined ? [] : tracesOf(entry);
  const traces = partsOf(parts, "mark").filter(isTrace);
  return films.map(({ film, trace }) => ({
    film,
    trace: traces.find(({ id, body }) => ids.includes(id) && body.film === film.id) ?? trace,
  }));
}

function farthestApart(traced: readonly TracedFilm[]): TracedFilm[] {
  const size = ({ film }: TracedFilm): number => Math.abs(film.body.horizontalAngleDeg ?? 0);
  const [straightest, ...others] = [...traced].sort((a, b) => size(a) - size(b));
  const farthest = others.at(-1);
  return straightest === undefined ? [] : farthest === undefined ? [straightest] : [straightest, farthest];
}
