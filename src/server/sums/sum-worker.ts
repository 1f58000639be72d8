import { parentPort } from "node:worker_threads";
import { outcomesByName, type SumsByName } from "../../ledger/outcomes-by-name.ts";
import type { SumAnswer } from "./sum-messages.ts";

/** The thread beside the server: does the sums of one topic after the other and says what they came to. */
parentPort?.on("message", (sums: SumsByName) => parentPort?.postMessage(answerTo(sums)));

function answerTo(sums: SumsByName): SumAnswer {
  try {
    return { is: "done", outcomes: outcomesByName(sums) };
  } catch (thrown) {
    return { is: "broken", says: thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown) };
  }
}
