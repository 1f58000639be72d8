import type { CabinetItemOf, CabinetKind } from "../cabinet/cabinet-item.ts";
import type { Words } from "./case-words.ts";

type Instrument = CabinetItemOf<"instrument">["body"];
type Limits = NonNullable<Instrument["limits"]>;

/** Kinds of items, in words. */
export const cabinetKindWords: Words<CabinetKind> = {
  instrument: "Instrument",
  sequence: "Sequence",
  file: "Counted file",
  stock: "Material",
  template: "Template",
};
/** Section, in words. */
export const sectionWords: Words<NonNullable<Instrument["section"]>> = {
  circle: "circle",
  triangle: "triangle",
  convexTriangle: "convex triangle",
  square: "square",
  s: "S",
  slenderRectangle: "slender rectangle",
};
/** What is counted against a file, in words. */
export const countedWords: Words<keyof Limits> = {
  uses: "visits in use",
  canals: "canals",
  sterilisations: "sterilisations",
  turns: "turns",
  equivalentTurns: "equivalent turns",
};

/** A limit of the person's that a file has come to: which, where it lies and what was found. */
export interface LimitReached {
  readonly name: keyof Limits;
  readonly limit: number;
  readonly found: number;
}

/** The same of one alone. */
const oneCounted: Words<keyof Limits> = {
  ...{ uses: "visit in use", canals: "canal", sterilisations: "sterilisation" },
  ...{ turns: "turn", equivalentTurns: "equivalent turn" },
};

/**
 * A limit that was reached in words: `9 canals, 1 above the limit of 8`, or `8 canals, at the limit`.
 * Takes what was found and the limit, counts or turns. Gives turns rounded to whole ones.
 */
export function limitInWords({ name, limit, found }: LimitReached): string {
  const above = Math.round(found) - Math.round(limit);
  const what = `${wholeInWords(found)} ${(Math.round(found) === 1 ? oneCounted : countedWords)[name]}`;
  return above > 0
    ? `${what}, ${wholeInWords(above)} above the limit of ${wholeInWords(limit)}`
    : `${what}, at the limit`;
}

/** A whole number, thousands apart from five digits on: `12 600`. */
const wholeInWords = (value: number): string => {
  const whole = String(Math.round(value));
  return whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, "\u202f") : whole;
};
