import type { AmountAsked } from "../../../../../record/unusual-amounts.ts";
import type { Injection } from "./read-injection.ts";
import type { Typed } from "./read-typed.ts";

type Confirmed = NonNullable<Injection["confirmed"]>;

/** What has to be answered before a row is recorded. */
export interface Asked {
  readonly amounts: readonly AmountAsked[];
  /** What the sum asks of limits. */
  readonly limits?: readonly string[];
}

const mostAsked = 12;
const longestAsk = 300;

/** Every question in its words, each once, as many as are recorded. */
export const asksOf = ({ amounts, limits = [] }: Asked): readonly string[] =>
  [...new Set([...limits, ...amounts.map(({ says }) => says)])]
    .map((ask) => ask.slice(0, longestAsk))
    .slice(0, mostAsked);

/** What is missing of the answer: who confirmed it, and over a limit why. */
export function confirmationFaults(typed: Typed, asked: Asked): Readonly<Record<string, string>> {
  const isOver = (asked.limits ?? []).length > 0;
  if (asksOf(asked).length === 0) return {};
  return {
    ...(lineOf(typed.confirmedBy) === "" ? { confirmedBy: "who says that it is to be recorded so?" } : {}),
    ...(isOver && lineOf(typed.because) === "" ? { because: "why was it given over the limit?" } : {}),
  };
}

/** The answer as it is recorded on the row; none where nothing was asked. */
export function confirmedOf(typed: Typed, asked: Asked): { readonly confirmed?: Confirmed } {
  const asks = asksOf(asked);
  if (asks.length === 0) return {};
  const unusual = [...new Set(asked.amounts.flatMap(({ unusual: name }) => (name === undefined ? [] : [name])))];
  const because = lineOf(typed.because);
  return {
    confirmed: {
      ...{ by: lineOf(typed.confirmedBy), asked: [...asks] },
      ...(unusual.length === 0 ? {} : { unusual }),
      ...(because === "" ? {} : { because }),
    },
  };
}

const lineOf = (text: string | undefined): string => (text ?? "").trim();
