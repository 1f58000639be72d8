import { parentPort, workerData } from "node:worker_threads";
import { Refusal } from "../../core/refusal.ts";
import type { FilmsToCompare } from "./comparing.ts";
import { comparingHere } from "./comparing-here.ts";
import type { ComparingMessage } from "./comparing-messages.ts";

/** The thread beside the server: compares the two films that it is started with, says what came of it, and ends. */
const say = (message: ComparingMessage, handedOver: ArrayBuffer[] = []): void =>
  parentPort?.postMessage(message, handedOver);

try {
  const progress = (fraction: number, says: string): void => say({ is: "progress", fraction, says });
  const compared = await comparingHere(workerData as FilmsToCompare, progress, new AbortController().signal);
  const files = Object.values(compared.pictures).flatMap(({ buffer }) =>
    buffer instanceof ArrayBuffer ? [buffer] : [],
  );
  say({ is: "compared", compared }, files);
} catch (thrown) {
  if (thrown instanceof Refusal) say({ is: "refused", code: thrown.code, message: thrown.message });
  else say({ is: "broken", says: thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown) });
}
