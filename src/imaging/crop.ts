import { Refusal } from "../core/refusal.ts";
import type { FilmPixels } from "./film-pixels.ts";

/** A part of a film: its first column and row, and how many of each. */
export interface FilmPart {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/**
 * A part of a film, cut out at its import.
 * Takes a film and the part in whole pixels, within the film. Gives a film of that size; all else stays.
 * @throws Refusal `input.impossible` for a part that is empty, not whole or reaches outside.
 */
export function cropFilm(film: FilmPixels, part: FilmPart): FilmPixels {
  const { column, row, columns, rows } = part;
  const isWhole = [column, row, columns, rows].every(Number.isInteger);
  const isInside = column >= 0 && row >= 0 && column + columns <= film.columns && row + rows <= film.rows;
  if (!isWhole || !isInside || columns < 1 || rows < 1) throw outside(film, part);
  const samples = new Uint16Array(columns * rows);
  for (let line = 0; line < rows; line++) {
    const from = (row + line) * film.columns + column;
    samples.set(film.samples.subarray(from, from + columns), line * columns);
  }
  return { ...film, columns, rows, samples };
}

function outside(film: FilmPixels, part: FilmPart): Refusal {
  const asked = `${part.columns} x ${part.rows} pixels from column ${part.column}, row ${part.row}`;
  const says = `Cannot cut out ${asked}: the film has ${film.columns} x ${film.rows}; choose a part inside it`;
  return new Refusal("input.impossible", says, { ...part });
}
