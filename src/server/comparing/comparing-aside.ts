import { Worker } from "node:worker_threads";
import { Refusal } from "../../core/refusal.ts";
import { inTurn } from "../../store/in-turn.ts";
import type { Comparing, FilmsCompared } from "./comparing.ts";
import type { ComparingMessage } from "./comparing-messages.ts";

/** Two films of 12 million pixels take half a minute; twice that and more is out of hand. */
const usualMs = 120_000;

/**
 * Compares films in a thread of its own, one pair at a time: the server answers others meanwhile, and stopping ends the
 * thread at once. Takes the thread's program as it was built, and how long it may take.
 */
export function comparingAside(program: string, mostMs = usualMs): Comparing {
  const turn = inTurn();
  return (asked, told, signal) =>
    turn(async () => {
      signal.throwIfAborted();
      const worker = new Worker(program, { workerData: asked });
      try {
        return await answerOf(worker, told, AbortSignal.any([signal, AbortSignal.timeout(mostMs)]));
      } catch (thrown) {
        signal.throwIfAborted();
        throw thrown;
      } finally {
        await worker.terminate();
      }
    });
}

function answerOf(worker: Worker, told: (fraction: number, says: string) => void, signal: AbortSignal) {
  return new Promise<FilmsCompared>((take, fail) => {
    signal.addEventListener("abort", () => fail(outOfHand("took too long")));
    worker.on("error", (cause) => fail(outOfHand("ended over these films", cause)));
    worker.on("exit", () => fail(outOfHand("ended over these films")));
    worker.on("message", (message: ComparingMessage) => {
      if (message.is === "progress") told(message.fraction, message.says);
      else if (message.is === "compared") take(message.compared);
      else if (message.is === "refused") fail(new Refusal(message.code, message.message));
      else fail(new Error(message.says));
    });
  });
}

function outOfHand(what: string, cause?: unknown): Refusal {
  const says = `Cannot compare the films: the computing ${what}; take in the part that shows the tooth and compare that`;
  const refusal = new Refusal("file.tooLarge", says);
  refusal.cause = cause;
  return refusal;
}
