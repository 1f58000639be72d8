import type { CaseId, LedgerEntryId } from "../core/ids.ts";

/** Where in the record one value of an input came from. */
export interface InputPath {
  /** Path in the topic's input, as `points`. */
  readonly input: string;
  /** Part and path in its body, as `mark-k3/points`; `settings/clickSigmaPx` for a setting. */
  readonly record: string;
}

/**
 * One computed number or set of numbers with everything that made it. Stored once and never changed; a new input or a
 * new version of the topic adds an entry and marks the old one as followed by it.
 */
export interface LedgerEntry {
  /** Hash of subject, topic, version and input: the same sum of the same thing is the same entry. */
  readonly id: LedgerEntryId;
  readonly caseId: CaseId;
  /** What the sum is about, as `curvature of mark-k3`. */
  readonly subject: string;
  readonly topic: string;
  readonly topicVersion: number;
  readonly input: unknown;
  readonly inputPaths: readonly InputPath[];
  /** Absent when the topic refused. */
  readonly output?: unknown;
  /** Why there is no output, in the topic's words, one line per fault. */
  readonly refused?: readonly string[];
  readonly at: string;
}
