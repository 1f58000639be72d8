import type { ThemeName } from "../figures/theme.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { Part } from "../record/parts.ts";

/** What a document is made from: the case at one change, its ledger, and the sources that the ledger's entries name. */
export interface CaseSource {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  /** Entries that decisions were made on and that no longer hold. */
  readonly kept?: readonly LedgerEntry[];
  /** Full references by source id. */
  readonly references: ReadonlyMap<string, { readonly reference: string; readonly verification: "seen" | "memory" }>;
  /** The method's one line by topic name. */
  readonly methods: ReadonlyMap<string, string>;
  readonly notation: "twoDigit" | "universal" | "quadrant";
  readonly theme: ThemeName;
  /** Whom the clinic calls first; absent where the settings name no one. */
  readonly firstCall?: { readonly who: string; readonly number: string } | undefined;
}
