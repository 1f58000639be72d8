import type { PlanInput } from "../../core/diagnosis/plan/plan-input.ts";

/** A fact of the case in the plan's own words, with every place of the record that it comes from. */
export interface Told {
  readonly fact: keyof PlanInput;
  readonly value: unknown;
  readonly record: readonly string[];
}

/** One fact as a list of one, or none where there is no value. */
export const told = (fact: Told["fact"], value: unknown, ...record: readonly string[]): Told[] =>
  value === undefined ? [] : [{ fact, value, record }];
