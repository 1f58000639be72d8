import type { Unit } from "./slide-units.ts";

/** How high the first column is, and every one after it, in inches. */
export interface ColumnHeights {
  readonly first: number;
  readonly further: number;
}

/** Air between a table and what stands under it. */
export const afterTableIn = 0.2;

/** What stands above a unit because of the one before it: a table's head over its first row, air under a table. */
export function leadIn(unit: Unit, before: Unit | undefined): number {
  if (isSameTable(unit, before)) return 0;
  const air = before?.kind === "row" ? afterTableIn : 0;
  return unit.kind === "row" ? air + unit.headIn : air;
}

const isSameTable = (unit: Unit, other: Unit | undefined): boolean =>
  unit.kind === "row" && other?.kind === "row" && other.table === unit.table;

/**
 * Units into columns, each filled before the next. A heading goes with what follows it; a table that fits a column goes
 * there whole, and only a longer one is torn.
 */
export function fillColumns(units: readonly Unit[], heights: ColumnHeights): Unit[][] {
  const columns: Unit[][] = [[]];
  let room = heights.first;
  units.forEach((unit, at) => {
    const column = columns.at(-1) ?? [];
    const lead = leadIn(unit, column.at(-1));
    if (column.length > 0 && lead + togetherIn(units, at, heights.further) > room) {
      columns.push([unit]);
      room = heights.further - unit.heightIn - leadIn(unit, undefined);
    } else {
      column.push(unit);
      room -= lead + unit.heightIn;
    }
  });
  return columns;
}

/** The height of what must not be parted from a unit on, the unit itself counted, its lead not. */
function togetherIn(units: readonly Unit[], at: number, limit: number): number {
  const unit = units[at];
  if (unit === undefined) return 0;
  if (unit.kind === "heading") {
    const next = units[at + 1];
    return unit.heightIn + (next === undefined ? 0 : leadIn(next, unit) + togetherIn(units, at + 1, limit));
  }
  if (unit.kind !== "row" || isSameTable(unit, units[at - 1])) return unit.heightIn;
  const rows = units.slice(at).filter((other) => isSameTable(other, unit));
  const whole = rows.reduce((sum, row) => sum + row.heightIn, 0);
  return whole + unit.headIn <= limit ? whole : unit.heightIn;
}
