import type { Store } from "../store/store.ts";
import type { FilmWork } from "./film-work.ts";

/** Gives a small picture of a kept film as PNG bytes; its longer side in pixels. */
export type Previews = (hash: string, maxSide: number) => Promise<Uint8Array>;

/** How many are remembered: a whole logbook's strips, about 30 kB each. */
const remembered = 400;

/**
 * Previews of a store's films, made once and remembered for as long as the process lives; nothing is written, so that a
 * film that is removed leaves no small picture behind.
 * @throws Refusal `record.notFound`
 */
export function previewsOf(store: Store, films: Pick<FilmWork, "preview">): Previews {
  const made = new Map<string, Promise<Uint8Array>>();
  return (hash, maxSide) => {
    const key = `${hash} ${maxSide}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const fresh = store.readFilm(hash).then((bytes) => films.preview(bytes, maxSide));
    made.set(key, fresh);
    fresh.catch(() => made.delete(key));
    for (const oldest of made.keys()) if (made.size > remembered) made.delete(oldest);
    return fresh;
  };
}
