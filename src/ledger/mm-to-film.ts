import { z } from "zod";
import type { LedgerEntry } from "../record/ledger-entry.ts";

const scale = z.object({ mmPerPx: z.object({ column: z.number().positive(), row: z.number().positive() }) });

/**
 * How places in mm lie in a film's own pixels.
 * Takes the film's calibrate entry. Gives [column, row] of a place [x, y], or undefined where the film has no scale.
 * @source plane geometry; docs/methods/calibrate C2
 */
export function mmToFilm(
  calibrate: LedgerEntry | undefined,
): ((place: readonly number[]) => [number, number]) | undefined {
  const found = scale.safeParse(calibrate?.output).data;
  if (found === undefined) return undefined;
  const { column, row } = found.mmPerPx;
  return ([x = 0, y = 0]) => [x / column, y / row];
}
