import { Refusal } from "../core/refusal.ts";
import { refusalOutcome } from "../core/refusal-outcome.ts";
import type { RefusalView } from "./api.ts";

/** A thrown thing as it goes over the API: the status and the body. A thing that is no refusal is a bug and tells nothing of its inside. */
export function replyOf(thrown: unknown): { status: number; view: RefusalView } {
  if (thrown instanceof Refusal) {
    const { code, message, facts, faults } = thrown;
    return { status: refusalOutcome[code].httpStatus, view: { code, message, facts, faults } };
  }
  const view: RefusalView = {
    code: "bug",
    message: "Cannot answer: the program has a fault here",
    facts: {},
    faults: [],
  };
  return { status: 500, view };
}
