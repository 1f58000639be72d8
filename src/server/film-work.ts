import { decodeFilm } from "../imaging/decode-film.ts";
import { type FilmToKeep, type FilmWanted, filmToKeep } from "../imaging/film-to-keep.ts";
import { encodePreview, previewOf } from "../imaging/preview.ts";

/** What takes long on a film's bytes: done aside by a server, so that nobody waits for somebody else's film. */
export interface FilmWork {
  /** @throws Refusal of the decoder or the crop */
  readonly prepare: (bytes: Uint8Array, wanted: FilmWanted) => Promise<FilmToKeep>;
  /** A small picture of a kept film as PNG bytes; its longer side in pixels. @throws Refusal of the decoder */
  readonly preview: (bytes: Uint8Array, maxSide: number) => Promise<Uint8Array>;
  /** Ends what is under way. */
  readonly close: () => Promise<void>;
}

/** The work done where it is asked for: by a command that serves nobody else, and by the thread aside. */
export const filmWorkHere: FilmWork = {
  prepare: filmToKeep,
  preview: async (bytes, maxSide) => encodePreview(previewOf(await decodeFilm(bytes, "the kept film"), { maxSide })),
  close: async () => undefined,
};
