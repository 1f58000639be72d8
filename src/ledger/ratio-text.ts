/** A likelihood ratio in two figures or so: `14`, `8.2`, `0.29`, `0.004`. */
export function ratioText(ratio: number): string {
  if (ratio >= 100) return ratio > 1_000 ? "over 1000" : ratio.toFixed(0);
  if (ratio === 0) return "0";
  return String(Number(ratio.toPrecision(2)));
}
