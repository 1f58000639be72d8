import type { RefusalCode } from "../../core/refusal.ts";
import type { PageModel } from "../../pages/page-model.ts";

/** What the thread that makes a document is started with. */
export interface DocumentToMake {
  readonly model: PageModel;
  readonly fontsFolder: string;
}

/** What that thread says: how far it is, which film it needs, and last what came of it. */
export type DocumentMessage =
  | { readonly is: "progress"; readonly fraction: number; readonly says: string }
  | { readonly is: "wants"; readonly name: string }
  | { readonly is: "made"; readonly bytes: Uint8Array }
  | { readonly is: "refused"; readonly code: RefusalCode; readonly message: string };

/** A film as it is handed to the thread. */
export interface FilmHandedOver {
  readonly name: string;
  readonly bytes: Uint8Array;
}
