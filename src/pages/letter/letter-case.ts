import { inOrder, latest } from "../../record/in-order.ts";
import { type BodyOf, type PartOf, partsOf, thePart } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";

/** What a letter of hand-back is made from. */
export interface LetterCase {
  readonly source: CaseSource;
  readonly about: BodyOf<"case"> | undefined;
  /** The last one; absent where none is recorded. */
  readonly handback: BodyOf<"handback"> | undefined;
  /** Up to the hand-back, in the order of their days. */
  readonly visits: readonly PartOf<"visit">[];
  readonly mishaps: readonly PartOf<"mishap">[];
  readonly read: LedgerReader;
}

/** The case as its last hand-back tells it; what came later is not in the letter. */
export function letterCase(source: CaseSource): LetterCase {
  const { parts } = source;
  const handback = latest(partsOf(parts, "handback"))?.body;
  const isTold = ({ body }: { readonly body: { readonly on: string } }): boolean =>
    handback === undefined || body.on <= handback.on;
  return {
    ...{ source, about: thePart(parts, "case")?.body, handback },
    visits: inOrder(partsOf(parts, "visit")).filter(isTold),
    mishaps: inOrder(partsOf(parts, "mishap")).filter(isTold),
    read: ledgerReader(source.ledger),
  };
}
