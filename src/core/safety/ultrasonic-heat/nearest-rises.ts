import { publishedRises, type RiseRow } from "./published-rises.ts";
import type { Burst } from "./ultrasonic-heat-input.ts";
import type { PublishedRise } from "./ultrasonic-heat-output.ts";

/**
 * What tables say for conditions near a burst's: the same thing touched and coolant, an alloy and power that do not
 * contradict; of one condition the durations just below and just above. Nothing is put between them or beyond.
 * @source docs/methods/ultrasonic-heat.md C3, C4
 */
export function nearestRises(burst: Burst): PublishedRise[] {
  const rows = publishedRises.filter((row) => fits(row, burst) && isBracket(row, burst));
  return rows
    .map(({ on: _on, coolant: _coolant, alloy: _alloy, power: _power, other: _other, ...told }, index) => ({
      ...told,
      differs: differences(rows[index] ?? told, burst),
      mark: "seen" as const,
    }))
    .sort((a, b) => a.differs.length - b.differs.length);
}

const fits = (row: RiseRow, { on, coolant, alloy, power }: Burst): boolean =>
  row.on === on &&
  (row.coolant === undefined || row.coolant === coolant) &&
  (row.alloy === undefined || alloy === undefined || row.alloy === alloy) &&
  isNearestPower(row, alloy ?? row.alloy, power);

/** Of the powers that an alloy was tried at, the nearest; all of them where the burst's is not told. */
function isNearestPower(row: RiseRow, alloy: Burst["alloy"], power?: number): boolean {
  if (row.power === undefined || power === undefined) return true;
  const tried = publishedRises.flatMap((one) => (one.alloy === alloy && one.power !== undefined ? [one.power] : []));
  const least = Math.min(...tried.map((one) => Math.abs(one - power)));
  return Math.abs(row.power - power) === least;
}

/** Whether no other duration of the same condition lies between the row's and the burst's. */
function isBracket(row: RiseRow, { seconds }: Burst): boolean {
  const others = publishedRises.filter((one) => one !== row && isSameCondition(one, row));
  const below = row.seconds.high <= seconds;
  return (
    others.every(({ seconds: other }) =>
      below
        ? other.high <= row.seconds.high || other.high > seconds
        : other.low >= row.seconds.low || other.low < seconds,
    ) && !others.some(({ seconds: other }) => other.low <= seconds && seconds <= other.high)
  );
}

const isSameCondition = (one: RiseRow, other: RiseRow): boolean =>
  one.source === other.source &&
  one.on === other.on &&
  one.where === other.where &&
  one.coolant === other.coolant &&
  one.alloy === other.alloy &&
  one.power === other.power;

function differences(row: Partial<RiseRow>, { seconds, alloy, power }: Burst): string[] {
  const { low = 0, high = 0 } = row.seconds ?? {};
  const there = low === high ? `${low} s` : `${low} to ${high} s`;
  return [
    ...(seconds < low ? [`${seconds} s, shorter than the ${there} there`] : []),
    ...(seconds > high ? [`${seconds} s, longer than the ${there} there`] : []),
    ...(row.other === undefined ? [] : [row.other]),
    ...(row.coolant === undefined ? ["coolants are not told apart there"] : []),
    ...(row.alloy !== undefined && alloy === undefined ? [`the alloy is not told; there ${alloyText(row.alloy)}`] : []),
    ...(row.power === undefined ? [] : powerText(row.power, power)),
  ];
}

function powerText(there: number, power?: number): string[] {
  if (power === undefined) return [`the power is not told; there ${there}`];
  return power === there ? [] : [`power ${power}; there ${there}`];
}

const alloyText = (alloy: NonNullable<Burst["alloy"]>): string => (alloy === "steel" ? "steel" : "nickel-titanium");
