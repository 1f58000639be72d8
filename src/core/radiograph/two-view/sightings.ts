import type { FilmPlace } from "./camera.ts";
import type { View, Views } from "./view.ts";

/** One place of the canal and the films that show it. */
export interface Sighting {
  readonly seen: readonly { readonly film: number; readonly at: FilmPlace }[];
  /** About how far along the canal it lies, as a share of its length. */
  readonly share: number;
}

/**
 * The places of the canal, from orifice to foramen. By index each is shown by every film; by level the first and the last
 * are, with those at fixed levels, and every other point is a place that its own film shows alone.
 */
export function sightingsOf({ views, byIndex }: Views): Sighting[] {
  const together = (share: number, stop: (view: View) => number): Sighting => ({
    share,
    seen: views.flatMap((view, film) => {
      const at = view.points[stop(view)];
      return at === undefined ? [] : [{ film, at }];
    }),
  });
  const last = (views[0]?.points.length ?? 1) - 1;
  if (byIndex) return Array.from({ length: last + 1 }, (_, index) => together(index / last, () => index));
  const fixed = (views[0]?.rows ?? []).map((index, row) => together(index / last, ({ rows }) => rows[row] ?? index));
  const inside = [...views.flatMap(seenAlone), ...fixed].sort((a, b) => a.share - b.share);
  return [together(0, () => 0), ...inside, together(1, ({ points }) => points.length - 1)];
}

/** The points of one film between its ends that stand at no fixed level. */
function seenAlone({ points, rows }: View, film: number): Sighting[] {
  const last = points.length - 1;
  return points.flatMap((at, index) =>
    index === 0 || index === last || rows.includes(index) ? [] : [{ share: index / last, seen: [{ film, at }] }],
  );
}
