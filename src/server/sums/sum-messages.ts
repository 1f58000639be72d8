import type { Outcome } from "../../ledger/derive-ledger.ts";

/** What the thread that does sums answers: an outcome for each input, or words about what went wrong in the program. */
export type SumAnswer =
  | { readonly is: "done"; readonly outcomes: readonly Outcome[] }
  | { readonly is: "broken"; readonly says: string };
