import type { Fault } from "../refusal.ts";
import type { Use } from "./life-input.ts";

/** Turns of a use. */
export interface Turns {
  /** What is left of both directions. */
  readonly net: number;
  /** All turning added up, whatever its direction. */
  readonly swept: number;
}

/**
 * Turns of one use: rpm seconds / 60, or those of reciprocation from its two angles and its frequency.
 * Takes how it turned, one of rpm and reciprocation, and for how long.
 * @source arithmetic; docs/methods/life-used C1
 */
export function turnsOfUse({ rpm = 0, reciprocation, seconds }: Pick<Use, "rpm" | "reciprocation" | "seconds">): Turns {
  if (reciprocation === undefined) return { net: (rpm * seconds) / 60, swept: (rpm * seconds) / 60 };
  const { forwardDeg, backDeg, frequencyHz } = reciprocation;
  const pairs = frequencyHz * seconds;
  return {
    net: (pairs * Math.abs(forwardDeg - backDeg)) / 360,
    swept: (pairs * (forwardDeg + backDeg)) / 360,
  };
}

/** The faults of uses that state no movement, or two. */
export function movementFaults(uses: readonly Use[]): Fault[] {
  return uses.flatMap(({ rpm, reciprocation }, index) => {
    if (rpm !== undefined && reciprocation !== undefined)
      return [{ path: `uses[${index}].reciprocation`, says: `stands beside rpm ${rpm}; one of the two is accepted` }];
    if (rpm === undefined && reciprocation === undefined)
      return [{ path: `uses[${index}].rpm`, says: "is absent; rpm or reciprocation is needed" }];
    return [];
  });
}
