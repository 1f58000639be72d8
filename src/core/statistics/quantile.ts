/**
 * The quantile of a sorted sample, by straight lines between the order statistics.
 * Takes numbers in rising order, at least one, and a share between 0 and 1.
 * @source R. J. Hyndman, Y. Fan, "Sample quantiles in statistical packages", Am Stat 1996;50:361-365, definition 7 (memory)
 */
export function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] ?? 0;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? low;
  return low + (place - below) * (high - low);
}
