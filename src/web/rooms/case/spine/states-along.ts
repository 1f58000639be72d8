import { type CanalStanding, canalStatesOn } from "../../../../record/canal-states.ts";
import { canonicalJson } from "../../../../record/canonical-json.ts";
import type { Part } from "../../../../record/parts.ts";
import type { Moment } from "./spine-moments.ts";

/** The canals as a moment left them. */
export interface StatesThen {
  readonly states: Readonly<Record<string, CanalStanding>>;
  /** Whether the moment before left them otherwise. */
  readonly changed: boolean;
}

/** The canals as each moment left them, by its id; moments of one day leave them alike. */
export function statesAlong(parts: readonly Part[], moments: readonly Moment[]): ReadonlyMap<string, StatesThen> {
  let before = "";
  return new Map(
    moments.map(({ id, day }) => {
      const states = canalStatesOn(parts, day);
      const told = canonicalJson(states);
      const changed = told !== before && Object.keys(states).length > 0;
      before = told;
      return [id, { states, changed }];
    }),
  );
}
