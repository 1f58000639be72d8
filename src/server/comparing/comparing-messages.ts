import type { RefusalCode } from "../../core/refusal.ts";
import type { FilmsCompared } from "./comparing.ts";

/** What the thread that compares says, one after the other. */
export type ComparingMessage =
  | { readonly is: "progress"; readonly fraction: number; readonly says: string }
  | { readonly is: "compared"; readonly compared: FilmsCompared }
  | { readonly is: "refused"; readonly code: RefusalCode; readonly message: string }
  | { readonly is: "broken"; readonly says: string };
