import type { SumsByName } from "../../ledger/outcomes-by-name.ts";
import { Thread, type ThreadLimits } from "../thread.ts";
import type { SumAnswer } from "./sum-messages.ts";
import type { Sums } from "./sums.ts";

/** A sum takes a second or two; the thread stays warm until the server ends. */
const usual: ThreadLimits = { workMs: 120_000, heapMb: 1_024 };

/**
 * Sums done in one thread, started when it is first asked: the server answers others meanwhile.
 * Takes the thread's program as it was built, and limits other than the usual.
 */
export function sumsAside(program: string, limits: ThreadLimits = usual): Sums {
  const thread = new Thread<SumsByName, SumAnswer>(program, limits, notDone);
  return {
    do: async ({ topic, inputs }) => {
      const answer = await thread.ask({ topic: topic.name, inputs }, topic.name);
      if (answer.is === "done") return answer.outcomes;
      throw new Error(answer.says);
    },
    close: () => thread.end(),
  };
}

const notDone = (topic: string, what: string, cause?: unknown): Error =>
  new Error(`Cannot compute ${topic} aside: it ${what}`, { cause });
