import { bindings } from "./bindings.ts";

/** Names the sums that a ledger holds, each with its version: what was worked out under another name may lack some. */
export const sumsDone = (): string => bindings.map(({ topic }) => `${topic.name} ${topic.version}`).join(", ");
