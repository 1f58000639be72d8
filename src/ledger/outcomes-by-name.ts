import { topicNamed } from "../core/topics.ts";
import { type Outcome, outcomesOf } from "./derive-ledger.ts";

/** Sums of one topic as they are handed to a thread, which knows topics by their names alone. */
export interface SumsByName {
  readonly topic: string;
  readonly inputs: readonly unknown[];
}

/** What each of the sums came to, in their order. @throws Refusal `topic.unknown` */
export const outcomesByName = ({ topic, inputs }: SumsByName): Outcome[] =>
  outcomesOf({ topic: topicNamed(topic), inputs });
