import { type PartOf, partsOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import type { CanalOnFilm } from "./canal-on-film.ts";

/** The films that a person chose for a canal, with the part that says so; or what is missing before they serve. */
export interface FilmsPaired {
  readonly pairing: PartOf<"pairing">;
  readonly films: readonly CanalOnFilm[];
  readonly why?: string;
}

/** The last choice of films for a canal, or undefined where a person made none. */
export function filmsPaired(
  canal: string,
  courses: readonly CanalOnFilm[],
  { parts }: BindingContext,
): FilmsPaired | undefined {
  const pairing = partsOf(parts, "pairing").findLast(({ body }) => body.canal === canal);
  if (pairing === undefined) return undefined;
  const films = pairing.body.films.flatMap((id) => courses.find(({ film }) => film.id === id) ?? []);
  const untraced = pairing.body.films.find((id) => films.every(({ film }) => film.id !== id));
  if (untraced === undefined) return { pairing, films };
  const film = partsOf(parts, "film").find(({ id }) => id === untraced);
  const why =
    film === undefined
      ? `a film that was chosen for ${canal} no longer stands; choose its films again`
      : `${canal} is not traced on the film "${film.body.caption || film.id}"; trace it there, or choose its films again`;
  return { pairing, films, why };
}
