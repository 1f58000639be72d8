import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { type LedgerNumber, numberOf } from "../kernels/ledger-reading.ts";

/** A number of an entry with its interval, which in this topic stands beside those of the curvature too. */
export function numberInSpace(entry: LedgerEntry | undefined, name: string, at = name): LedgerNumber | undefined {
  const number = numberOf(entry, at);
  const ends = ["low", "high", "level"].map((end) => numberOf(entry, `intervals.${name}.${end}`)?.value);
  const [low, high, level] = ends;
  if (number === undefined || low === undefined || high === undefined || level === undefined) return number;
  return { value: number.value, interval: { low, high, level } };
}
