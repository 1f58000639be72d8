import type { DifficultyInput } from "../../core/diagnosis/difficulty/difficulty-input.ts";
import type { InputPath } from "../../record/ledger-entry.ts";

/** One field of the input with every place of the record that it comes from. */
export interface FactTold {
  readonly field: keyof DifficultyInput;
  readonly value: unknown;
  readonly paths: readonly InputPath[];
}

/** One fact as a list of one, or none where there is no value. */
export const factTold = (field: FactTold["field"], value: unknown, ...records: readonly string[]): FactTold[] =>
  value === undefined ? [] : [{ field, value, paths: records.map((record) => ({ input: field, record })) }];
