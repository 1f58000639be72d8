import type { FilmWindow } from "../film-pixels.ts";
import type { LookupTable } from "./lookup-table.ts";

/** A window that stands for a table of greys, and whether the table turns bright and dark round. */
export interface TableWindow {
  readonly window: FilmWindow;
  readonly falls: boolean;
}

/**
 * The straight window that comes nearest to a table of greys: the line through the places where the table passes a
 * quarter and three quarters of its range. A table that is a straight ramp is met exactly; the bend of another is lost.
 * Takes the table. Gives the window in the units of the table's input; nothing for a table that is level.
 * @source DICOM PS3.3 C.11.2.1.1 VOI LUT (memory); the line is our own, see docs/decisions/film-files.md
 */
export function windowOfTable({ first, outputs }: LookupTable): TableWindow | undefined {
  const [start, end] = [outputs[0] ?? 0, outputs.at(-1) ?? 0];
  const falls = end < start;
  const rising = falls ? outputs.map((output) => 65_535 - output) : outputs;
  const [low, high] = [rising[0] ?? 0, rising.at(-1) ?? 0];
  if (high <= low) return undefined;
  const quarter = passes(rising, low + (high - low) / 4);
  const threeQuarters = passes(rising, low + ((high - low) * 3) / 4);
  const width = 2 * (threeQuarters - quarter);
  if (!(width > 0)) return undefined;
  return { window: { center: first + (quarter + threeQuarters) / 2, width, function: "linearExact" }, falls };
}

/** Where a table first reaches a level, counted in entries and parts of them. */
function passes(outputs: Uint16Array, level: number): number {
  const after = outputs.findIndex((output) => output >= level);
  if (after <= 0) return 0;
  const [before, reached] = [outputs[after - 1] ?? 0, outputs[after] ?? 0];
  return after - 1 + (level - before) / (reached - before);
}
