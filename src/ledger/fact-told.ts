import type { InputPath } from "../record/ledger-entry.ts";
import type { Question } from "./binding.ts";

/** One field of a topic's input with every place of the record that it comes from. */
export interface FactTold<Field extends string = string> {
  readonly field: Field;
  readonly value: unknown;
  readonly paths: readonly InputPath[];
}

/** One fact as a list of one, or none where there is no value. */
export const factTold = <Field extends string>(
  field: Field,
  value: unknown,
  ...records: readonly string[]
): FactTold<Field>[] =>
  value === undefined ? [] : [{ field, value, paths: records.map((record) => ({ input: field, record })) }];

/** Facts as a topic is asked about them; each field is told once. */
export const factsAsked = (told: readonly FactTold[]): Pick<Question, "input" | "inputPaths"> => ({
  input: Object.fromEntries(told.map(({ field, value }) => [field, value])),
  inputPaths: told.flatMap(({ paths }) => paths),
});
