import type { RefusalCode } from "../core/refusal.ts";
import type { FilmToKeep, FilmWanted } from "../imaging/film-to-keep.ts";

/** What the thread aside is asked. */
export type FilmQuestion =
  | { readonly ask: "prepare"; readonly bytes: Uint8Array; readonly wanted: FilmWanted }
  | { readonly ask: "preview"; readonly bytes: Uint8Array; readonly maxSide: number };

/** What it answers: a film, a preview, a refusal in its parts, or words about what went wrong in the program. */
export type FilmAnswer =
  | { readonly is: "prepared"; readonly film: FilmToKeep }
  | { readonly is: "preview"; readonly png: Uint8Array }
  | {
      readonly is: "refused";
      readonly code: RefusalCode;
      readonly message: string;
      readonly facts: Readonly<Record<string, unknown>>;
    }
  | { readonly is: "broken"; readonly says: string };
