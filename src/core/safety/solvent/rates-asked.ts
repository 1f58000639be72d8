import abattan from "../../../../data/abattan-2023/source.json" with { type: "json" };
import type { Evaporation } from "./liquid.ts";
import type { EvaporationAsked, RangeOrNumber } from "./solvent-input.ts";

/** The ways of evaporating that are looked at: one, or some along a range. */
export interface RatesAsked {
  readonly kind: Evaporation["kind"];
  readonly origin: "given" | "assumed";
  /** Slowest first; the middle one stands for the whole. */
  readonly looks: readonly Evaporation[];
  /** Of the middle; none at once. */
  readonly ratePerMin?: number;
  readonly within?: { readonly low: number; readonly high: number };
}

/**
 * Taken where nobody gives a rate: from the one published order of magnitude, which is of watery spills, to 2 a minute, at which half
 * of a drop is gone in 21 s. For a pulp chamber none is published.
 */
export const assumedRatePerMin = { low: abattan.ratePerMin, high: 2 };

/** Rates are looked at along a range, because a running mean need not be highest at an end of it. */
const looksAlongRange = 9;

/**
 * The rates of evaporation that an answer spans.
 * @source docs/methods/solvent.md C4
 */
export function ratesAsked({ kind, ratePerMin, overMin }: EvaporationAsked = { kind: "firstOrder" }): RatesAsked {
  if (kind === "instant") return { kind, origin: "given", looks: [{ kind }] };
  const given = ratePerMin ?? (overMin === undefined ? undefined : inverse(overMin));
  const { low, high } = ends(given ?? assumedRatePerMin);
  const origin = given === undefined ? "assumed" : "given";
  const last = looksAlongRange - 1;
  const rates = low === high ? [low] : Array.from({ length: last + 1 }, (_, at) => low * (high / low) ** (at / last));
  const middleRate = low === high ? low : (rates[last / 2] ?? low);
  return {
    ...{ kind, origin, ratePerMin: middleRate },
    looks: rates.map((rate) => ({ kind, ratePerMin: rate })),
    ...(low === high ? {} : { within: { low, high } }),
  };
}

/** Both ends of a range; of a number, twice the number. */
export const ends = (given: RangeOrNumber) => (typeof given === "number" ? { low: given, high: given } : given);

function inverse(overMin: RangeOrNumber): RangeOrNumber {
  const { low, high } = ends(overMin);
  return { low: 1 / high, high: 1 / low };
}
