import { z } from "zod";
import type { CaseFacts } from "./case-facts.ts";

const reach = z.strictObject({
  atLeast: z.number().optional(),
  atMost: z.number().optional(),
  above: z.number().optional(),
});

/** What must hold of a case, fact by fact: one of some words, or a number within a reach. All of it at once. */
export const conditionSchema = z.record(z.string(), z.union([z.array(z.string()), reach]));
/** See {@link conditionSchema}. */
export type Condition = z.infer<typeof conditionSchema>;

/** Whether a condition holds of a case, and which facts decide that. */
export interface Holds {
  readonly holds: "yes" | "no" | "unknown";
  /** Facts that are not recorded and without which it can't be said. */
  readonly missing: readonly string[];
  /** Facts that speak against it. */
  readonly against: readonly string[];
}

/**
 * Whether a condition holds of a case: no as soon as one fact speaks against it, unknown where one is not recorded.
 * @source docs/methods/plan.md C2
 */
export function holdsOf(condition: Condition, facts: CaseFacts): Holds {
  const found = Object.entries(condition).map(([fact, wanted]) => [fact, isSo(wanted, facts.get(fact))] as const);
  const those = (answer: boolean | undefined) => found.filter(([, so]) => so === answer).map(([fact]) => fact);
  const [against, missing] = [those(false), those(undefined)];
  if (against.length > 0) return { holds: "no", missing: [], against };
  return { holds: missing.length > 0 ? "unknown" : "yes", missing, against };
}

function isSo(wanted: Condition[string], value: string | number | undefined): boolean | undefined {
  if (value === undefined) return undefined;
  if (Array.isArray(wanted)) return wanted.includes(String(value));
  if (typeof value !== "number") return false;
  const { atLeast = Number.NEGATIVE_INFINITY, atMost = Number.POSITIVE_INFINITY, above } = wanted;
  return value >= atLeast && value <= atMost && (above === undefined || value > above);
}
