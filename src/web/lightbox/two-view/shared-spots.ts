import type { Mark } from "../kernels/mark-shape.ts";

/** A spot on a film. */
export type SpotMark = Mark & { readonly body: Extract<Mark["body"], { shape: "spot" }> };

/** A name of spots with the spot on each film; a film can lack it. */
export interface SharedSpot {
  readonly what: string;
  readonly spots: readonly (SpotMark | undefined)[];
  /** Marked once on every film, so that it can level them. */
  readonly isShared: boolean;
  /** Some film has more than one of this name, which none can be told from. */
  readonly isDoubled: boolean;
}

/** A spot with a name that other films may show too: a level of a canal is of that canal alone. */
const isLandmark = (mark: Mark): mark is SpotMark =>
  mark.body.shape === "spot" && mark.body.what !== "" && (mark.body.is === undefined || mark.body.is === "apex");

/** The named spots of some films, those on every film first. */
export function sharedSpots(marks: readonly Mark[], films: readonly string[]): SharedSpot[] {
  const spots = marks.filter(isLandmark);
  const names = [...new Set(spots.filter(({ body }) => films.includes(body.film)).map(({ body }) => body.what))];
  const all = names.map((what): SharedSpot => {
    const onFilms = films.map((film) => spots.filter(({ body }) => body.film === film && body.what === what));
    return {
      what,
      spots: onFilms.map((found) => found[0]),
      isShared: onFilms.every((found) => found.length === 1),
      isDoubled: onFilms.some((found) => found.length > 1),
    };
  });
  return [...all.filter(({ isShared }) => isShared), ...all.filter(({ isShared }) => !isShared)];
}
