/** How many films lie side by side. */
export type PaneCount = 1 | 2 | 4;

/** Which films lie on the box, pane by pane, and which pane is in hand. */
export interface BoxLayout {
  readonly count: PaneCount;
  /** As many as there are panes; undefined for an empty one. */
  readonly films: readonly (string | undefined)[];
  readonly inHand: number;
}

/** One film on the box, or none. */
export const oneFilm = (film: string | undefined): BoxLayout => ({ count: 1, films: [film], inHand: 0 });

/** The film of the pane in hand. */
export const filmInHand = ({ films, inHand }: BoxLayout): string | undefined => films[inHand];

/**
 * The box with another number of panes. Films that lie there stay, the one in hand above all; new panes take those that
 * follow it in the strip. Takes the films of the strip in its order.
 */
export function laidOut(layout: BoxLayout, count: PaneCount, strip: readonly string[]): BoxLayout {
  const held = filmInHand(layout);
  if (count === 1) return oneFilm(held ?? layout.films.find((film) => film !== undefined));
  const kept = keptFilms(layout, count);
  const start = strip.indexOf(held ?? "");
  const following = [...strip.slice(start + 1), ...strip.slice(0, start + 1)].filter((film) => !kept.includes(film));
  const films = Array.from({ length: count }, (_, pane) => kept[pane] ?? following.shift());
  return { count, films, inHand: Math.max(0, films.indexOf(held)) };
}

/** As many of the films as there will be panes, in their order; the one in hand is never left out. */
function keptFilms(layout: BoxLayout, count: PaneCount): (string | undefined)[] {
  if (layout.films.length <= count) return [...layout.films];
  const first = layout.films.slice(0, count);
  return layout.inHand < count ? first : first.with(count - 1, filmInHand(layout));
}

/** A film put into a pane, which is taken in hand; a film that lies in another pane changes place with it. */
export function putIn(layout: BoxLayout, film: string, pane = layout.inHand): BoxLayout {
  const before = layout.films.indexOf(film);
  const films = layout.films.with(pane, film);
  const swapped = before === -1 || before === pane ? films : films.with(before, layout.films[pane]);
  return { ...layout, films: swapped, inHand: pane };
}

/** Another pane in hand. */
export const takenInHand = (layout: BoxLayout, pane: number): BoxLayout =>
  pane === layout.inHand ? layout : { ...layout, inHand: pane };

/** The pane after the one in hand; after the last comes the first. */
export const nextInHand = (layout: BoxLayout): BoxLayout => takenInHand(layout, (layout.inHand + 1) % layout.count);

/** The box without films that are no longer in the case. */
export function withoutMissing(layout: BoxLayout, strip: readonly string[]): BoxLayout {
  if (layout.films.every((film) => film === undefined || strip.includes(film))) return layout;
  return { ...layout, films: layout.films.map((film) => (strip.includes(film ?? "") ? film : undefined)) };
}
