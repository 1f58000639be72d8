import { dayOf } from "./day-of.ts";
import { type Part, type PartOf, partsOf } from "./parts.ts";

/**
 * The parts of a case that stood on a day: what a decision of that day could rest on.
 * Takes the parts and the day (YYYY-MM-DD, that day included).
 * Gives them in their order. A mark stands from the day of its film, whenever it was drawn; a pairing and a comparison from
 * that of the last of their films; a search with its looks up to then. The case itself, and what has no day (the anatomy,
 * references, claims), always stands.
 */
export function partsOn(parts: readonly Part[], day: string): readonly Part[] {
  const films = new Map(partsOf(parts, "film").map(({ id, body }): [string, string] => [id, body.takenOn]));
  return parts.flatMap((part): Part[] => {
    if (part.kind === "search") return searchOn(part, day);
    return daysOf(part, films).every((one) => one <= day) ? [part] : [];
  });
}

/** Every day that has to have come before a part can stand; none for one that always does. */
function daysOf(part: Part, films: ReadonlyMap<string, string>): string[] {
  if (part.kind === "case") return [];
  return [dayOf(part) ?? [], filmsOf(part).flatMap((film) => films.get(film) ?? [])].flat();
}

function filmsOf(part: Part): readonly string[] {
  if (part.kind === "mark") return [part.body.film];
  if (part.kind === "pairing") return part.body.films;
  return part.kind === "comparison" ? [part.body.before, part.body.after] : [];
}

/** A search with its looks up to a day, and not yet with what it came to; none where all of them came later. */
function searchOn(search: PartOf<"search">, day: string): PartOf<"search">[] {
  const looks = search.body.looks.filter(({ on }) => on <= day);
  if (looks.length === search.body.looks.length) return [search];
  const { foundAs: _later, ...body } = search.body;
  return looks.length === 0 ? [] : [{ ...search, body: { ...body, looks } }];
}
