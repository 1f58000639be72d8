/** The two ends of an interval. */
export type Ends = { readonly low: number; readonly high: number };

/** A chance between 0 and 1; its 95 % interval is absent where none is known. */
export interface Chance {
  readonly mean: number;
  readonly interval?: Ends | undefined;
}

/** A share in percent, without its sign: whole from 10 to 99, else with one decimal, never rounded to certainty. */
export function percentText(share: number): string {
  const percent = 100 * share;
  if (percent <= 0 || percent >= 100) return percent <= 0 ? "0" : "100";
  if (percent < 0.05) return "<0.1";
  if (percent >= 99.95) return ">99.9";
  return percent.toFixed(percent < 9.95 || percent > 99 ? 1 : 0);
}

/** The two ends of a chance in percent: `31 to 88 %`. */
export const endsText = ({ low, high }: Ends): string => `${percentText(low)} to ${percentText(high)} %`;

/** A chance in words: `62 % (31 to 88 %)`. */
export const chanceText = ({ mean, interval }: Chance): string =>
  `${percentText(mean)} %${interval ? ` (${endsText(interval)})` : ""}`;

/** The same in a column of a drawing: `62 % (31–88)`. */
export const chanceColumn = ({ mean, interval }: Chance): string =>
  `${percentText(mean)} %${interval ? ` (${percentText(interval.low)}–${percentText(interval.high)})` : ""}`;
