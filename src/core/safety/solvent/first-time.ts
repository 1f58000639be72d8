/** Places between two ends, crowded towards both: what happens at once in a small zone is met as well as what takes hours. */
export function crowdedBetween(from: number, to: number): number[] {
  const steps = Array.from({ length: 14 }, (_, at) => 3 ** (at - 13) / 2);
  const shares = [
    ...steps,
    ...steps
      .map((step) => 1 - step)
      .reverse()
      .slice(1),
  ];
  return shares.map((share) => from + share * (to - from));
}

/**
 * The first time at which a thing holds, between two ends that enclose it: it does not hold at the first, it does at the second.
 * @source halving; as exact as a number of the machine
 */
export function turnBetween(notYet: number, already: number, holds: (at: number) => boolean): number {
  let [before, after] = [notYet, already];
  for (let step = 0; step < 200; step += 1) {
    const middle = (before + after) / 2;
    if (middle <= before || middle >= after) break;
    if (holds(middle)) after = middle;
    else before = middle;
  }
  return after;
}
