/** How many had something, and of how many. */
export interface Count {
  readonly events: number;
  readonly n: number;
}

/** A whole, split in two by a fact. */
export interface Split {
  readonly inside: Count;
  readonly outside: Count;
}

/**
 * Every split of a counted whole that a printed share of one part allows, where that part's size is not printed.
 * Takes the whole and the part's share as printed to one decimal of a percent (0.867). Gives the splits by rising size.
 * @source arithmetic on whole numbers; docs/methods/removal.md C10
 */
export function splitsWithShare(whole: Count, share: number): Split[] {
  return Array.from({ length: whole.n }, (_, index) => index + 1).flatMap((n) => {
    const events = Math.round(share * n);
    const outside = { events: whole.events - events, n: whole.n - n };
    const printed = Math.round((events / n) * 1_000) === Math.round(share * 1_000);
    const fits = outside.events >= 0 && outside.events <= outside.n;
    return printed && fits ? [{ inside: { events, n }, outside }] : [];
  });
}
