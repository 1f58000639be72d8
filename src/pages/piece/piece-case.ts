import type { RemovalTold } from "../../ledger/removal-told.ts";
import type { BodyOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import type { LedgerReader } from "../ledger-reader.ts";
import type { Run } from "../page-model.ts";

/** What a page about a piece is made from. */
export interface PieceCase {
  readonly source: CaseSource;
  readonly about: BodyOf<"case">;
  readonly removal: BodyOf<"removal">;
  /** Absent where it was taken out of the record. */
  readonly mishap: BodyOf<"mishap"> | undefined;
  readonly read: LedgerReader;
  /** What the weighing says, and its entry; absent where it could not be computed. */
  readonly weighed: { readonly told: RemovalTold; readonly entryId: string } | undefined;
}

/** Words for a value of the weighing, with its place. */
export const placed = (text: string, path: string, { entryId }: { readonly entryId: string }): Run => ({
  text,
  number: { ledgerEntry: entryId, path },
});
