import { type DoSums, outcomesOf } from "../../ledger/derive-ledger.ts";

/** The sums of ledgers, done where nobody waits for somebody else's. */
export interface Sums {
  readonly do: DoSums;
  /** Ends what is under way. */
  readonly close: () => Promise<void>;
}

/** Sums done where they are asked for: by a command that serves nobody else. */
export const sumsHere: Sums = {
  do: async (sums) => outcomesOf(sums),
  close: async () => undefined,
};
