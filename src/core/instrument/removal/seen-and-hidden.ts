import nevares from "../../../../data/nevares-2012/source.json" with { type: "json" };
import { chiSquare2x2 } from "../../statistics/chi-square-2x2.ts";
import type { RemovalOutput } from "../removal-output.ts";
import type { Count } from "./denominators.ts";

const countOf = (state: "seen" | "hidden"): Count => {
  const { events = 0, n = 1 } = nevares.removal.find(({ when }) => when.headSeen?.includes(state)) ?? {};
  return { events, n };
};

/**
 * Fragments that were seen against hidden ones in the one series that counted both, its P recomputed from its counts.
 * @source Nevares and others 2012 (seen); docs/methods/removal.md C7
 */
export function seenAndHidden(): RemovalOutput["visibility"] {
  const [seen, hidden] = [countOf("seen"), countOf("hidden")];
  return {
    differencePoints: 100 * (seen.events / seen.n - hidden.events / hidden.n),
    ...chiSquare2x2(seen, hidden),
    printedP: nevares.printedP,
  };
}
