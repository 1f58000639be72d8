import { decodeFilm } from "../imaging/decode-film.ts";
import { encodePreview, previewOf } from "../imaging/preview.ts";
import type { Store } from "../store/store.ts";

/** Gives a small picture of a kept film as PNG bytes; its longer side in pixels. */
export type Previews = (hash: string, maxSide: number) => Promise<Uint8Array>;

/** How many are remembered: a whole logbook's strips, about 30 kB each. */
const remembered = 400;

/**
 * Previews of a store's films, made once and remembered for as long as the process lives; nothing is written, so that a
 * film that is removed leaves no small picture behind.
 * @throws Refusal `record.notFound`
 */
export function previewsOf(store: Store): Previews {
  const made = new Map<string, Promise<Uint8Array>>();
  let last: Promise<unknown> = Promise.resolve();
  return (hash, maxSide) => {
    const key = `${hash} ${maxSide}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const fresh = last.then(letOthersIn).then(() => makePreview(store, hash, maxSide));
    last = fresh.catch(() => undefined);
    made.set(key, fresh);
    fresh.catch(() => made.delete(key));
    for (const oldest of made.keys()) if (made.size > remembered) made.delete(oldest);
    return fresh;
  };
}

/** One preview at a time, and whoever waits for something else is served between two: a strip never holds up its film. */
const letOthersIn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

async function makePreview(store: Store, hash: string, maxSide: number): Promise<Uint8Array> {
  const film = await decodeFilm(await store.readFilm(hash), "the kept film");
  return encodePreview(previewOf(film, { maxSide }));
}
