import type { CanalEntered, InstrumentUse } from "./use-of-step.ts";

/**
 * The canal that comes next: the first of the visit's table that no instrument has been in.
 * Takes the rows of canals and of instruments. Gives the first canal where all have been entered; nothing without canals.
 */
export function nextCanal<Canal extends CanalEntered>(
  canals: readonly Canal[],
  uses: readonly Pick<InstrumentUse, "canal">[],
): Canal | undefined {
  const entered = new Set(uses.map(({ canal }) => canal));
  return canals.find(({ canal }) => !entered.has(canal)) ?? canals[0];
}
