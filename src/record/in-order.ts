import { dayOf } from "./day-of.ts";
import type { Part } from "./parts.ts";

/** Parts by their day; those of one day stay in the order in which they came. */
export function inOrder<P extends Part>(parts: readonly P[]): P[] {
  return [...parts].sort((a, b) => {
    const [earlier, later] = [dayOf(a) ?? "", dayOf(b) ?? ""];
    if (earlier === later) return 0;
    return earlier < later ? -1 : 1;
  });
}

/** The last of parts by their day, undefined where there is none. */
export function latest<P extends Part>(parts: readonly P[]): P | undefined {
  return inOrder(parts).at(-1);
}
