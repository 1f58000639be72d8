import type { DocumentKind } from "../record/document-kind.ts";

/** One number that stands in a document, and the ledger entry and place in its output that it was read from. */
export interface DocumentNumber {
  readonly ledgerEntry: string;
  /** Path in the entry's output, as `bends[0].angleDeg`. */
  readonly path: string;
  /** The number as it is printed. */
  readonly text: string;
}

/** What is known of a document that left the bench. */
export interface DocumentRow {
  readonly id: string;
  readonly caseId: string;
  readonly as: DocumentKind;
  readonly fileName: string;
  readonly at: string;
  readonly who: string;
  /** The change up to which the document tells the case. */
  readonly sequence: number;
  readonly numbers: readonly DocumentNumber[];
  readonly sha256: string;
  readonly bytes: number;
}
