import type { Part } from "../record/parts.ts";
import { rootOfCanal } from "./course-on-film.ts";
import { isCalled, namesIn } from "./mark-notes.ts";
import { type MarkOf, marksOn } from "./marks-on.ts";

/** The apex that is marked on a film for a canal or for its root: one bound to it, else one that its note names so. */
export function apexOnFilm(parts: readonly Part[], film: string, canal: string): MarkOf<"spot"> | undefined {
  const root = rootOfCanal(parts, canal);
  const spots = marksOn(parts, film, "spot");
  const bound = spots.filter(({ body }) => body.is === "apex");
  const names = [canal, ...(root === undefined ? [] : [root])];
  return (
    bound.findLast(({ body }) => body.canal === canal) ??
    bound.findLast(({ body }) => body.canal === undefined && body.root !== undefined && body.root === root) ??
    spots.findLast(
      ({ body }) => body.is === undefined && isCalled(body.what, "apex") && namesIn(body.what).some(isOneOf(names)),
    )
  );
}

const isOneOf =
  (names: readonly string[]) =>
  (word: string): boolean =>
    names.some((name) => name.toLowerCase() === word);
