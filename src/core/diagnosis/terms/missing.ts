import type { Facts } from "./facts-of.ts";
import { truthOf } from "./hold.ts";
import { factWords } from "./rules.ts";

/** The facts of a list that nobody knows, each as what would settle it, once. */
export function missing(names: readonly string[], facts: Facts): string[] {
  const unknown = names.filter((name) => truthOf(name, facts) === "unknown");
  return [...new Set(unknown.map((name) => factWords[name]?.asks ?? name))];
}
