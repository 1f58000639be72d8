import type { RemovalOutput } from "../removal-output.ts";
import { overlap } from "./weighed-ways.ts";

type Said = Pick<RemovalOutput, "figuresDecide" | "figuresSay">;

/**
 * Whether the intervals of healing lie apart, in a sentence; no way is called the best in either case.
 * @source docs/methods/removal.md C14
 */
export function figuresDecide(ways: RemovalOutput["ways"]): Said {
  const healed = ways.flatMap(({ way, healed: estimate }) => (estimate === undefined ? [] : [{ way, estimate }]));
  const pairs = healed.flatMap((one, index) =>
    healed
      .slice(index + 1)
      .flatMap((other) => (overlap(one.estimate, other.estimate) ? [`${one.way} and ${other.way}`] : [])),
  );
  const groups = "The published groups were chosen for different reasons and are not comparable.";
  if (pairs.length === 0) return { figuresDecide: true, figuresSay: `The intervals of healing lie apart. ${groups}` };
  return {
    figuresDecide: false,
    figuresSay: `The figures do not decide: the intervals of healing overlap (${pairs.join(", ")}). ${groups}`,
  };
}
