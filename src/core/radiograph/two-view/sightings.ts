import type { FilmPlace } from "./camera.ts";
import type { Views } from "./view.ts";

/** One place of the canal and the films that show it. */
export interface Sighting {
  readonly seen: readonly { readonly film: number; readonly at: FilmPlace }[];
  /** About how far along the canal it lies, as a share of its length. */
  readonly share: number;
}

/**
 * The places of the canal, from orifice to foramen. By index each is shown by every film; by level the first and the last
 * are, and every other point is a place that its own film shows alone.
 */
export function sightingsOf({ views, byIndex }: Views): Sighting[] {
  const count = Math.max(...views.map(({ points }) => points.length));
  const together = (share: number, place: (points: readonly FilmPlace[]) => FilmPlace | undefined): Sighting => ({
    share,
    seen: views.flatMap(({ points }, film) => {
      const at = place(points);
      return at === undefined ? [] : [{ film, at }];
    }),
  });
  if (byIndex)
    return Array.from({ length: count }, (_, index) => together(index / (count - 1), (points) => points[index]));
  const between = views.flatMap(({ points }, film) =>
    points
      .slice(1, -1)
      .map((at, index): Sighting => ({ share: (index + 1) / (points.length - 1), seen: [{ film, at }] })),
  );
  between.sort((a, b) => a.share - b.share);
  return [together(0, (points) => points[0]), ...between, together(1, (points) => points.at(-1))];
}
