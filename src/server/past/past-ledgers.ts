import { Worker } from "node:worker_threads";
import { ledgerAsStood, type PastLedger } from "../../ledger/ledger-as-stood.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { inTurn } from "../../store/in-turn.ts";

/** Gives the ledger as it stood at a past change. */
export type PastLedgers = (past: PastLedger) => Promise<LedgerEntry[]>;

/** Worked out where it is asked for. */
export const pastLedgersHere: PastLedgers = async (past) => ledgerAsStood(past);

/**
 * Worked out in a thread of its own, one at a time: what was never kept can take long, and the server answers others
 * meanwhile. Takes the thread's program as it was built.
 */
export function pastLedgersAside(program: string): PastLedgers {
  const turn = inTurn();
  return (past) =>
    turn(async () => {
      const worker = new Worker(program, { workerData: past });
      worker.unref();
      try {
        return await new Promise<LedgerEntry[]>((take, fail) => {
          worker.on("message", take);
          worker.on("error", fail);
          worker.on("exit", () => fail(new Error("the thread ended without an answer")));
        });
      } finally {
        await worker.terminate();
      }
    });
}
