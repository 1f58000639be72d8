/** Keeps a number and its unit on one line. */
const thinSpace = "\u202f";
const minus = "\u2212";

/** Two ends of an interval, in the unit of its number. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

/**
 * How many decimals a number deserves: with an interval, those of its half-width's first figure; without, three figures
 * in all, four at most behind the point and none that the number does not have.
 */
export function decimalsFor(value: number, interval?: Ends): number {
  const half = interval === undefined ? 0 : Math.abs(interval.high - interval.low) / 2;
  if (half > 0) return within(0, 4, -Math.floor(Math.log10(half) + 1e-9));
  const size = Math.abs(value);
  return size === 0 ? 0 : Math.min(ownDecimals(size), within(0, 4, 2 - Math.floor(Math.log10(size))));
}

/** How many decimals a number has by itself: none are shown that it does not have. */
const ownDecimals = (value: number): number => String(value).split(".")[1]?.length ?? 0;

const within = (low: number, high: number, value: number): number => Math.min(high, Math.max(low, value));

/** A number with a real minus sign and thin spaces between thousands; never "-0". */
export function numberInWords(value: number, decimals: number): string {
  const fixed = Math.abs(value).toFixed(decimals);
  const [whole = "", rest] = fixed.split(".");
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, thinSpace) : whole;
  const sign = value < 0 && Number(fixed) !== 0 ? minus : "";
  return `${sign}${grouped}${rest === undefined ? "" : `.${rest}`}`;
}

/** A number cut after so many decimals and never rounded up: what is left of something is not told as more than it is. */
export const leftInNumbers = (value: number, decimals: number): string =>
  numberInWords(Math.floor(value * 10 ** decimals + 1e-9) / 10 ** decimals, decimals);

/** A number with its unit: `18.9 mm`, `31°`. */
export function quantityInWords(value: number, unit: string, interval?: Ends): string {
  return withUnit(numberInWords(value, decimalsFor(value, interval)), unit);
}

/** The interval alone, as it stands in quieter ink beside its number: `18.5\u201319.3`. */
export function intervalInWords(interval: Ends): string {
  const decimals = decimalsFor(0, interval);
  const [low, high] = [numberInWords(interval.low, decimals), numberInWords(interval.high, decimals)];
  return interval.low < 0 || interval.high < 0 ? `${low} to ${high}` : `${low}\u2013${high}`;
}

/** A text with its unit: degrees stand close, the others after a thin space. */
export function withUnit(text: string, unit: string): string {
  if (unit === "") return text;
  return unit === "°" ? `${text}°` : `${text}${thinSpace}${unit}`;
}

/** The size of a file: `1.4 MB`. */
export function bytesInWords(bytes: number): string {
  const [size, unit] = bytes < 1_000_000 ? [bytes / 1_000, "kB"] : [bytes / 1_000_000, "MB"];
  return withUnit(numberInWords(size, size < 10 ? 1 : 0), unit);
}

/** `1 case`, `3 cases`. */
export const countOf = (count: number, one: string, many = `${one}s`): string =>
  `${numberInWords(count, 0)} ${count === 1 ? one : many}`;
