import { viewsOf } from "../../ledger/course-in-space.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../../record/parts.ts";

/** A film that gave a course in space, as its pages name it. */
export interface FilmOfSpace {
  /** `straight`, `25° from mesial`. */
  readonly name: string;
  readonly takenOn: string;
  readonly film: PartOf<"film">;
  /** Whether the canal's course runs down the film. */
  readonly runsDown: boolean;
}

/** The films of an entry about a course in space, in the order of its views. */
export function filmsOfSpace(entry: LedgerEntry, parts: readonly Part[]): FilmOfSpace[] {
  const { canal, films } = viewsOf(entry);
  return films.flatMap((id) => {
    const film = partsOf(parts, "film").find((one) => one.id === id);
    if (film === undefined) return [];
    const angle = film.body.horizontalAngleDeg;
    const side = (angle ?? 0) > 0 ? "mesial" : "distal";
    const name =
      angle === undefined ? "angle not known" : angle === 0 ? "straight" : `${Math.abs(angle)}° from ${side}`;
    return [{ name, takenOn: film.body.takenOn, film, runsDown: runsDown(film.id, canal, parts) }];
  });
}

function runsDown(film: string, canal: string, parts: readonly Part[]): boolean {
  const traces = partsOf(parts, "mark").flatMap(({ body }) =>
    body.shape === "trace" && body.film === film && body.canal === canal ? [body.points] : [],
  );
  const points = traces.at(-1) ?? [];
  return (points.at(-1)?.[1] ?? 0) >= (points[0]?.[1] ?? 0);
}

/** How a drawing in space stands so that it looks as its first film does. */
export const standsAs = (
  first: FilmOfSpace | undefined,
): { readonly rightIs: "distal" | "mesial"; readonly apexIs: "down" | "up" } => ({
  rightIs: first?.film.body.uRunsTo === "mesial" ? "mesial" : "distal",
  apexIs: first?.runsDown === false ? "up" : "down",
});
