import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { entryOf, numberOf } from "../kernels/ledger-reading.ts";
import type { MmPerPx } from "../kernels/pane-group.ts";

/** A film's scale as the ledger has it; undefined where it has none. */
export function scaleOf(ledger: readonly LedgerEntry[], film: string): MmPerPx | undefined {
  const entry = entryOf(ledger, "calibrate", film);
  const [column, row] = ["column", "row"].map((axis) => numberOf(entry, `mmPerPx.${axis}`)?.value);
  return column === undefined || row === undefined ? undefined : { column, row };
}
