import { readNumber } from "../../../../parts/fields/number-field.tsx";
import { numberInWords, withUnit } from "../../../../parts/figures-in-words.ts";

/** What stands in the fields of an entry, by their names; each begins empty. */
export type Typed = Readonly<Record<string, string>>;

/** An amount that is asked for: what the record takes of it. */
export interface AmountWanted {
  readonly at: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  /** What is said where it is left empty; may be left empty where absent. */
  readonly needed?: string;
  /** What a number that can't be it looks like instead. */
  readonly mistaken?: (value: number) => string | undefined;
}

/** What was read of typed fields: the numbers, and what is said at each field that has none. */
export interface Reading {
  readonly values: Readonly<Record<string, number>>;
  readonly faults: Readonly<Record<string, string>>;
}

/** A row as it would be recorded, and what is wrong at which field; no row where anything is. */
export interface RowRead<Row> {
  readonly row?: Row;
  readonly faults: Readonly<Record<string, string>>;
}

/** Reads amounts as they were typed; nothing is taken for an empty field. */
export function readAmounts(typed: Typed, wanted: readonly AmountWanted[]): Reading {
  const read = wanted.map((one) => ({ at: one.at, ...readAmount(typed[one.at] ?? "", one) }));
  return {
    values: Object.fromEntries(read.flatMap(({ at, value }) => (value === undefined ? [] : [[at, value]]))),
    faults: Object.fromEntries(read.flatMap(({ at, fault }) => (fault === undefined ? [] : [[at, fault]]))),
  };
}

function readAmount(text: string, { unit, low, high, needed, mistaken }: AmountWanted) {
  const { value, fault } = readNumber(text, {}, false);
  if (fault !== undefined) return { fault };
  if (typeof value !== "number") return needed === undefined ? {} : { fault: needed };
  if (value < 0) return { fault: `${numberText(value, unit)} is below nothing; an amount is 0 or more` };
  const looksLike = mistaken?.(value);
  if (looksLike !== undefined) return { fault: looksLike };
  if (value < low || value > high)
    return { fault: `${numberText(value, unit)} can't be recorded; ${low} to ${numberText(high, unit)} is taken` };
  return { value };
}

const numberText = (value: number, unit: string): string =>
  withUnit(numberInWords(value, String(Math.abs(value)).split(".")[1]?.length ?? 0), unit);

/** A typed number one step up or down, never below nothing; an empty field takes the step itself. */
export function stepped(text: string, by: number): string {
  const { value, fault } = readNumber(text, {}, false);
  if (fault !== undefined) return text;
  const next = (typeof value === "number" ? value : 0) + by;
  return next < 0 ? text : String(Math.round(next * 1e6) / 1e6);
}

/** A choice out of a list of names; undefined for any other text. */
export const oneOf = <Name extends string>(names: Readonly<Record<Name, string>>, text: string): Name | undefined =>
  keysOf(names).find((name) => name === text);

/** The names of a list of words. */
const keysOf = <Name extends string>(names: Readonly<Record<Name, string>>): readonly Name[] =>
  Object.keys(names).filter((name): name is Name => Object.hasOwn(names, name));

/** A number as it is typed; empty for none. */
export const asTyped = (value: number | undefined): string => (value === undefined ? "" : String(value));
