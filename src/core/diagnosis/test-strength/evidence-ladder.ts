/** Which results stand together: the places of each group's results. */
export const placesByGroup = (groups: readonly string[]): readonly (readonly number[])[] =>
  [...new Set(groups)].map((name) => groups.flatMap((group, place) => (group === name ? [place] : [])));

/**
 * The logarithm of the odds after all results.
 * Takes the logarithm of the odds before, that of each result's likelihood ratio, the places of each group's results, and
 * the dependence d: of a group together, (1 - d) of the sum and d of the strongest alone. 0 is independence given the
 * state; at 1 a further result of the group that says the same less strongly adds nothing. The order does not matter.
 * @source Bayes' rule; own rule for the dependence: docs/methods/test-strength C5
 */
export function logOddsAfter(
  logOdds: number,
  logRatios: readonly number[],
  groups: readonly (readonly number[])[],
  dependence: number,
): number {
  let after = logOdds;
  for (const places of groups) after += together(logRatios, places, dependence);
  return after;
}

function together(logRatios: readonly number[], places: readonly number[], dependence: number): number {
  let [sum, low, high] = [0, 0, 0];
  for (const place of places) {
    const ratio = logRatios[place] ?? 0;
    sum += ratio;
    if (ratio < low) low = ratio;
    if (ratio > high) high = ratio;
  }
  if (dependence === 0 || !Number.isFinite(sum)) return sum;
  // Two that speak equally against each other say nothing.
  const strongest = high === -low ? 0 : high > -low ? high : low;
  return dependence === 1 ? strongest : (1 - dependence) * sum + dependence * strongest;
}

/** The logarithm of the odds of a probability; infinite at 0 and 1. */
export const logOddsOf = (probability: number): number => Math.log(probability) - Math.log1p(-probability);

/** The probability of the logarithm of odds. */
export const probabilityOf = (logOdds: number): number => 1 / (1 + Math.exp(-logOdds));
